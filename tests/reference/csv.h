// Reads the published check values of tests/reference.
//
// With UNDERCOWL_ROWS_READ=FILE in the environment, each row of which a test reads a value is noted in that
// file as "name.csv:line": coverage_test.cpp finds the rows that no test looks at.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace undercowl::reference {

// One row by column name. A column that the file lacks ends the test run: a misspelt name must not pass as
// empty.
class Row {
public:
    Row(std::map<std::string, std::string> cells, std::string place)
        : cells_(std::move(cells)), place_(std::move(place)) {}
    [[nodiscard]] const std::string& operator[](const std::string& column) const;
    [[nodiscard]] bool has(const std::string& column) const { return !(*this)[column].empty(); }
    // NaN-free: text that is not a number ends the test run.
    [[nodiscard]] double number(const std::string& column) const;
    // Cells joined, to name the row in a failure.
    [[nodiscard]] std::string name() const;
    [[nodiscard]] const std::string& place() const { return place_; } // "vin_check.csv:12"

private:
    std::map<std::string, std::string> cells_;
    std::string place_;
};

// All rows of tests/reference/FILE; quoted cells with commas and doubled quotes are understood.
[[nodiscard]] std::vector<Row> rows(const std::string& file);

// Those with confidence high whose column `record` is RECORD.
[[nodiscard]] std::vector<Row> highRows(const std::string& file, const std::string& record);

} // namespace undercowl::reference
