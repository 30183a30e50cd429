#include "tests/colour/reference.h"

#include <fstream>
#include <stdexcept>

namespace {

std::vector<std::string> fields(const std::string& line) {
    std::vector<std::string> all(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            all.emplace_back();
        else if (c != '\r')
            all.back().push_back(c);
    }
    return all;
}

} // namespace

std::vector<ReferenceRow> readReference(const std::string& file) {
    std::ifstream in(std::string(UNDERCOWL_TESTS "/reference/") + file);
    std::string line;
    if (!std::getline(in, line))
        throw std::runtime_error("cannot read " + file);
    const auto header = fields(line);
    std::vector<ReferenceRow> rows;
    while (std::getline(in, line)) {
        const auto values = fields(line);
        auto& row = rows.emplace_back();
        for (std::size_t i = 0; i < header.size() && i < values.size(); ++i)
            row[header[i]] = values[i];
    }
    return rows;
}

double number(const ReferenceRow& row, const std::string& column) {
    return std::stod(row.at(column));
}
