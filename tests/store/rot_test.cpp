// Bytes that flip on the medium: found, named, mended from a backup; the rest stays in use.
#include "tests/store/long.h"
#include "tests/store/shop.h"

#include "core/store/backup.h"
#include "core/store/salvage.h"

#include <algorithm>
#include <fstream>
#include <map>
#include <random>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

void spill(const std::filesystem::path& file, const std::string& content) {
    std::ofstream(file, std::ios::binary) << content;
}

bool tells(const std::vector<std::string>& faults, const std::string& words) {
    return std::any_of(faults.begin(), faults.end(),
                       [&](const std::string& fault) { return fault.find(words) != std::string::npos; });
}

struct Rotten {
    Shop shop;
    std::filesystem::path folder{shop.folder.path() / "shop"};
    Id job;

    Rotten() {
        for (int i = 0; i < 8; ++i) {
            job = shop.wholeJob("2026-00" + std::to_string(i));
        }
    }
    void close() { const Store closed = std::move(shop.store); } // the log goes into the database
    void flip(const std::string& in, const std::string& with) {
        std::string content = slurp(folder / "shop.db");
        std::size_t at = 0;
        int count = 0;
        for (; (at = content.find(in, at)) != std::string::npos; ++count, at += in.size()) {
            content.replace(at, in.size(), with);
        }
        REQUIRE(count > 0);
        spill(folder / "shop.db", content);
    }
};

} // namespace

TEST_CASE("a photo that rotted is named by its job and step, and mended from a backup") {
    Rotten rotten;
    auto& store = rotten.shop.store;
    const auto job = must(store.job(rotten.job));
    const std::string name = rotten.shop.photo("the front wheel nut");
    rotten.shop.say(journal::photoTaken(
        rotten.job,
        {store.newId(), name, job::PhotoPurpose::Strip, job.steps.at(0).id, "close up", 4, 3, 0, {}}));
    const auto backup = rotten.shop.folder.path() / "monday.backup";
    must(writeBackup(store, backup));
    spill(must(store.media(name)), "the front wheel nuT");

    auto report = must(store.check());
    REQUIRE(report.faults.size() == 1);
    CHECK_THAT(report.faults[0], Catch::Contains(name) && Catch::Contains("job 2026-007") &&
                                     Catch::Contains("strip step 'unplug 6-place connector'") &&
                                     Catch::Contains("photo 'close up'"));
    const auto mended = must(mendMedia(store, {backup}));
    CHECK(mended.brought == std::vector{name});
    CHECK(mended.wanting.empty());
    CHECK(slurp(must(store.media(name))) == "the front wheel nut");
    CHECK(must(store.check()).sound());

    std::filesystem::remove(must(store.media(name)));
    CHECK(must(mendMedia(store, {})).wanting == std::vector{name});
    CHECK(must(mendMedia(store, {backup})).brought == std::vector{name});
}

TEST_CASE("an entry whose text flipped is named by its job, everything else can be read and is salvaged") {
    Rotten rotten;
    rotten.shop.say(journal::memoKept(rotten.job, {rotten.shop.store.newId(), {}, "shim 0.35", {}, {}}));
    const std::size_t entries = must(rotten.shop.store.check()).entries;
    rotten.close();
    rotten.flip("shim 0.35", "shim 0.85"); // in the entry and in every table made from it
    {
        const Store store = must(Store::open(rotten.folder));
        const auto report = must(store.check());
        CHECK(tells(report.faults, "job 2026-007, memo"));
    }
    const Store looking = must(Store::openReadable(rotten.folder));
    CHECK(must(looking.jobs()).size() == 8);
    CHECK(must(looking.job(rotten.job)).memos.size() == 1); // that of the whole job
    CHECK_FALSE(must(looking.find("shim")).size() > 0);
    CHECK(tells(must(looking.check()).faults, "does not fit"));

    const auto to = rotten.shop.folder.path() / "salvaged";
    const auto salvaged = must(salvage(rotten.folder, to));
    CHECK(salvaged.entries == entries - 1);
    const Store made = must(Store::open(to));
    CHECK(must(made.jobs()).size() == 8);
}

TEST_CASE("a step whose own entry cannot be read any more is named by the title that the tables have") {
    Rotten rotten;
    rotten.close();
    std::string content = slurp(rotten.folder / "shop.db");
    // The text of every such entry is no JSON any more; the tables keep theirs.
    const std::string body = R"("title":"unplug 6-place connector")";
    int broken = 0;
    for (std::size_t at = 0; (at = content.find(body, at)) != std::string::npos; ++broken) {
        content[at] = '!';
    }
    REQUIRE(broken > 0);
    spill(rotten.folder / "shop.db", content);
    const Store store = must(Store::open(rotten.folder));
    CHECK(tells(must(store.check()).faults, "[job 2026-007, strip step 'unplug 6-place connector']"));
}

