#include "core/journal/force.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

using namespace undercowl::journal;

namespace {

std::vector<std::string> inForceIds(const Ledger& ledger) {
    std::vector<std::string> ids;
    for (const InForce& entry : inForce("j", ledger.entries).effects)
        ids.push_back(entry.last->id);
    return ids;
}

} // namespace

TEST_CASE("Undo, redo and undo again") {
    Ledger ledger;
    const auto step = ledger.add(stepStripped("j", stripStep("s", "mirror off"))).id;
    const auto undo = ledger.add(withdrawn("j", step)).id;
    CHECK(inForceIds(ledger).empty());
    ledger.add(withdrawn("j", undo));
    CHECK(inForceIds(ledger) == std::vector{step});
    ledger.add(withdrawn("j", step));
    CHECK(inForceIds(ledger).empty());
}

TEST_CASE("A withdrawn correction leaves what it corrected") {
    Ledger ledger;
    const auto first = ledger.add(stepStripped("j", stripStep("s", "mirror of"))).id;
    const auto second = ledger.add(stepStripped("j", stripStep("s", "mirror off"), first)).id;
    CHECK(inForceIds(ledger) == std::vector{second});
    ledger.add(withdrawn("j", second));
    CHECK(inForceIds(ledger) == std::vector{first});
}

TEST_CASE("Where two corrections meet, the later one holds") {
    Ledger ledger;
    const auto first = ledger.add(stepStripped("j", stripStep("s", "a"))).id;
    ledger.add(stepStripped("j", stripStep("s", "b"), first), "device-b");
    const auto latest = ledger.add(stepStripped("j", stripStep("s", "c"), first), "device-c").id;
    CHECK(inForceIds(ledger) == std::vector{latest});
}

TEST_CASE("A correction of a correction stands where the first one stood") {
    Ledger ledger;
    const auto a1 = ledger.add(stepStripped("j", stripStep("a", "a1"))).id;
    const auto b = ledger.add(stepStripped("j", stripStep("b", "b"))).id;
    const auto a2 = ledger.add(stepStripped("j", stripStep("a", "a2"), a1)).id;
    const auto a3 = ledger.add(stepStripped("j", stripStep("a", "a3"), a2)).id;
    CHECK(inForceIds(ledger) == std::vector{a3, b});
    CHECK(inForce("j", ledger.entries).effects[0].first->id == a1);
}

TEST_CASE("Corrections and withdrawals that point nowhere, forwards or at another subject do nothing") {
    Ledger ledger;
    const auto a = ledger.add(stepStripped("j", stripStep("a", "a"), "no-such-entry")).id;
    const auto b = ledger.add(stepStripped("j", stripStep("b", "b"), a)).id; // another subject
    ledger.add(withdrawn("j", "no-such-entry"));
    Entry early = ledger.entries[0]; // withdraws an entry that comes after it
    early.id = "early";
    early.kind = "entry.withdrawn";
    early.subject = b;
    early.number = 0;
    ledger.entries.push_back(early);
    CHECK(inForceIds(ledger) == std::vector{a, b});
}
