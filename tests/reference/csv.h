// Reads the published check values of tests/reference.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace undercowl::reference {

// One row by column name. A column that the file lacks ends the test run: a misspelt name must not pass as
// empty.
class Row {
public:
    explicit Row(std::map<std::string, std::string> cells) : cells_(std::move(cells)) {}
    [[nodiscard]] const std::string& operator[](const std::string& column) const;
    [[nodiscard]] bool has(const std::string& column) const { return !(*this)[column].empty(); }
    // NaN-free: text that is not a number ends the test run.
    [[nodiscard]] double number(const std::string& column) const;
    // Cells joined, to name the row in a failure.
    [[nodiscard]] std::string name() const;

private:
    std::map<std::string, std::string> cells_;
};

// All rows of tests/reference/FILE; quoted cells with commas and doubled quotes are understood.
[[nodiscard]] std::vector<Row> rows(const std::string& file);

// Those with confidence high whose column `record` is RECORD.
[[nodiscard]] std::vector<Row> highRows(const std::string& file, const std::string& record);

} // namespace undercowl::reference
