#include "core/store/pages.h"

#include "core/store/limits.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>

namespace undercowl::store {
namespace {

using journal::Entry;

constexpr std::size_t columns = 16; // of the table 'entry', in the order of entryColumns
constexpr std::uint8_t leafOfTable = 0x0D;
constexpr std::size_t usualPage = 4096; // SQLite's, for a file whose header is lost
constexpr std::size_t firstHeader = 100;
constexpr std::size_t logHeader = 32;
constexpr std::size_t frameHeader = 24;
constexpr std::uint64_t largestRow = 1U << 20U; // an entry's body has 256 KiB at most

using Bytes = std::span<const std::uint8_t>;

std::uint64_t bigEndian(Bytes bytes) {
    std::uint64_t value = 0;
    for (const std::uint8_t byte : bytes) {
        value = value << 8U | byte;
    }
    return value;
}

// Takes a variable-length integer off the front; nothing where it does not end.
std::optional<std::uint64_t> takeVarint(Bytes& from) {
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < 9 && i < from.size(); ++i) {
        if (i == 8) {
            value = value << 8U | from[i];
        } else {
            value = value << 7U | (from[i] & 0x7FU);
        }
        if (i == 8 || (from[i] & 0x80U) == 0) {
            from = from.subspan(i + 1);
            return value;
        }
    }
    return std::nullopt;
}

bool isPageSize(std::uint64_t bytes) {
    return bytes >= 512 && bytes <= 65'536 && (bytes & (bytes - 1)) == 0;
}

// Pages by their number, as the log has them, else the database.
class Pages {
public:
    Pages(const std::filesystem::path& database, std::size_t size)
        : file_(database, std::ios::binary), log_(database.string() + "-wal", std::ios::binary), size_(size) {
        std::error_code error;
        const std::uint64_t bytes = std::filesystem::file_size(database, error);
        count_ = error ? 0 : bytes / size_;
        readLog();
    }

    // As the file's header has it; SQLite's usual one where it has none that could be.
    static std::size_t sizeIn(const std::filesystem::path& database) {
        std::ifstream file(database, std::ios::binary);
        std::array<std::uint8_t, 18> header{};
        read(file, 0, header);
        const std::uint64_t said = bigEndian(Bytes(header).subspan(16, 2));
        const std::uint64_t size = said == 1 ? 65'536 : said;
        return isPageSize(size) ? static_cast<std::size_t>(size) : usualPage;
    }

    [[nodiscard]] std::size_t size() const { return size_; }
    [[nodiscard]] std::uint64_t count() const { return count_; }

    // Empty where there is no such page.
    std::vector<std::uint8_t> page(std::uint64_t number) {
        std::vector<std::uint8_t> bytes(size_);
        const auto inLog = logged_.find(number);
        const bool done = inLog != logged_.end()
                              ? read(log_, inLog->second, bytes)
                              : number > 0 && number <= count_ && read(file_, (number - 1) * size_, bytes);
        if (!done) {
            bytes.clear();
        }
        return bytes;
    }

private:
    static bool read(std::ifstream& from, std::uint64_t at, std::span<std::uint8_t> to) {
        from.clear();
        from.seekg(static_cast<std::streamoff>(at));
        from.read(reinterpret_cast<char*>(to.data()), static_cast<std::streamsize>(to.size()));
        return from.gcount() == static_cast<std::streamsize>(to.size());
    }

    // Frames up to the last that ends a transaction: what comes after was never said.
    void readLog() {
        std::array<std::uint8_t, logHeader> header{};
        if (!read(log_, 0, header) || bigEndian(Bytes(header).subspan(8, 4)) != size_) {
            return;
        }
        std::map<std::uint64_t, std::uint64_t> open;
        std::array<std::uint8_t, frameHeader> frame{};
        for (std::uint64_t at = logHeader;
             read(log_, at, frame) && std::equal(frame.begin() + 8, frame.begin() + 16, header.begin() + 16);
             at += frameHeader + size_) {
            const std::uint64_t number = bigEndian(Bytes(frame).first(4));
            open[number] = at + frameHeader;
            if (bigEndian(Bytes(frame).subspan(4, 4)) != 0) {
                for (const auto& [page, place] : open) {
                    logged_[page] = place;
                    count_ = std::max(count_, page);
                }
                open.clear();
            }
        }
    }

