// Stores as every released schema wrote them, kept as SQL in tests/store/fixtures: opened, migrated, checked.
#include "tests/store/shop.h"
#include "tests/store/tables.h"

#include "core/store/archive.h"
#include "core/store/salvage.h"
#include "core/store/schema.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdlib>
#include <fstream>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

const std::filesystem::path fixtures = std::filesystem::path(UNDERCOWL_TESTS) / "store" / "fixtures";

std::filesystem::path fixture(int schema, const char* suffix) {
    return fixtures / ("schema-" + std::to_string(schema) + suffix);
}

void make(const std::filesystem::path& folder, int schema) {
    std::filesystem::create_directories(folder / "media");
    SQLite::Database database((folder / "shop.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec(slurp(fixture(schema, ".sql")));
}

// The tables with what is in them; the search index and its own tables follow from these by their triggers.
std::string dump(const std::filesystem::path& file) {
    SQLite::Database database(file.string(), SQLite::OPEN_READONLY);
    std::string sql = "BEGIN;\n";
    std::vector<std::string> tables;
    SQLite::Statement made(
        database, "SELECT name, type, sql FROM sqlite_master WHERE sql IS NOT NULL AND name NOT LIKE "
                  "'search\\__%' ESCAPE '\\' OR name LIKE 'search\\_line%' ESCAPE '\\' AND sql IS NOT NULL "
                  "ORDER BY rowid");
    while (made.executeStep()) {
        sql += made.getColumn(2).getString() + ";\n";
        if (made.getColumn(1).getString() == "table" && made.getColumn(0).getString() != "search") {
            tables.push_back(made.getColumn(0).getString());
        }
    }
    for (const std::string& table : tables) {
        SQLite::Statement rows(database, "SELECT * FROM " + table);
        while (rows.executeStep()) {
            std::string values;
            for (int i = 0; i < rows.getColumnCount(); ++i) {
                SQLite::Statement quoted(database, "SELECT quote(?)");
                const auto column = rows.getColumn(i);
                if (column.isInteger()) {
                    quoted.bind(1, column.getInt64());
                } else if (column.isFloat()) {
                    quoted.bind(1, column.getDouble());
                } else if (!column.isNull()) {
                    quoted.bind(1, column.getString());
                }
                quoted.executeStep();
                values += (i == 0 ? "" : ", ") + quoted.getColumn(0).getString();
            }
            sql += "INSERT INTO " + table + " VALUES (" + values + ");\n";
        }
    }
    return sql + "COMMIT;\nPRAGMA application_id = " +
           std::to_string(database.execAndGet("PRAGMA application_id").getInt()) +
           ";\nPRAGMA user_version = " + std::to_string(database.execAndGet("PRAGMA user_version").getInt()) +
           ";\n";
}

} // namespace

TEST_CASE("a store of every schema that there ever was is opened, migrated and sound") {
    for (int schema = 1; schema <= migrations().back().to; ++schema) {
        INFO("schema " << schema);
        // A new schema needs a fixture before it is released: test_store '[.fixture]' writes it.
        REQUIRE(std::filesystem::exists(fixture(schema, ".sql")));
        Folder folder;
        const auto shop = folder.path() / "shop";
        make(shop, schema);
        std::filesystem::copy(fixture(schema, ".jpg"), shop / "media" / slurp(fixture(schema, ".media")));
        {
            Store store = must(Store::open(shop));
            CHECK(must(store.check()).faults == std::vector<std::string>{});
            // What was said is as it was; what follows from it may be told in other words than then.
            const auto lines = must(store.jobs());
            REQUIRE(lines.size() == 2);
            CHECK(lines[0].number == "2026-002");
            CHECK(lines[1].number == "2026-001");
            const auto whole = must(store.job(lines[1].id));
            CHECK(whole.unreadable.empty());
            CHECK(whole.photos.at(0).note == "left side, rusty");
            CHECK(whole.findings.at(0).text == "front brake hose cracked");
            CHECK(whole.steps.at(0).title == "unplug 6-place connector");
            CHECK(whole.steps.at(0).hardware.at(0).torque == job::TypedValue{"9.3", "N.m"});
            CHECK(whole.gatherings.at(0).title == "right switch cluster");
            CHECK(whole.readings.at(0).value == job::TypedValue{"12.6", "V"});
            CHECK_FALSE(must(store.find("brake hose")).empty());
            const std::string tables = projections(shop);
            must(store.rebuild());
            CHECK(projections(shop) == tables);
            CHECK(store.setting("theme") == "night");
            CHECK(store.draft("finding") == R"({"text":"chai"})");
            CHECK_FALSE(store.mechanic().empty());
            const Id job = must(store.jobs()).at(0).id;
            must(store.append(journal::memoKept(job, {store.newId(), {}, "work goes on", {}, {}})));
            CHECK(must(store.check()).sound());
        }
        SQLite::Database database((shop / "shop.db").string());
        CHECK(database.execAndGet("PRAGMA user_version").getInt() == migrations().back().to);
        CHECK(std::filesystem::exists(shop / ("shop.db.schema-" + std::to_string(schema))) ==
              (schema < migrations().back().to));
    }
}

TEST_CASE("several readings of one thing are brought into the tables of a store that had no place for them") {
    Shop shop;
    shop.wholeJob("2026-001");
    const auto folder = shop.folder.path() / "shop";
    { const Store closed = std::move(shop.store); }
    const std::string wanted = projections(folder);
    CHECK(wanted.find(R"(["12.5","12.7"])") != std::string::npos);
    {
        SQLite::Database older((folder / "shop.db").string(), SQLite::OPEN_READWRITE);
        older.exec(
            "DROP INDEX part_by_letters; DROP INDEX machine_by_letters; ALTER TABLE reading DROP COLUMN "
            "repeated; ALTER TABLE job_line DROP COLUMN waits; ALTER TABLE job_line DROP COLUMN waits_key; "
            "ALTER TABLE job_line DROP COLUMN waits_values; UPDATE device_state SET value = '3' "
            "WHERE name = 'projection'; PRAGMA user_version = 2");
    }
    const Store store = must(Store::open(folder));
    CHECK(projections(folder) == wanted);
    CHECK(must(store.check()).sound());
}

TEST_CASE("a store of a newer version is opened for looking only, with a clear word") {
    Shop shop;
    const Id job = shop.wholeJob("2026-001");
    const std::string shown = everything(shop.store);
    const auto folder = shop.folder.path() / "shop";
    { const Store closed = std::move(shop.store); }
    {
        SQLite::Database newer((folder / "shop.db").string(), SQLite::OPEN_READWRITE);
        newer.exec("PRAGMA user_version = 99; ALTER TABLE entry ADD COLUMN mood TEXT NOT NULL DEFAULT ''; "
                   "DROP TABLE job_line; CREATE TABLE job_board (a)");
    }
    const std::string before = slurp(folder / "shop.db");
    Store looking = must(Store::openReadable(folder));
    CHECK_THAT(looking.readOnly(), Catch::Contains("newer version") && Catch::Contains("update") ||
                                       Catch::Contains("up to date"));
    CHECK(everything(looking) == shown);
    CHECK_FALSE(looking.append(journal::memoKept(job, {looking.newId(), {}, "x", {}, {}})));
    CHECK(slurp(folder / "shop.db") == before);
    // No new shop is made of what is only known in part.
    const auto salvaged = salvage(folder, folder.parent_path() / "salvaged");
    REQUIRE_FALSE(salvaged);
    CHECK(salvaged.error().fault == Fault::TooNew);
    CHECK_FALSE(std::filesystem::exists(folder.parent_path() / "salvaged"));
}

TEST_CASE("write the fixture of the newest schema into UNDERCOWL_FIXTURES", "[.fixture]") {
    const char* to = std::getenv("UNDERCOWL_FIXTURES");
    REQUIRE(to != nullptr);
    Shop shop;
    shop.wholeJob("2026-001");
    shop.smallJob("2026-002");
    must(shop.store.set("theme", "night"));
    must(shop.store.keepDraft("finding", R"({"text":"chai"})"));
    const std::string name = "schema-" + std::to_string(migrations().back().to);
    const auto put = [&](const std::string& suffix, const std::string& content) {
        std::ofstream(std::filesystem::path(to) / (name + suffix), std::ios::binary) << content;
    };
    put(".media", shop.photo("as found 2026-001"));
    put(".jpg", "as found 2026-001");
    must(exportJob(shop.store, must(shop.store.jobs()).at(1).id, std::filesystem::path(to) / "job.zip"));
    { const Store closed = std::move(shop.store); }
    put(".sql", dump(shop.folder.path() / "shop" / "shop.db"));
}
