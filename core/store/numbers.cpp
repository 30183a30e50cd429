#include "core/store/numbers.h"

#include <algorithm>
#include <cctype>

namespace undercowl::store {
namespace {

constexpr std::size_t shortest = 4; // letters and digits; less is a word like any other

// Letters and digits alone, in capitals.
std::string compactNumber(std::string_view words) {
    std::string made;
    bool digit = false;
    for (const char letter : words) {
        const auto byte = static_cast<unsigned char>(letter);
        if (byte >= 0x80) {
            return {};
        }
        if (std::isalnum(byte) != 0) {
            made += static_cast<char>(std::toupper(byte));
            digit = digit || std::isdigit(byte) != 0;
        }
    }
    return digit && made.size() >= shortest ? made : std::string{};
}

// The same of a column, for signs that stand in numbers. Written as the indexes of schema 3 are, or they do
// not serve.
std::string compactColumn(const std::string& column) {
    std::string made = "upper(" + column + ")";
    for (const char* sign : {" ", "-", ".", "/", "_"}) {
        made.insert(0, "replace(").append(", '").append(sign).append("', '')");
    }
    return made;
}

// Numbers of a table that begin with the letters of ?1: those up to ?2, which are followed by the last of all
// letters.
std::string numbersOf(const char* kind, const char* id, const char* number, const char* table) {
    const std::string compact = compactColumn(number);
    return std::string("SELECT stream, '") + kind + "' AS kind, " + id + " AS id, " + number +
           " AS number FROM " + table + " WHERE " + compact + " >= ?1 AND " + compact + " < ?2";
}

} // namespace

void addNumbers(Database& database, std::string_view typed, std::size_t most, std::vector<Hit>& hits) {
    const std::string number = compactNumber(typed);
    if (number.empty() || hits.size() >= most) {
        return;
    }
    static const std::string query =
        "SELECT n.kind, n.id, l.title, l.machine, n.number, CASE n.kind WHEN 'machine' THEN (SELECT stream "
        "FROM job_line WHERE machine = n.stream ORDER BY last_at DESC, stream DESC LIMIT 1) ELSE n.stream "
        "END "
        "FROM (" +
        numbersOf("part", "id", "number", "part") + " UNION ALL " +
        numbersOf("machine", "stream", "frame_number", "machine") +
        ") n JOIN search_line l ON l.stream = n.stream AND l.kind = n.kind AND l.subject = n.id "
        "ORDER BY n.stream DESC, n.id LIMIT ?3";
    Using row(database.prepared(query));
    row->bind(1, number);
    row->bind(2, number + "\x7F"); // beyond letters and digits
    row->bind(3, static_cast<std::int64_t>(most));
    const auto text = [&row](int column) {
        return row->getColumn(column).isNull() ? std::string{} : row->getColumn(column).getString();
    };
    while (hits.size() < most && row->executeStep()) {
        const std::string subject = text(1);
        if (std::any_of(hits.begin(), hits.end(), [&](const Hit& hit) { return hit.subject == subject; })) {
            continue;
        }
        hits.push_back({text(0) == "part" ? HitKind::Part : HitKind::Machine, text(5), subject, text(2),
                        '[' + text(4) + ']', text(3)});
    }
}

} // namespace undercowl::store
