// The lists of checks: the files that come along, the shop's own, put together for one machine.
#include "core/journal/rounds.h"

#include "core/journal/fold.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

const RoundList& named(const std::vector<RoundList>& lists, std::string_view key) {
    const auto found = std::ranges::find(lists, key, &RoundList::key);
    REQUIRE(found != lists.end());
    return *found;
}

bool asks(const job::Round& round, std::string_view part) {
    return std::ranges::any_of(round.checks, [&](const job::RoundCheck& check) {
        return check.text.find(part) != std::string::npos;
    });
}

job::Round roundOf(const std::vector<RoundList>& lists, const std::vector<std::string>& has) {
    return composed(lists, has);
}

} // namespace

TEST_CASE("Every file in assets/rounds is read, and comes back as it was") {
    std::size_t files = 0;
    for (const auto& file : std::filesystem::directory_iterator(UNDERCOWL_TESTS "/../assets/rounds")) {
        INFO(file.path());
        std::ifstream in(file.path());
        const std::string text{std::istreambuf_iterator<char>(in), {}};
        const auto list = readRoundFile(text);
        REQUIRE(list);
        CHECK(list->key + ".json" == file.path().filename());
        CHECK_FALSE(list->groups.empty());
        CHECK(readRoundFile(roundFile(*list)) == list);
        CHECK(named(builtInRounds(), list->key) == *list);
        ++files;
    }
    CHECK(files == builtInRounds().size());
    CHECK(files > 10);
}

TEST_CASE("A round asks what the machine has and nothing else") {
    const auto& lists = builtInRounds();
    const auto moped = roundOf(lists, {"two-stroke", "automatic", "kick", "front-disc", "rear-drum"});
    CHECK(asks(moped, "premix"));
    CHECK(asks(moped, "belt"));
    CHECK(asks(moped, "front disc brake"));
    CHECK_FALSE(asks(moped, "chain"));
    CHECK_FALSE(asks(moped, "front drum brake"));
    CHECK_FALSE(asks(moped, "starter"));
    const auto geared = roundOf(lists, {"four-stroke", "gears", "electric-start", "front-drum", "rear-drum"});
    CHECK(asks(geared, "final drive chain"));
    CHECK(asks(geared, "charging"));
    CHECK_FALSE(asks(geared, "premix"));
    CHECK(moped.title.find("Every machine, ") == 0);
}

TEST_CASE("No check stands twice: an answer names it by its words") {
    std::vector<std::string> all(traits().begin(), traits().end());
    auto lists = builtInRounds();
    lists.push_back({"z", "Again", RoundUse::Round, {}, {{"shed", {"horn: loud and clear"}}}});
    std::set<std::string> seen;
    for (const auto& check : roundOf(lists, all).checks)
        CHECK(seen.insert(check.text).second);
    CHECK(seen.contains("horn: loud and clear (shed)"));
    CHECK(seen.size() > 50);
}

TEST_CASE("The shop's own list replaces the one of its key, and its withdrawal brings that back") {
    Ledger ledger;
    const RoundList mine{"kick", "Kick start", RoundUse::Round, {"kick"}, {{"kick", {"spring whole"}}}};
    const Entry kept = ledger.add(roundKept(mine));
    CHECK_FALSE(shapeProblem(kept));
    CHECK(named(roundLists(ledger.entries), "kick") == mine);
    CHECK(roundLists(ledger.entries).size() == builtInRounds().size());
    ledger.add({"round.kept", "shop", "x", R"({"key":"x"})", {}}); // no title, no groups
    CHECK(roundLists(ledger.entries).size() == builtInRounds().size());
    RoundList none = mine;
    none.groups.clear();
    ledger.add(roundKept(none));
    CHECK_FALSE(asks(roundOf(roundLists(ledger.entries), {"kick"}), "spring whole"));
    CHECK_FALSE(asks(roundOf(roundLists(ledger.entries), {"kick"}), "kick start:"));
}

TEST_CASE("A file that does not fit is refused by field and remedy") {
    const auto refusal = [](const char* text) {
        const auto list = readRoundFile(text);
        REQUIRE_FALSE(list);
        return list.error();
    };
    CHECK(refusal("{").find("no JSON") == 0);
    CHECK(refusal(R"({"undercowl":"map"})").find("undercowl") == 0);
    CHECK(refusal(R"({"undercowl":"round","version":2,"key":"a","title":"a","groups":[]})").find("version") ==
          0);
    CHECK(refusal(R"({"undercowl":"round","version":1,"key":"A b","title":"a","groups":[]})").find("key") ==
          0);
    CHECK(refusal(R"({"undercowl":"round","version":1,"key":"a","title":"a","when":["wings"],"groups":[]})")
              .find("when: \"wings\"") == 0);
    CHECK(
        refusal(
            R"({"undercowl":"round","version":1,"key":"a","title":"a","groups":[{"name":"g","checks":[""]}]})")
            .find("checks") == 0);
}

TEST_CASE("What is tried and what is photographed when a machine comes in are lists of their own") {
    const auto functions = checksOf(builtInRounds(), RoundUse::Functions);
    const auto views = checksOf(builtInRounds(), RoundUse::Views);
    CHECK(std::ranges::find(functions, "horn", &job::RoundCheck::text) != functions.end());
    CHECK(std::ranges::find(views, "frame number", &job::RoundCheck::text) != views.end());
    CHECK_FALSE(asks(roundOf(builtInRounds(), {}), "from the left"));
}