    std::ifstream file_;
    std::ifstream log_;
    std::size_t size_{};
    std::uint64_t count_{};
    std::map<std::uint64_t, std::uint64_t> logged_; // page, and where in the log
};

// The content of a cell, with what lies on overflow pages.
std::optional<std::vector<std::uint8_t>> contentOf(Bytes cell, std::uint64_t length, Pages& pages) {
    if (length == 0 || length > largestRow) {
        return std::nullopt;
    }
    const std::uint64_t usable = pages.size();
    const std::uint64_t most = usable - 35;
    std::uint64_t here = length;
    if (length > most) {
        const std::uint64_t least = (usable - 12) * 32 / 255 - 23;
        here = least + (length - least) % (usable - 4);
        here = here > most ? least : here;
    }
    if (cell.size() < here) {
        return std::nullopt;
    }
    std::vector<std::uint8_t> content(cell.begin(), cell.begin() + static_cast<std::ptrdiff_t>(here));
    cell = cell.subspan(here);
    if (here < length && cell.size() < 4) {
        return std::nullopt;
    }
    std::uint64_t next = here < length ? bigEndian(cell.first(4)) : 0;
    while (content.size() < length) {
        const auto page = pages.page(next);
        if (page.empty()) {
            return std::nullopt;
        }
        next = bigEndian(Bytes(page).first(4));
        const std::size_t more =
            std::min<std::size_t>(page.size() - 4, static_cast<std::size_t>(length) - content.size());
        const std::size_t had = content.size();
        content.resize(had + more);
        std::copy_n(page.begin() + 4, more, content.begin() + static_cast<std::ptrdiff_t>(had));
    }
    return content;
}

// A record of sixteen columns, each a text or a whole number.
class Record {
public:
    static std::optional<Record> read(Bytes content) {
        Bytes rest = content;
        const auto headerBytes = takeVarint(rest);
        if (!headerBytes || *headerBytes > content.size()) {
            return std::nullopt;
        }
        const std::size_t taken = content.size() - rest.size();
        if (*headerBytes < taken) {
            return std::nullopt;
        }
        Bytes header = rest.first(static_cast<std::size_t>(*headerBytes) - taken);
        Bytes body = content.subspan(static_cast<std::size_t>(*headerBytes));
        Record record;
        for (std::size_t column = 0; column < columns; ++column) {
            const auto type = takeVarint(header);
            if (!type || !record.take(column, *type, body)) {
                return std::nullopt;
            }
        }
        return header.empty() && body.empty() ? std::optional(std::move(record)) : std::nullopt;
    }

    [[nodiscard]] std::string text(std::size_t column) const { return texts_.at(column); }
    [[nodiscard]] std::int64_t number(std::size_t column) const { return numbers_.at(column); }

private:
    bool take(std::size_t column, std::uint64_t type, Bytes& body) {
        constexpr std::array<std::size_t, 7> widths{0, 1, 2, 3, 4, 6, 8};
        if (type == 8 || type == 9) {
            numbers_.at(column) = static_cast<std::int64_t>(type - 8);
            return true;
        }
        const bool isText = type >= 13 && type % 2 == 1;
        if (!isText && (type == 0 || type >= widths.size())) {
            return false;
        }
        const std::uint64_t length = isText ? (type - 13) / 2 : widths.at(static_cast<std::size_t>(type));
        if (length > body.size()) {
            return false;
        }
        const Bytes value = body.first(static_cast<std::size_t>(length));
        body = body.subspan(value.size());
        if (isText) {
            texts_.at(column).assign(value.begin(), value.end());
        } else {
            // The first bit is the sign.
            const unsigned unused = 64 - 8 * static_cast<unsigned>(value.size());
            numbers_.at(column) = static_cast<std::int64_t>(bigEndian(value) << unused) >> unused;
        }
        return true;
    }

    std::array<std::string, columns> texts_;
    std::array<std::int64_t, columns> numbers_{};
};

std::optional<Entry> entryIn(Bytes content) {
    const auto record = Record::read(content);
    if (!record || !isId(record->text(0)) || record->number(2) <= 0) {
        return std::nullopt;
    }
    Entry entry;
    entry.id = record->text(0);
    entry.device = record->text(1);
    entry.number = static_cast<std::uint64_t>(record->number(2));
    entry.clock = {record->number(3), static_cast<std::uint32_t>(record->number(4))};
    entry.kind = record->text(5);
    entry.stream = record->text(6);
    entry.subject = record->text(7);
    entry.mechanic = record->text(8);
    entry.supersedes = record->text(9);
    entry.body = record->text(10);
    entry.redacted = record->number(11) != 0;
    entry.salt = record->text(12);
    entry.bodyHash = record->text(13);
    entry.previous = record->text(14);
    entry.hash = record->text(15);
    return journal::sealProblem(entry) ? std::nullopt : std::optional(std::move(entry));
}

std::vector<RowOnPage> rowsOn(Pages& pages) {
    std::vector<RowOnPage> found;
    std::set<std::string> ids;
    for (std::uint64_t number = 1; number <= pages.count(); ++number) {
        const auto page = pages.page(number);
        const std::size_t start = number == 1 ? firstHeader : 0;
        if (page.empty() || page.at(start) != leafOfTable) {
            continue;
        }
        const std::size_t cells = bigEndian(Bytes(page).subspan(start + 3, 2));
        for (std::size_t i = 0; i < cells && start + 8 + 2 * i + 2 <= page.size(); ++i) {
            const std::size_t at = bigEndian(Bytes(page).subspan(start + 8 + 2 * i, 2));
            if (at >= page.size()) {
                continue;
            }
            Bytes cell = Bytes(page).subspan(at);
            const auto length = takeVarint(cell);
            const auto row = length ? takeVarint(cell) : std::nullopt;
            const auto content = row ? contentOf(cell, *length, pages) : std::nullopt;
            auto entry = content ? entryIn(*content) : std::nullopt;
            if (entry && ids.insert(entry->id).second) {
                found.push_back({static_cast<std::int64_t>(*row), std::move(*entry)});
            }
        }
    }
    return found;
}

} // namespace

std::vector<RowOnPage> entriesOnPages(const std::filesystem::path& database) {
    const std::size_t said = Pages::sizeIn(database);
    Pages pages(database, said);
    auto found = rowsOn(pages);
    if (found.empty() && said != usualPage) {
        Pages usual(database, usualPage);
        found = rowsOn(usual);
    }
    return found;
}

} // namespace undercowl::store
