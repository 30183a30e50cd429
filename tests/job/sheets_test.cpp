// Everything as spreadsheets.
#include "core/job/sheets.h"

#include "core/job/csv.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace undercowl;
using namespace undercowl::job;

namespace {

Job sample() {
    Job job;
    job.number = "2026-001";
    job.opened.at = 1'700'000'000'000;
    Finding finding;
    finding.text = "hose, cracked";
    job.findings = {finding, finding};
    Part part;
    part.name = "hose";
    part.price = TypedValue{"9.50", "EUR"};
    job.parts = {part};
    Reading reading;
    reading.what = "axle nut";
    reading.value = {"49", "N.m"};
    job.readings = {reading};
    StripStep step;
    step.title = "rear wheel";
    step.hardware = {{1, "axle nut", "M12", "", TypedValue{"49", "N.m"}}};
    job.steps = {step};
    wiring::Gathering plug;
    plug.title = "tail plug";
    plug.at({wiring::Half::Loom, 1, 1}).answer(wiring::Answer::AsFound) = wiring::PlaceAnswer{};
    job.gatherings = {plug};
    return job;
}

} // namespace

TEST_CASE("Every sheet has its head and as many cells in each row, and holds what the job says") {
    const Job job = sample();
    const auto files =
        sheets({{job, {"m", "Marrowin", "Tern 125", 1987, "MT1", ""}, {"o", "Ilse", "", "", ""}}});
    CHECK(files.size() == 9);
    const auto rowsOf = [&](const char* name) {
        const auto file =
            std::find_if(files.begin(), files.end(), [&](const auto& each) { return each.first == name; });
        REQUIRE(file != files.end());
        return *readCsv(file->second);
    };
    for (const auto& [name, text] : files) {
        INFO(name);
        const auto rows = readCsv(text);
        REQUIRE(rows);
        for (const auto& row : *rows)
            CHECK(row.size() == rows->front().size());
        CHECK(rows->front().front() == "job");
    }
    CHECK(rowsOf("machines.csv").at(1).at(1) == "Marrowin");
    CHECK(rowsOf("findings.csv").size() == job.findings.size() + 1);
    CHECK(rowsOf("parts.csv").size() == job.parts.size() + 1);
    CHECK(rowsOf("readings.csv").size() == job.readings.size() + 1);
    CHECK(rowsOf("machines.csv").at(1).at(11) == "2023-11-14");
    CHECK(rowsOf("steps.csv").at(1).at(4) == "1 x axle nut M12 49 N.m");
    CHECK(rowsOf("wires.csv").size() == 2);
}

TEST_CASE("A cell that begins as a file in UTF-8 may is read again as it was written") {
    const std::vector<CsvRow> rows{{"\xEF\xBB\xBFjob", "part"}, {"\xEF\xBB\xBF", "x"}};
    CHECK(readCsv(writeCsv(rows)) == rows);
    CHECK(readCsv("\xEF\xBB\xBFjob,part\r\n") == std::vector<CsvRow>{{"job", "part"}});
}

TEST_CASE("A cell that a spreadsheet would work out is written as text and read again as it was") {
    const std::vector<CsvRow> rows{{"=1+2", "@SUM(A1)", "+A1", "-A1", "-", "\tx", "\r=x"},
                                   {"'=1+2", "''-A1", "'quoted'", "'", "-0.4", "+12.5", "5-6"}};
    const std::string text = writeCsv(rows);
    CHECK(readCsv(text) == rows);
    // No cell is left that begins so.
    for (const std::string_view cell : {"=1+2", "@SUM(A1)", "+A1", "-A1", "-"}) {
        INFO(cell);
        CHECK(text.find("'" + std::string(cell)) != std::string::npos);
        CHECK(text.find("," + std::string(cell) + ",") == std::string::npos);
    }
    CHECK(text.starts_with("'=1+2,"));
    CHECK(text.find(",'quoted',',-0.4,+12.5,5-6\r\n") != std::string::npos);
}
