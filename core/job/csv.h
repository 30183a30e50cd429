// Rows of text to a spreadsheet file and back: RFC 4180, UTF-8.
#pragma once

#include <tl/expected.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

using CsvRow = std::vector<std::string>;

// Comma between cells, CR LF after each row; a cell with a comma, a quote, a line break or blanks at its ends
// is quoted. One that a spreadsheet would take for a formula (it begins with =, @, a tab or a carriage
// return, or with + or - and is no number) gets an apostrophe in front: what an owner or a part's supplier is
// called must not be worked out on the office's PC. readCsv() gives back the same rows, unless a row is
// empty.
[[nodiscard]] std::string writeCsv(const std::vector<CsvRow>& rows);

// Reads what spreadsheets write: a comma, a semicolon or a tab between cells (whichever the first row holds
// most of), LF or CR LF after rows, a byte-order mark before all. Empty lines are passed over. The error
// names the line.
[[nodiscard]] tl::expected<std::vector<CsvRow>, std::string> readCsv(std::string_view text);

} // namespace undercowl::job
