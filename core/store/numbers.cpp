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

// The same of a column, for signs that stand in numbers.
std::string compactColumn(const std::string& column) {
    std::string made = "upper(" + column + ")";
    for (const char* sign : {" ", "-", ".", "/", "_"}) {
        made.insert(0, "replace(").append(", '").append(sign).append("', '')");
    }
    return made;
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
        "FROM (SELECT stream, 'part' AS kind, id, number FROM part UNION ALL "
        "SELECT stream, 'machine', stream, frame_number FROM machine) n "
        "JOIN search_line l ON l.stream = n.stream AND l.kind = n.kind AND l.subject = n.id WHERE " +
        compactColumn("n.number") + " LIKE ? || '%' ORDER BY n.stream DESC, n.id LIMIT ?";
    Using row(database.prepared(query));
    row->bind(1, number);
    row->bind(2, static_cast<std::int64_t>(most));
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
