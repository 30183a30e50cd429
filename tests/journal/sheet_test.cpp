// Machines and parts from a spreadsheet: what each line would do, and what is wrong with it.
#include "core/journal/sheet.h"

#include "core/journal/fold.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <string>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

tl::expected<SheetPlan, std::string> plan(std::string_view text, std::vector<job::Part> parts = {}) {
    return planSheet(
        text, {{"j1", "2026-001", "MT125-1"}}, [parts](const Id&) { return parts; },
        [n = 0]() mutable { return "id-" + std::to_string(++n); },
        [n = 7]() mutable { return "2026-00" + std::to_string(++n); });
}

} // namespace

TEST_CASE("A sheet of machines opens jobs, passes over what is here and names what is wrong by its column") {
    const auto machines = plan("Model;make;YEAR;Frame number;owner;odometer;colour\n"
                               "Tern 125;Marrowin;1987;mt125-1;Ilse;18423\n"
                               "Gull 50;Velbrook;1998;VG50-2;Mats;15890 km\n"
                               "Gull 50;Velbrook;98x;VG50-3;;far\n"
                               ";;1990;;;\n"
                               "Gull 50;Velbrook;1998;vg50-2;Mats;\n");
    REQUIRE(machines);
    CHECK_FALSE(machines->parts);
    CHECK(machines->unknown == std::vector<std::string>{"colour"});
    REQUIRE(machines->lines.size() == 5);
    CHECK(machines->lines[0].says == "passed over: is here as job 2026-001");
    CHECK(machines->lines[1].says == "opens job 2026-008: Velbrook Gull 50");
    CHECK(machines->lines[1].drafts.size() == 3);
    CHECK(machines->lines[2].problems.size() == 2);
    CHECK(machines->lines[2].problems[0].find("year") == 0);
    CHECK(machines->lines[2].problems[1].find("odometer") == 0);
    CHECK(machines->lines[3].problems[0].find("make") == 0);
    CHECK(machines->lines[4].says.find("passed over") == 0); // the line before brought it in
    Ledger ledger;
    for (const Draft& draft : machines->drafts()) {
        INFO(draft.body);
        CHECK_FALSE(shapeProblem(ledger.add(draft)));
    }
    CHECK(machines->drafts().size() == 3);
    const auto opened = std::find_if(ledger.entries.begin(), ledger.entries.end(),
                                     [](const Entry& entry) { return entry.kind == "job.opened"; });
    const auto job = foldJob(opened->stream, ledger.entries);
    CHECK(job.number == "2026-008");
    CHECK(job.odometer == job::TypedValue{"15890", "km"});
}

TEST_CASE("A sheet of parts adds to its jobs, and a part that is there is not added again") {
    job::Part there;
    there.name = "Bulb";
    there.number = "B-1";
    const auto parts = plan("job,part,number,state,price,currency\r\n"
                            "2026-001,brake shoes,QX-1,Ordered,\"18,50\",EUR\r\n"
                            "2026-001,bulb,b-1,,,\r\n"
                            "2026-001,bulb,,,\r\n"
                            "2026-009,hose,,lost,9.x,\r\n",
                            {there});
    REQUIRE(parts);
    CHECK(parts->parts);
    REQUIRE(parts->lines.size() == 4);
    CHECK(parts->lines[0].says == "adds to job 2026-001: brake shoes QX-1");
    CHECK(parts->lines[1].says == "passed over: job 2026-001 has it");
    CHECK(parts->lines[2].drafts.size() == 1);
    CHECK(parts->lines[3].problems.size() == 4); // state, price, currency, job
    Ledger ledger;
    ledger.add(jobOpened("j1", {}));
    for (const Draft& draft : parts->drafts())
        CHECK_FALSE(shapeProblem(ledger.add(draft)));
    const auto job = foldJob("j1", ledger.entries);
    REQUIRE(job.parts.size() == 2);
    CHECK(job.parts[0].price == job::TypedValue{"18.50", "EUR"});
    CHECK(job.parts[0].state == job::PartState::Ordered);
}

TEST_CASE("A file that is neither is refused as a whole, with the remedy") {
    CHECK(plan("").error() == "the file is empty");
    CHECK(plan("name,age\nx,1\n").error().find("\"make\" and \"model\"") != std::string::npos);
    CHECK(plan("make\n\"x").error().find("line 2") == 0);
}

TEST_CASE("A cell that could not be kept is a problem of its line, and the lines beside it are brought in") {
    const std::string latin1 = "M\xFCller"; // as spreadsheets write where they are not asked for UTF-8
    const auto machines = plan("model,owner,reason,colour\n"
                               "Gull 50," +
                               latin1 + ",\n" + "Gull 50,Mats," + std::string(4001, 'x') + "\n" +
                               "Gull 50,Mats," + std::string("a\0b", 3) + "\n" + "Gull 50,M\xC3\xBCller," +
                               std::string(4000, 'x') + "," + latin1 + "\n");
    REQUIRE(machines);
    REQUIRE(machines->lines.size() == 4);
    const std::array<std::string, 3> begins{"owner: is not written in UTF-8", "reason: has 4001 bytes",
                                            "reason: holds a NUL"};
    for (std::size_t i = 0; i < begins.size(); ++i) {
        const SheetLine& line = machines->lines[i];
        REQUIRE(line.problems.size() == 1);
        CHECK(line.problems[0].find(begins.at(i)) == 0);
        CHECK(line.drafts.empty());
    }
    CHECK(machines->lines[3].problems.empty()); // the colour is not brought in
    CHECK(machines->lines[3].drafts.size() == 3);
}
