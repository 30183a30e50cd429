// Published check values: the plain CSV files in tests/reference, header row first.
#pragma once

#include <catch2/catch.hpp>

#include <fstream>
#include <map>
#include <string>
#include <vector>

namespace undercowl::tests {

// One record by column name. Quoted cells may hold commas and doubled quotes, but no line breaks.
using Record = std::map<std::string, std::string>;

inline std::vector<std::string> cells(const std::string& line) {
    std::vector<std::string> out(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char letter = line[i];
        if (letter == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"')
            out.back() += line[++i];
        else if (letter == '"')
            quoted = !quoted;
        else if (letter == ',' && !quoted)
            out.emplace_back();
        else if (letter != '\r')
            out.back() += letter;
    }
    return out;
}

inline std::vector<Record> reference(const std::string& name) {
    std::ifstream file(std::string(UNDERCOWL_TESTS) + "/reference/" + name);
    REQUIRE(file);
    std::string line;
    std::getline(file, line);
    const std::vector<std::string> head = cells(line);
    std::vector<Record> records;
    while (std::getline(file, line)) {
        const std::vector<std::string> row = cells(line);
        Record record;
        for (std::size_t i = 0; i < head.size() && i < row.size(); ++i)
            record[head[i]] = row[i];
        records.push_back(std::move(record));
    }
    REQUIRE_FALSE(records.empty());
    return records;
}

} // namespace undercowl::tests
