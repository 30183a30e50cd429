#include "core/job/csv.h"

#include <algorithm>
#include <array>

namespace undercowl::job {
namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

bool wantsQuotes(const std::string& cell) {
    if (cell.empty())
        return false;
    if (cell.starts_with(byteOrderMark)) // at the beginning of a file it would be no part of the cell
        return true;
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    return cell.find_first_of(",;\t\"\r\n") != std::string::npos || blank(cell.front()) || blank(cell.back());
}

// Whether a spreadsheet would work it out, or send it out, instead of showing it. A number is no danger.
bool readsAsFormula(std::string_view cell) {
    if (cell.empty() || std::string_view("=+-@\t\r").find(cell.front()) == std::string_view::npos)
        return false;
    const bool sign = cell.front() == '-' || cell.front() == '+';
    return !sign || cell.size() == 1 || cell.find_first_not_of("0123456789.", 1) != std::string_view::npos;
}

bool guardedBefore(std::string_view cell) {
    const std::size_t apostrophes = cell.find_first_not_of('\'');
    return apostrophes != std::string_view::npos && readsAsFormula(cell.substr(apostrophes));
}

// With the apostrophe by which spreadsheets know text. One that had it already gets another, so that it can
// be taken away again.
std::string guarded(const std::string& cell) {
    return guardedBefore(cell) ? "'" + cell : cell;
}

std::string unguarded(const std::string& cell) {
    return cell.starts_with('\'') && guardedBefore(cell) ? cell.substr(1) : cell;
}

// Of the first row, outside quotes.
char separatorOf(std::string_view text) {
    constexpr std::array candidates{',', ';', '\t'};
    std::array<int, candidates.size()> counts{};
    bool quoted = false;
    for (const char c : text) {
        if (c == '"')
            quoted = !quoted;
        if (!quoted && (c == '\n' || c == '\r'))
            break;
        for (std::size_t i = 0; i < candidates.size(); ++i)
            if (!quoted && c == candidates.at(i))
                ++counts.at(i);
    }
    const auto* most = std::max_element(counts.begin(), counts.end());
    return candidates.at(static_cast<std::size_t>(most - counts.begin()));
}

class Reader {
public:
    explicit Reader(std::string_view text) : text_(text), separator_(separatorOf(text)) {}

    tl::expected<std::vector<CsvRow>, std::string> read() {
        while (at_ < text_.size()) {
            const bool fits = text_[at_] == '"' && cell_.empty() && !closed_ ? quoted() : plain();
            if (!fits)
                return tl::unexpected("line " + std::to_string(line_) + ": " + problem_);
        }
        endRow();
        return std::move(rows_);
    }

private:
    bool quoted() {
        const std::size_t from = line_;
        for (++at_; at_ < text_.size(); ++at_) {
            if (text_[at_] == '\n')
                ++line_;
            if (text_[at_] != '"') {
                cell_ += text_[at_];
            } else if (at_ + 1 < text_.size() && text_[at_ + 1] == '"') {
                cell_ += '"';
                ++at_;
            } else {
                ++at_;
                closed_ = true;
                return true;
            }
        }
        line_ = from;
        problem_ = "a quote is opened and not closed";
        return false;
    }

    bool plain() {
        const char c = text_[at_++];
        if (c == separator_) {
            endCell();
        } else if (c == '\n' || c == '\r') {
            if (c == '\r' && at_ < text_.size() && text_[at_] == '\n')
                ++at_;
            endRow();
            ++line_;
        } else if (closed_) {
            problem_ = "letters stand between a closing quote and the end of its cell";
            return false;
        } else {
            cell_ += c;
        }
        return true;
    }

    void endCell() {
        row_.push_back(unguarded(cell_));
        cell_.clear();
        closed_ = false;
    }

    void endRow() {
        const bool empty = row_.empty() && cell_.empty() && !closed_;
        endCell();
        if (!empty)
            rows_.push_back(std::move(row_));
        row_.clear();
    }

    std::string_view text_;
    char separator_;
    std::size_t at_{};
    std::size_t line_{1};
    std::string problem_;
    std::string cell_;
    bool closed_{}; // the cell was quoted and is at its end
    CsvRow row_;
    std::vector<CsvRow> rows_;
};

} // namespace

std::string writeCsv(const std::vector<CsvRow>& rows) {
    std::string text;
    for (const CsvRow& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (i > 0)
                text += ',';
            const std::string cell = guarded(row[i]);
            // A row of one empty cell would read as an empty line.
            const bool quotes = wantsQuotes(cell) || (row.size() == 1 && cell.empty());
            if (!quotes) {
                text += cell;
                continue;
            }
            text += '"';
            for (const char c : cell)
                text += c == '"' ? "\"\"" : std::string(1, c);
            text += '"';
        }
        text += "\r\n";
    }
    return text;
}

tl::expected<std::vector<CsvRow>, std::string> readCsv(std::string_view text) {
    if (text.starts_with(byteOrderMark))
        text.remove_prefix(byteOrderMark.size());
    return Reader(text).read();
}

} // namespace undercowl::job