TEST_CASE("a damaged page: what can be read is shown, nothing can be said, and a backup fills the gap") {
    Rotten rotten;
    const std::string shown = everything(rotten.shop.store);
    const std::size_t entries = must(rotten.shop.store.check()).entries;
    must(backUpDatabase(rotten.shop.store));
    rotten.close();
    // The leaf pages that hold the table of entries: a zeroed page is what a lost block leaves.
    std::string content = slurp(rotten.folder / "shop.db");
    constexpr std::size_t page = 4096;
    int zeroed = 0;
    for (std::size_t at = 2 * page; at + page <= content.size() && zeroed < 3; at += page) {
        if (content[at] == '\x0D' && content.substr(at, page).find("step.stripped") != std::string::npos) {
            std::fill_n(content.begin() + static_cast<std::ptrdiff_t>(at), page, '\0');
            zeroed += 1;
        }
    }
    REQUIRE(zeroed > 0);
    spill(rotten.folder / "shop.db", content);

    if (const auto opened = Store::open(rotten.folder)) {
        const auto report = must(opened->check());
        CHECK_FALSE(report.sound());
        CHECK(tells(report.faults, "cannot be read"));
        CHECK(tells(report.faults, "entries of job 2026-00"));
    }
    {
        Store looking = must(Store::openReadable(rotten.folder));
        CHECK_THAT(looking.readOnly(), Catch::Contains("damaged") && Catch::Contains("looked at"));
        CHECK(must(looking.jobs()).size() >= 2);
        CHECK_FALSE(must(looking.check()).sound());
        const auto refused =
            looking.append(journal::memoKept(rotten.job, {looking.newId(), {}, "x", {}, {}}));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().message == looking.readOnly());
        CHECK_FALSE(looking.keepMedia(bytes("photo"), "jpg"));
        CHECK_FALSE(looking.keepDraft("finding", "{}"));
        CHECK_FALSE(looking.rebuild());
        CHECK_FALSE(backUpDatabase(looking));
        CHECK_FALSE(looking.mechanic().empty());
    }
    CHECK(slurp(rotten.folder / "shop.db") == content); // left exactly as it is

    const auto to = rotten.shop.folder.path() / "salvaged";
    const auto salvaged = must(salvage(rotten.folder, to));
    CHECK(salvaged.entries == entries);
    CHECK(salvaged.fromBackups > 0);
    CHECK(tells(salvaged.faults, "cannot be read"));
    CHECK(salvaged.report.faults == std::vector<std::string>{});
    Store made = must(Store::open(to));
    CHECK(everything(made) == shown);
    CHECK(made.mechanic() == rotten.shop.mechanic);
    must(made.append(journal::memoKept(rotten.job, {made.newId(), {}, "work goes on", {}, {}})));
    CHECK(must(made.check()).sound());
    CHECK(salvage(rotten.folder, to).error().fault == Fault::Refused); // never over what is there
}

TEST_CASE("whatever byte flips in the database, nothing false is shown and nothing crashes") {
    Rotten rotten;
    std::map<Id, journal::Entry> said;
    for (const auto& line : must(rotten.shop.store.jobs())) {
        for (auto& entry : must(rotten.shop.store.entries(line.id))) {
            said.emplace(entry.id, entry);
        }
    }
    rotten.close();
    const std::string whole = slurp(rotten.folder / "shop.db");
    std::mt19937 random(7); // NOLINT(cert-msc51-cpp): the same bytes each time
    const int flips = isLong() ? 1'000 : 60;
    int found = 0;
    int opened = 0;
    std::size_t read = 0;
    for (int i = 0; i < flips; ++i) {
        std::string content = whole;
        const std::size_t at = random() % content.size();
        content[at] = static_cast<char>(content[at] ^ (1 << random() % 8));
        INFO("byte " << at);
        spill(rotten.folder / "shop.db", content);
        if (const auto store = Store::open(rotten.folder)) {
            const auto report = store->check();
            found += !report || !report->sound() ? 1 : 0;
        } else {
            ++found;
        }
        spill(rotten.folder / "shop.db", content); // as it was before anybody worked on it
        for (const char* more : {"shop.db-wal", "shop.db-shm"}) {
            std::filesystem::remove(rotten.folder / more);
        }
        const auto looking = Store::openReadable(rotten.folder);
        if (!looking) {
            CHECK_FALSE(looking.error().message.empty());
            continue;
        }
        ++opened;
        for (const auto& line : must(looking->jobs())) {
            for (const auto& entry : must(looking->entries(line.id))) {
                ++read;
                const bool asSaid = said.contains(entry.id) && said.at(entry.id).hash == entry.hash &&
                                    (entry.redacted || said.at(entry.id).body == entry.body);
                REQUIRE(asSaid);
            }
        }
        CHECK(slurp(rotten.folder / "shop.db") == content);
    }
    WARN(flips << " single flipped bits: " << found << " found by check, " << opened << " stores readable, "
               << read * 100 / (static_cast<std::size_t>(flips) * said.size())
               << " % of all entries still read, none of them false");
    CHECK(opened * 10 > flips * 9);
}

