#include "tests/store/shop.h"
#include "tests/store/tables.h"

#include "core/store/database.h"

#include <atomic>
#include <fstream>
#include <thread>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

Problem refusal(const std::filesystem::path& folder) {
    const auto opened = Store::open(folder);
    REQUIRE_FALSE(opened);
    CHECK_FALSE(opened.error().message.empty());
    return opened.error();
}

} // namespace

TEST_CASE("what is no store is left as it is") {
    Folder folder;
    const auto path = folder.path();
    SECTION("a folder with other things in it") {
        std::ofstream(path / "notes.txt") << "mine";
        CHECK(refusal(path).fault == Fault::CannotOpen);
        CHECK(std::distance(std::filesystem::directory_iterator(path), {}) == 1);
    }
    SECTION("a file in the folder's place") {
        std::ofstream(path / "file") << "mine";
        CHECK(refusal(path / "file").fault == Fault::CannotOpen);
        CHECK(slurp(path / "file") == "mine");
    }
    SECTION("the database of another program") {
        {
            SQLite::Database(path / "shop.db", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
                .exec("CREATE TABLE t (a)");
        }
        const std::string before = slurp(path / "shop.db");
        CHECK(refusal(path).fault == Fault::CannotOpen);
        CHECK(slurp(path / "shop.db") == before);
    }
    SECTION("no database at all") {
        std::ofstream(path / "shop.db") << std::string(8192, 'x');
        CHECK(refusal(path).fault == Fault::Damaged);
        CHECK(slurp(path / "shop.db") == std::string(8192, 'x'));
    }
    SECTION("media whose database is gone") {
        std::filesystem::create_directories(path / "media");
        std::ofstream(path / "media" / "photo.jpg") << "x";
        CHECK(refusal(path).fault == Fault::Damaged);
        CHECK_FALSE(std::filesystem::exists(path / "shop.db"));
    }
}

TEST_CASE("a store of a newer version is not touched") {
    Shop shop;
    shop.wholeJob("1");
    const auto copy = shop.folder.path() / "newer";
    { Store closed = std::move(shop.store); } // writes the log back
    std::filesystem::copy(shop.folder.path() / "shop", copy, std::filesystem::copy_options::recursive);
    { SQLite::Database(copy / "shop.db", SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 99"); }
    const std::string before = slurp(copy / "shop.db");
    const auto problem = refusal(copy);
    CHECK(problem.fault == Fault::TooNew);
    CHECK_THAT(problem.message, Catch::Contains("99") && Catch::Contains("update"));
    CHECK(slurp(copy / "shop.db") == before);
}

TEST_CASE("a damaged database is reported, never deleted") {
    Shop shop;
    for (int i = 0; i < 5; ++i) {
        shop.wholeJob(std::to_string(i));
    }
    { Store closed = std::move(shop.store); }
    const auto file = shop.folder.path() / "shop" / "shop.db";
    std::string content = slurp(file);
    std::fill(content.begin() + 8192, content.end() - 4096, '\x5A');
    std::ofstream(file, std::ios::binary) << content;
    const auto opened = Store::open(shop.folder.path() / "shop");
    if (opened) { // the damage lies where opening did not look
        const auto report = opened->check();
        CHECK((!report || !report->sound()));
        const auto found = opened->find("brake");
        CHECK((!found || found->size() < 1000));
    } else {
        CHECK(opened.error().fault == Fault::Damaged);
        CHECK_THAT(opened.error().message, Catch::Contains("backup"));
    }
    CHECK(slurp(file).size() == content.size());
}

TEST_CASE(
    "an older schema is migrated after a copy was put beside it, a migration that fails changes nothing") {
    Folder folder;
    const auto file = folder.path() / "shop.db";
    const Migration first{1, "CREATE TABLE a (x); INSERT INTO a VALUES (7)"};
    const Migration good{2, "ALTER TABLE a ADD COLUMN y; UPDATE a SET y = x * 2"};
    const Migration bad{3, "CREATE TABLE b (x); INSERT INTO nowhere VALUES (1)"};
    { REQUIRE(Database::open(file, std::vector{first})); }
    CHECK_FALSE(std::filesystem::exists(folder.path() / "shop.db.schema-1"));
    {
        auto database = Database::open(file, std::vector{first, good});
        REQUIRE(database);
        CHECK(database->raw().execAndGet("SELECT y FROM a").getInt() == 14);
    }
    SQLite::Database copy(folder.path() / "shop.db.schema-1");
    CHECK(copy.execAndGet("PRAGMA user_version").getInt() == 1);
    CHECK(copy.execAndGet("SELECT x FROM a").getInt() == 7);

    CHECK_FALSE(Database::open(file, std::vector{first, good, bad}));
    auto database = Database::open(file, std::vector{first, good});
    REQUIRE(database);
    CHECK(database->raw().execAndGet("PRAGMA user_version").getInt() == 2);
    CHECK(database->raw().execAndGet("SELECT count(*) FROM sqlite_master WHERE name = 'b'").getInt() == 0);
}

TEST_CASE("every commit is synced") {
    Folder folder;
    auto database = Database::open(folder.path() / "shop.db");
    REQUIRE(database);
    CHECK(database->raw().execAndGet("PRAGMA journal_mode").getString() == "wal");
    CHECK(database->raw().execAndGet("PRAGMA synchronous").getInt() == 2); // FULL
    CHECK(database->raw().execAndGet("PRAGMA foreign_keys").getInt() == 1);
    CHECK(database->raw().execAndGet("PRAGMA application_id").getInt() == applicationId);
}

TEST_CASE("tables written by another version of the projections are made anew on opening") {
    Shop shop;
    shop.wholeJob("1");
    const auto folder = shop.folder.path() / "shop";
    const std::string before = projections(folder);
    tamper(
        folder,
        "UPDATE job_line SET number = 'old'; UPDATE device_state SET value = '0' WHERE name = 'projection'");
    Store again = shop.another();
    CHECK(projections(folder) == before);
}

TEST_CASE("two stores on one folder share one chain") {
    Shop shop;
    const Id job = shop.smallJob("1");
    Store second = shop.another();
    CHECK(second.mechanic() == shop.mechanic);
    for (int i = 0; i < 5; ++i) {
        shop.say(journal::memoKept(job, {shop.store.newId(), {}, "from one", {}, {}}));
        must(second.append(journal::memoKept(job, {second.newId(), {}, "from two", {}, {}})));
    }
    CHECK(must(shop.store.job(job)).memos.size() == 10);
    CHECK(must(shop.store.job(job)) == must(second.job(job)));
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("stores in several threads wait for each other") {
    Shop shop;
    const Id job = shop.smallJob("1");
    std::vector<std::thread> threads;
    std::vector<int> said(3);
    for (std::size_t t = 0; t < said.size(); ++t) {
        threads.emplace_back([&, t] {
            auto store = Store::open(shop.folder.path() / "shop");
            for (int i = 0; store && i < 20; ++i) {
                said[t] += store->append(journal::memoKept(job, {store->newId(), {}, "x", {}, {}})) ? 1 : 0;
            }
        });
    }
    for (auto& thread : threads) {
        thread.join();
    }
    CHECK(said == std::vector<int>{20, 20, 20});
    CHECK(must(shop.store.job(job)).memos.size() == 60);
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("a check beside somebody who writes sees no damage") {
    Shop shop;
    const Id job = shop.smallJob("1");
    std::atomic<int> said{0};
    std::string refused;
    std::thread writer([&] {
        auto store = must(Store::open(shop.folder.path() / "shop"));
        for (int i = 0; i < 30; ++i) {
            const auto entry = store.append(journal::memoKept(job, {store.newId(), {}, "brake", {}, {}}));
            refused += entry ? "" : entry.error().message;
            ++said;
        }
    });
    std::vector<std::string> faults;
    int checks = 0;
    for (; said < 30; ++checks) {
        const auto report = shop.store.check();
        if (!report) {
            faults.push_back(report.error().message);
        } else {
            faults.insert(faults.end(), report->faults.begin(), report->faults.end());
        }
    }
    writer.join();
    CHECK(refused.empty());
    CHECK(checks > 1);
    CHECK(faults == std::vector<std::string>{});
    CHECK(must(shop.store.job(job)).memos.size() == 30);
}
