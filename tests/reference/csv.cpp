#include "tests/reference/csv.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdlib>
#include <fstream>
#include <set>
#include <sstream>
#include <stdexcept>
#include <string_view>

namespace undercowl::reference {
namespace {

std::vector<std::string> cellsOf(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (c == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"') {
            cells.back() += '"';
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (c == ',' && !quoted) {
            cells.emplace_back();
        } else if (c != '\r') {
            cells.back() += c;
        }
    }
    return cells;
}

// What says which row it is and how good it is; reading these checks nothing.
constexpr std::array<std::string_view, 5> aside{"record", "confidence", "source", "how", "origin"};

void note(const std::string& place) {
    static const char* const file = std::getenv("UNDERCOWL_ROWS_READ");
    static std::set<std::string> noted;
    if (file != nullptr && noted.insert(place).second)
        std::ofstream(file, std::ios::app) << place << '\n';
}

} // namespace

const std::string& Row::operator[](const std::string& column) const {
    const auto cell = cells_.find(column);
    if (cell == cells_.end())
        throw std::runtime_error("no column " + column);
    if (std::find(aside.begin(), aside.end(), column) == aside.end())
        note(place_);
    return cell->second;
}

double Row::number(const std::string& column) const {
    std::istringstream stream((*this)[column]);
    double value = 0;
    if (!(stream >> value) || stream.peek() != std::istringstream::traits_type::eof())
        throw std::runtime_error(column + " is not a number in " + name());
    return value;
}

std::string Row::name() const {
    std::string text;
    for (const auto& [column, cell] : cells_)
        if (!cell.empty())
            text.append(column).append("=").append(cell).append("; ");
    return text;
}

std::vector<Row> rows(const std::string& file) {
    std::ifstream stream(std::string(UNDERCOWL_TESTS) + "/reference/" + file);
    std::string line;
    if (!std::getline(stream, line))
        throw std::runtime_error("cannot read " + file);
    const auto header = cellsOf(line);
    std::vector<Row> result;
    for (int number = 2; std::getline(stream, line); ++number) {
        const auto cells = cellsOf(line);
        if (cells.size() != header.size())
            throw std::runtime_error(std::string(file).append(": wrong number of cells: ").append(line));
        std::map<std::string, std::string> row;
        for (std::size_t i = 0; i < header.size(); ++i)
            row[header[i]] = cells[i];
        result.emplace_back(std::move(row), file + ":" + std::to_string(number));
    }
    return result;
}

std::vector<Row> highRows(const std::string& file, const std::string& record) {
    std::vector<Row> result;
    for (const Row& row : rows(file))
        if (row["confidence"] == "high" && row["record"] == record)
            result.push_back(row);
    if (result.empty())
        throw std::runtime_error("no high row " + record + " in " + file);
    return result;
}

} // namespace undercowl::reference