TEST_CASE("a database that cannot be opened at all is read page by page, and so is its log") {
    Rotten rotten;
    const std::string shown = everything(rotten.shop.store);
    const std::size_t entries = must(rotten.shop.store.check()).entries;
    // A body of many pages, so that what is read runs on over pages of its own.
    const std::string much(20'000, 'q');
    rotten.shop.say(journal::memoKept(rotten.job, {rotten.shop.store.newId(), {}, much, {}, {}}));
    const bool withLog = GENERATE(false, true);
    if (!withLog) {
        rotten.close();
    }
    std::string content = slurp(rotten.folder / "shop.db");
    const auto copy = rotten.shop.folder.path() / "copy";
    std::filesystem::create_directories(copy);
    if (withLog) {
        REQUIRE(std::filesystem::file_size(rotten.folder / "shop.db-wal") > 0);
        std::filesystem::copy_file(rotten.folder / "shop.db-wal", copy / "shop.db-wal");
    }
    const auto damage = GENERATE(as<std::string>{}, "header", "schema", "root", "cut");
    CAPTURE(withLog, damage);
    if (damage == "header") {
        std::fill_n(content.begin(), 100, '\0');
    } else if (damage == "schema" && content.find("CREATE TABLE step") != std::string::npos) {
        content.replace(content.find("CREATE TABLE step"), 6, "CREAXE");
    } else if (damage == "root") {
        std::fill_n(content.begin() + 4096, std::min<std::size_t>(4096, content.size() - 4096), '\0');
    } else if (damage == "cut" && content.size() > 8 * 4096) {
        content.resize(content.size() - 4096 * 2);
    }
    spill(copy / "shop.db", content);

    const Store looking = must(Store::openReadable(copy));
    std::size_t read = 0;
    bool whole = false;
    for (const auto& line : must(looking.jobs())) {
        for (const auto& entry : must(looking.entries(line.id))) {
            ++read;
            whole = whole || entry.body.find(much) != std::string::npos;
        }
    }
    CHECK(read * 10 > entries * 7); // the others are of machines, owners and the shop
    CHECK((whole || damage == "cut"));
    CHECK(slurp(copy / "shop.db") == content);
    // Stopped it leaves nothing, not even under the name that it had until then.
    const auto besides = [&] {
        return std::distance(std::filesystem::directory_iterator(rotten.shop.folder.path()), {});
    };
    const auto before = besides();
    CHECK_FALSE(salvage(copy, rotten.shop.folder.path() / "salvaged", {}, {},
                        [](std::size_t, std::size_t) { return false; }));
    CHECK(besides() == before);
    const auto salvaged = must(salvage(copy, rotten.shop.folder.path() / "salvaged"));
    CHECK(besides() == before + 1);
    CHECK(salvaged.entries + (damage == "cut" ? 3 : 0) >= entries + 1);
    // Who works here is not asked again, although the table that told it is lost.
    CHECK_FALSE(must(Store::open(rotten.shop.folder.path() / "salvaged")).mechanic().empty());
}

TEST_CASE("a shop whose database became empty or vanished is no new shop, and its copies show what was") {
    Rotten rotten;
    const auto backup = rotten.shop.folder.path() / "monday.backup";
    must(writeBackup(rotten.shop.store, backup));
    const std::size_t entries = must(rotten.shop.store.check()).entries;
    const bool copies = GENERATE(false, true);
    if (copies) {
        must(backUpDatabase(rotten.shop.store));
    }
    rotten.close();
    if (GENERATE(false, true)) {
        spill(rotten.folder / "shop.db", "");
    } else {
        std::filesystem::remove(rotten.folder / "shop.db");
    }
    CAPTURE(copies);
    const auto opened = Store::open(rotten.folder);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().fault == Fault::Damaged);
    CHECK_THAT(opened.error().message, Catch::Contains("store salvage"));
    const auto looking = Store::openReadable(rotten.folder);
    REQUIRE(looking.has_value() == copies);
    if (looking) {
        CHECK(must(looking->jobs()).size() == 8);
        CHECK_FALSE(looking->mechanic().empty());
        CHECK_FALSE(looking->readOnly().empty());
    }
    const auto to = rotten.shop.folder.path() / "salvaged";
    const auto alone = salvage(rotten.folder, to);
    CHECK(alone.has_value() == copies);
    CHECK(std::filesystem::exists(to) == copies);
    CHECK(must(salvage(rotten.folder, rotten.shop.folder.path() / "again", {backup})).entries == entries);
}

TEST_CASE("a shop beside which no log can be made can be looked at") {
    Rotten whole;
    whole.close();
    // What a full disk does: neither the log nor its index can be opened.
    std::filesystem::create_directory(whole.folder / "shop.db-wal");
    std::filesystem::create_directory(whole.folder / "shop.db-shm");
    REQUIRE_FALSE(Store::open(whole.folder));
    const Store looking = must(Store::openReadable(whole.folder, systemClock(), Fault::DiskFull));
    CHECK(must(looking.jobs()).size() == 8);
    CHECK(must(looking.job(whole.job)).memos.size() == 1);
    CHECK(must(looking.check()).sound());
    CHECK_THAT(looking.readOnly(), Catch::Contains("full") && Catch::Contains("room"));
}
