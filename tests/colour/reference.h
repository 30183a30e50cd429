// Reads the published check values in tests/reference.
#pragma once

#include <map>
#include <string>
#include <vector>

using ReferenceRow = std::map<std::string, std::string>;

// Rows of a CSV file with a header row; fields may be quoted. Throws when the file cannot be read.
[[nodiscard]] std::vector<ReferenceRow> readReference(const std::string& file);

[[nodiscard]] double number(const ReferenceRow& row, const std::string& column);
