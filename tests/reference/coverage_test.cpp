// Every published check value of confidence high is looked at by some test: the tests that use
// tests/reference are run with UNDERCOWL_ROWS_READ, and what they read is held against the files.
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>

using undercowl::reference::Row;
using undercowl::reference::rows;

namespace {

// The executables whose tests read the files; tests/reference/CMakeLists.txt names them.
constexpr std::array programs{UNDERCOWL_READERS};

std::set<std::string> rowsReadBy(const std::string& program, const std::filesystem::path& notes) {
    std::filesystem::remove(notes);
    const std::string command =
        "UNDERCOWL_ROWS_READ='" + notes.string() + "' '" + program + "' > '" + notes.string() + ".log' 2>&1";
    INFO(command);
    REQUIRE(std::system(command.c_str()) == 0); // NOLINT(concurrency-mt-unsafe): one thread
    std::set<std::string> read;
    std::ifstream stream(notes);
    for (std::string line; std::getline(stream, line);)
        read.insert(line);
    return read;
}

} // namespace

TEST_CASE("Every check value of confidence high is looked at by a test") {
    const auto folder = std::filesystem::temp_directory_path() /
                        ("undercowl-rows-" + std::to_string(std::hash<std::string>{}(UNDERCOWL_BUILD)));
    std::filesystem::create_directories(folder);
    std::set<std::string> read;
    for (const char* program : programs) {
        const auto some = rowsReadBy(program, folder / "rows");
        INFO(program << " reads no check value: take it off the list");
        CHECK_FALSE(some.empty());
        read.insert(some.begin(), some.end());
    }
    std::filesystem::remove_all(folder);
    std::size_t high = 0;
    for (const auto& file :
         std::filesystem::directory_iterator(std::filesystem::path(UNDERCOWL_TESTS) / "reference")) {
        if (file.path().extension() != ".csv")
            continue;
        for (const Row& row : rows(file.path().filename().string())) {
            if (row["confidence"] != "high")
                continue;
            ++high;
            if (read.contains(row.place()))
                continue;
            FAIL_CHECK("no test looks at " << row.place() << ": " << row.name());
        }
    }
    CHECK(high > 700);
}
