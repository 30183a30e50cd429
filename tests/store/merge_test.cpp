#include "tests/store/shop.h"
#include "tests/store/tables.h"

#include <algorithm>
#include <random>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

std::vector<journal::Entry> allEntries(const Store& store) {
    std::vector<journal::Entry> all = must(store.entries("shop"));
    const auto add = [&](const Id& stream) {
        const auto more = must(store.entries(stream));
        all.insert(all.end(), more.begin(), more.end());
    };
    for (const JobLine& line : must(store.jobs())) {
        add(line.id);
        const auto job = must(store.job(line.id));
        if (!job.machine.empty()) {
            add(job.machine);
        }
        if (!job.owner.empty()) {
            add(job.owner);
        }
    }
    return all;
}

void copyMedia(Shop& from, Shop& to) {
    for (const auto& file : std::filesystem::directory_iterator(from.folder.path() / "shop" / "media")) {
        std::filesystem::copy(file, to.folder.path() / "shop" / "media",
                              std::filesystem::copy_options::skip_existing);
    }
}

// Two phones that worked on the same job without a network, and what the second one said last.
struct TwoPhones {
    Shop one;
    Shop two;
    Id job;
    std::vector<journal::Entry> entries;

    TwoPhones() {
        job = one.wholeJob("2026-001");
        copyMedia(one, two);
        must(two.store.merge(allEntries(one.store)));
        const auto known = must(two.store.job(job));
        two.say(journal::findingSettled(job, known.findings.at(0).id, "hose replaced"));
        auto machine = must(two.store.machine(known.machine));
        machine.year = 1988;
        two.say(journal::machineDescribed(machine));
        auto step = known.steps.at(0);
        step.bag = "9";
        one.say(journal::stepStripped(job, step, step.said.entry));
        one.say(journal::withdrawn(job, known.rechecks.at(0).said.entry));
        two.smallJob("2026-002");
        entries = allEntries(one.store);
        const auto more = allEntries(two.store);
        entries.insert(entries.end(), more.begin(), more.end());
    }
};

} // namespace

TEST_CASE("entries of two phones give the same tables in any order, in any portions, however often") {
    TwoPhones phones;
    std::mt19937 random(20261125); // NOLINT(cert-msc51-cpp): the same run each time
    std::string expectedTables;
    std::string expectedShown;
    for (int round = 0; round < 25; ++round) {
        INFO("round " << round);
        std::vector<journal::Entry> entries = phones.entries;
        for (int i = 0; i < 20; ++i) {
            entries.push_back(phones.entries[random() % phones.entries.size()]);
        }
        std::shuffle(entries.begin(), entries.end(), random);
        Folder folder;
        Store store = must(Store::open(folder.path() / "third"));
        for (const auto& file :
             std::filesystem::directory_iterator(phones.one.folder.path() / "shop" / "media")) {
            std::filesystem::copy(file, folder.path() / "third" / "media");
        }
        for (std::size_t at = 0; at < entries.size();) {
            const std::size_t portion = std::min(1 + random() % 12, entries.size() - at);
            must(store.merge(std::span(entries).subspan(at, portion)));
            at += portion;
        }
        CHECK(must(store.merge(entries)) == 0);
        const std::string tables = projections(folder.path() / "third");
        const std::string shown = everything(store);
        if (round == 0) {
            expectedTables = tables;
            expectedShown = shown;
            CHECK_THAT(shown,
                       Catch::Contains("2026-001") && Catch::Contains("2026-002") && Catch::Contains("1988"));
        }
        REQUIRE(tables == expectedTables);
        // 'find' orders equals by rank alone, so the rest of what is shown is compared line by line.
        REQUIRE(shown.size() == expectedShown.size());
        REQUIRE(must(store.check()).faults == std::vector<std::string>{});
    }
}

TEST_CASE("the two phones agree after exchanging, and go on in order") {
    TwoPhones phones;
    must(phones.one.store.merge(phones.entries));
    must(phones.two.store.merge(phones.entries));
    CHECK(projections(phones.one.folder.path() / "shop") == projections(phones.two.folder.path() / "shop"));

    // A phone whose clock is a day behind still speaks after what it has seen.
    phones.one.time -= 86'400'000;
    const auto late =
        phones.one.say(journal::memoKept(phones.job, {phones.one.store.newId(), {}, "last word", {}, {}}));
    for (const auto& entry : phones.entries) {
        CHECK(entry.clock < late.clock);
    }
    CHECK(must(phones.one.store.check()).faults == std::vector<std::string>{});

    Store again = phones.one.another();
    const auto later =
        must(again.append(journal::memoKept(phones.job, {again.newId(), {}, "after", {}, {}})));
    CHECK(late.clock < later.clock);
}

