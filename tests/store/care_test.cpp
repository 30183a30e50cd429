#include "tests/store/shop.h"
#include "tests/store/tables.h"

#include <algorithm>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

bool tells(const CheckReport& report, const std::string& words) {
    return std::any_of(report.faults.begin(), report.faults.end(),
                       [&](const std::string& fault) { return fault.find(words) != std::string::npos; });
}

std::string dropping(const std::string& trigger, const std::string& sql) {
    return "DROP TRIGGER " + trigger + "; " + sql;
}

} // namespace

TEST_CASE("rebuilding from the journal gives what was there, and mends what was spoilt") {
    Shop shop;
    shop.wholeJob("2026-001");
    shop.wholeJob("2026-002");
    shop.smallJob("2026-003");
    const auto folder = shop.folder.path() / "shop";
    const std::string tables = projections(folder);
    const std::string shown = everything(shop.store);
    must(shop.store.rebuild());
    CHECK(projections(folder) == tables);

    tamper(folder, "PRAGMA foreign_keys = OFF; DELETE FROM job_line; DELETE FROM step; DELETE FROM machine; "
                   "DELETE FROM mechanic; UPDATE finding SET text = 'all is well'; DELETE FROM search_line; "
                   "INSERT INTO search (search) VALUES ('delete-all')");
    CHECK(must(shop.store.jobs()).empty());
    const auto report = must(shop.store.check());
    CHECK(tells(report, "table job_line"));
    CHECK(tells(report, "table step"));
    CHECK(tells(report, "table finding"));
    CHECK(tells(report, "rebuild"));
    must(shop.store.rebuild());
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
    CHECK(projections(folder) == tables);
    CHECK(everything(shop.store) == shown);
}

TEST_CASE("a rebuild may be cancelled and then changes nothing, progress reaches its end") {
    Shop shop;
    shop.wholeJob("2026-001");
    tamper(shop.folder.path() / "shop", "PRAGMA foreign_keys = OFF; UPDATE job_line SET number = 'spoilt'");
    const auto cancelled = shop.store.rebuild([](std::size_t done, std::size_t) { return done < 2; });
    REQUIRE_FALSE(cancelled);
    CHECK(must(shop.store.jobs()).at(0).number == "spoilt");
    std::size_t last = 0;
    std::size_t all = 0;
    must(shop.store.rebuild([&](std::size_t done, std::size_t total) {
        last = done;
        all = total;
        return true;
    }));
    CHECK(last == all);
    CHECK(must(shop.store.jobs()).at(0).number == "2026-001");
    must(shop.store.check([&](std::size_t done, std::size_t total) {
        last = done;
        all = total;
        return true;
    }));
    CHECK(last == all);
    CHECK_FALSE(shop.store.check([](std::size_t, std::size_t) { return false; }));
}

TEST_CASE("the check finds what was done to the journal") {
    const std::vector<std::pair<std::string, std::string>> damages{
        {dropping("entry_is_final", "UPDATE entry SET body = '{\"number\":\"9\"}' WHERE kind = 'job.opened'"),
         "does not fit its body hash"},
        {dropping("entry_is_final", "UPDATE entry SET mechanic = 'x' WHERE kind = 'job.opened'"),
         "does not fit its hash"},
        {dropping("entry_is_final", "UPDATE entry SET wall_ms = wall_ms - 1 WHERE number = 4"),
         "does not fit"},
        {dropping("entry_stays", "DELETE FROM entry WHERE number = 3"), "entries 3 to 3 are missing"},
        {dropping("entry_stays", "DELETE FROM entry WHERE number = 1"), "entries 1 to 1 are missing"},
        {"INSERT INTO entry SELECT 'forged', device, number + 1, wall_ms + 1, counter, kind, stream, "
         "subject, "
         "mechanic, supersedes, body, redacted, salt, body_hash, previous, hash FROM entry ORDER BY number "
         "DESC "
         "LIMIT 1",
         "forged"},
        {"PRAGMA foreign_keys = OFF; INSERT INTO finding VALUES ('nowhere', 'x', 'x', 'unsafe', '', 0, '', "
         "'', "
         "'', 0)",
         "no entry says so"},
        {"PRAGMA foreign_keys = OFF; INSERT INTO finding VALUES ('nowhere', 'x', 'x', 'unsafe', '', 0, '', "
         "'', "
         "'', 0)",
         "refers to one in job_line"},
        {"INSERT INTO search (search) VALUES ('delete-all')", "search"},
    };
    for (const auto& [sql, says] : damages) {
        INFO(sql);
        Shop shop;
        shop.wholeJob("2026-001");
        REQUIRE(must(shop.store.check()).sound());
        tamper(shop.folder.path() / "shop", sql);
        const auto report = must(shop.store.check());
        CHECK(tells(report, says));
        CHECK_FALSE(report.sound());
    }
}

TEST_CASE("the journal's table refuses changes and deletions") {
    Shop shop;
    shop.wholeJob("2026-001");
    const auto folder = shop.folder.path() / "shop";
    for (const char* sql :
         {"DELETE FROM entry", "UPDATE entry SET body = '{}'", "UPDATE entry SET mechanic = ''",
          "UPDATE entry SET redacted = 2, body = 'x'", "UPDATE entry SET hash = '', redacted = 2"}) {
        INFO(sql);
        CHECK_THROWS(tamper(folder, sql));
    }
    CHECK(must(shop.store.check()).sound());
}

TEST_CASE("the check names media that are missing, rotten or strange") {
    Shop shop;
    shop.wholeJob("2026-001");
    const auto media = shop.folder.path() / "shop" / "media";
    const std::string name = std::filesystem::directory_iterator(media)->path().filename().string();
    std::filesystem::rename(media / name, media / "holiday.jpg");
    const auto report = must(shop.store.check());
    CHECK(tells(report, "photo.taken"));
    CHECK(tells(report, "holiday.jpg"));
    std::filesystem::rename(media / "holiday.jpg", media / name);
    CHECK(must(shop.store.check()).mediaFiles == 1);
    CHECK(must(shop.store.check()).sound());
}