TEST_CASE("entries that were tampered with are refused, with everything that came beside them") {
    TwoPhones phones;
    Folder folder;
    Store store = must(Store::open(folder.path()));
    const std::vector<std::pair<std::string, void (*)(std::vector<journal::Entry>&)>> changes{
        {"body", [](auto& all) { all[3].body = R"({"make":"Other"})"; }},
        {"number", [](auto& all) { all[3].number += 100; }},
        {"resealed",
         [](auto& all) {
             all[3].body = R"({"make":"Other"})";
             journal::seal(all[3]);
         }},
        {"id",
         [](auto& all) {
             all[3].id = "../../etc";
             journal::seal(all[3]);
         }},
        {"clock",
         [](auto& all) {
             all[3].clock.wallMs = 9'000'000'000'000'000;
             journal::seal(all[3]);
         }},
        {"device",
         [](auto& all) {
             all[3].device.clear();
             journal::seal(all[3]);
         }},
    };
    auto sorted = allEntries(phones.one.store);
    std::sort(sorted.begin(), sorted.end(), journal::before);
    for (const auto& [what, change] : changes) {
        INFO(what);
        auto entries = sorted;
        change(entries);
        const auto refused = store.merge(entries);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().fault == Fault::Refused);
        CHECK(must(store.check()).entries == 0);
    }
    const auto withoutMedia = store.merge(sorted);
    REQUIRE_FALSE(withoutMedia);
    CHECK_THAT(withoutMedia.error().message, Catch::Contains("media"));
    CHECK(must(store.jobs()).empty());
}

TEST_CASE("a store that was put back from an older copy gets a name of its own") {
    Shop shop;
    const Id job = shop.smallJob("1");
    const auto copy = shop.folder.path() / "older";
    std::filesystem::copy(shop.folder.path() / "shop", copy, std::filesystem::copy_options::recursive);
    shop.say(journal::memoKept(job, {shop.store.newId(), {}, "said after the copy", {}, {}}));

    Store older = must(Store::open(copy, shop.clock()));
    const Id before = older.device();
    REQUIRE(before == shop.store.device());
    CHECK(must(older.merge(allEntries(shop.store))) == 1);
    CHECK(older.device() != before);
    must(older.append(journal::memoKept(job, {older.newId(), {}, "goes on", {}, {}})));
    CHECK(must(older.check()).faults == std::vector<std::string>{});
    CHECK(must(shop.store.merge(allEntries(older))) == 1);
}

TEST_CASE("two copies of a store that went on apart are told from each other") {
    Shop shop;
    const Id job = shop.smallJob("1");
    const auto copy = shop.folder.path() / "copy";
    std::filesystem::copy(shop.folder.path() / "shop", copy, std::filesystem::copy_options::recursive);
    Store twin = must(Store::open(copy, shop.clock()));
    must(twin.append(journal::memoKept(job, {twin.newId(), {}, "here", {}, {}})));
    shop.say(journal::memoKept(job, {shop.store.newId(), {}, "there", {}, {}}));
    const auto refused = shop.store.merge(allEntries(twin));
    REQUIRE_FALSE(refused);
    CHECK_THAT(refused.error().message, Catch::Contains("copies"));
}

TEST_CASE("an owner's data goes on request, from every file, and does not come back") {
    Shop shop;
    const Id job = shop.wholeJob("1");
    const Id owner = must(shop.store.job(job)).owner;
    const auto before = allEntries(shop.store);
    const auto ownersEntries = must(shop.store.entries(owner));
    CHECK(must(shop.store.redact(owner)) == 1);
    CHECK(shop.store.redact(shop.store.newId()).error().fault == Fault::NotFound);
    CHECK(must(shop.store.find("quarmby")).empty());
    CHECK(must(shop.store.jobs()).at(0).owner.empty());
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
    must(shop.store.merge(before));
    CHECK(must(shop.store.owner(owner)).name.empty());
    for (const char* file : {"shop.db", "shop.db-wal"}) {
        std::string content;
        (void)posixFiles()->read(shop.folder.path() / "shop" / file, [&](std::span<const std::byte> piece) {
            content.append(reinterpret_cast<const char*>(piece.data()), piece.size());
        });
        CHECK(content.find("Quarmby") == std::string::npos);
        CHECK(content.find("quarmby") == std::string::npos);
        CHECK(content.find("Mill Lane") == std::string::npos);
    }

    // Elsewhere a redacted entry that comes first is filled by the whole one, never the other way round.
    Folder folder;
    Store other = must(Store::open(folder.path()));
    must(other.merge(must(shop.store.entries(owner))));
    CHECK(must(other.owner(owner)).name.empty());
    must(other.merge(ownersEntries));
    CHECK(must(other.owner(owner)).name == "Ilse Quarmby");
    must(other.merge(must(shop.store.entries(owner))));
    CHECK(must(other.owner(owner)).name == "Ilse Quarmby");
    CHECK(must(other.check()).faults == std::vector<std::string>{});
}
