// What the store tells: jobs, machines, owners, lists and finds.
#include "core/store/asked.h"
#include "core/store/limits.h"
#include "core/store/numbers.h"
#include "core/store/state.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cctype>

namespace undercowl::store {
namespace {

constexpr std::size_t mostWords = 16;
constexpr std::array<std::pair<std::string_view, HitKind>, 10> hitKinds{{{"machine", HitKind::Machine},
                                                                         {"owner", HitKind::Owner},
                                                                         {"job", HitKind::Job},
                                                                         {"finding", HitKind::Finding},
                                                                         {"step", HitKind::Step},
                                                                         {"wire", HitKind::Wire},
                                                                         {"part", HitKind::Part},
                                                                         {"reading", HitKind::Reading},
                                                                         {"memo", HitKind::Memo},
                                                                         {"photo", HitKind::Photo}}};

HitKind hitKind(std::string_view text) {
    for (const auto& [code, kind] : hitKinds) {
        if (code == text) {
            return kind;
        }
    }
    return HitKind::Job;
}

job::Message message(const std::string& key, const std::string& values) {
    job::Message made{job::knownKey(key), {}};
    const auto json = nlohmann::json::parse(values, nullptr, false);
    for (const auto& value : json) {
        if (value.is_string()) {
            made.values.push_back(value.get<std::string>());
        }
    }
    return made;
}

// A word by its beginning. The index answers beginnings of two and three letters from tables of its own; for
// one letter all of its words would be gathered first, so it is asked for by two.
std::string beginning(const std::string& quoted) {
    constexpr std::string_view second = "abcdefghijklmnopqrstuvwxyz0123456789";
    if (quoted.size() != 3 || std::isalnum(static_cast<unsigned char>(quoted[1])) == 0) {
        return quoted + '*';
    }
    std::string any = '(' + quoted;
    for (const char letter : second) {
        any += std::string(" OR \"") + quoted[1] + letter + "\"*";
    }
    return any + ')';
}

// Queries for the same words, from the narrow one to the whole: all words as they stand; the last by its
// beginning, since it is still being typed; each by its beginning. A beginning of four letters and more is
// gathered from all its words before the first line comes, which takes longer than a frame where they are
// many: then a narrower query has enough.
std::vector<std::string> queries(const std::vector<Asked>& words) {
    const auto either = [](const std::string& typed, const Asked& word) {
        return word.english.empty() ? typed : '(' + typed + " OR " + word.english + ')';
    };
    std::vector<std::string> all(3);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& typed = words[i].typed;
        const bool last = i + 1 == words.size();
        const std::array ways{typed, last ? beginning(typed) : typed, typed + '*'};
        for (std::size_t way = 0; way < all.size(); ++way) {
            all[way].append(i == 0 ? "" : " AND ").append(either(ways.at(way), words[i]));
        }
    }
    return all;
}

// What a query finds, in two steps. Ranking looks at every match, which in a large shop takes longer than a
// frame for the two letters typed first; so only what is specific enough is ranked, of the rest the newest
// lines come first, those whose title fits before the others.
class Found {
public:
    Found(Database& database, const std::vector<Asked>& words, std::size_t most)
        : database_(database), most_(most), queries_(queries(words)) {}

    [[nodiscard]] std::vector<Hit> hits() {
        std::vector<std::int64_t> rows;
        for (const std::string& query : queries_) {
            query_ = query;
            rows = newest(query_, rankedAtMost + 1);
            if (rows.size() > rankedAtMost) {
                break;
            }
        }
        if (rows.size() <= rankedAtMost) {
            return read(ranked());
        }
        std::vector<std::int64_t> chosen = newest("{title} : (" + query_ + ")", most_);
        for (const std::int64_t row : rows) {
            if (chosen.size() < most_ && std::find(chosen.begin(), chosen.end(), row) == chosen.end()) {
                chosen.push_back(row);
            }
        }
        return read(chosen);
    }

private:
    static constexpr std::size_t rankedAtMost = 500;

    [[nodiscard]] std::vector<std::int64_t> newest(const std::string& query, std::size_t most) const {
        Using row(
            database_.prepared("SELECT rowid FROM search WHERE search MATCH ? ORDER BY rowid DESC LIMIT ?"));
        return rowids(*row, query, most);
    }
    [[nodiscard]] std::vector<std::int64_t> ranked() const {
        Using row(
            database_.prepared("SELECT search.rowid FROM search JOIN search_line l ON l.rowid = search.rowid "
                               "WHERE search MATCH ? "
                               "ORDER BY bm25(search, 10.0, 4.0, 0.5), l.stream DESC, l.subject LIMIT ?"));
        return rowids(*row, query_, most_);
    }
    static std::vector<std::int64_t> rowids(SQLite::Statement& row, const std::string& query,
                                            std::size_t most) {
        row.bind(1, query);
        row.bind(2, static_cast<std::int64_t>(most));
        std::vector<std::int64_t> found;
        while (row.executeStep()) {
            found.push_back(row.getColumn(0).getInt64());
        }
        return found;
    }

    // The words around the hit are only worked out for what is shown, in one walk over the matches: asked for
    // one by one, each would begin the query anew.
    [[nodiscard]] std::vector<Hit> read(const std::vector<std::int64_t>& rows) const {
        if (rows.empty()) {
            return {};
        }
        Using row(database_.prepared(
            "SELECT l.kind, l.subject, l.stream, l.title, snippet(search, -1, '[', ']', '...', 12), "
            "l.machine, CASE l.kind "
            "WHEN 'machine' THEN (SELECT stream FROM job_line WHERE machine = l.stream ORDER BY last_at "
            "DESC, "
            "stream DESC LIMIT 1) "
            "WHEN 'owner' THEN (SELECT stream FROM job_line WHERE owner = l.stream ORDER BY last_at DESC, "
            "stream DESC LIMIT 1) ELSE l.stream END, search.rowid, CASE l.kind WHEN 'finding' THEN "
            "(SELECT severity FROM finding WHERE stream = l.stream AND id = l.subject) END, "
            "CASE WHEN l.kind = 'wire' AND l.detail <> 'connector' THEN (SELECT c.title FROM search_line c "
            "WHERE c.stream = l.stream AND c.kind = 'wire' AND c.subject = l.subject AND c.detail = "
            "'connector') END "
            "FROM search JOIN search_line l ON l.rowid = search.rowid "
            "WHERE search MATCH ?1 AND search.rowid BETWEEN ?2 AND ?3 AND +search.rowid IN (SELECT value "
            "FROM "
            "json_each(?4))"));
        const auto [least, most] = std::minmax_element(rows.begin(), rows.end());
        row->bind(1, query_);
        row->bind(2, *least);
        row->bind(3, *most);
        row->bind(4, nlohmann::json(rows).dump());
        std::vector<Hit> hits(rows.size());
        while (row->executeStep()) {
            const auto text = [&row](int column) {
                return row->getColumn(column).isNull() ? std::string{} : row->getColumn(column).getString();
            };
            const auto place =
                std::find(rows.begin(), rows.end(), row->getColumn(7).getInt64()) - rows.begin();
            hits[static_cast<std::size_t>(place)] = {
                hitKind(text(0)), text(6), text(1), text(3), text(4), text(5), job::severityFromCode(text(8)),
                text(9)};
        }
        return hits;
    }

    Database& database_;
    std::size_t most_;
    std::vector<std::string> queries_;
    std::string query_; // the one that was chosen
};

tl::unexpected<Problem> notFound(std::string_view what, const Id& id) {
    return failed(Fault::NotFound,
                  std::string(what) + ": there is none with the id '" + id + "' in this store");
}

} // namespace

Result<job::Job> Store::job(const Id& id) const {
    return guarded([&]() -> Result<job::Job> {
        state_->refresh();
        const StreamState& stream = state_->projector.stream(id);
        if (stream.state.job.id.empty()) {
            return notFound("job", id);
        }
        return stream.state.job;
    });
}

Result<job::Machine> Store::machine(const Id& id) const {
    return guarded([&]() -> Result<job::Machine> {
        Using row(state_->database.prepared(
            "SELECT make, model, year, frame_number, notes FROM machine WHERE stream = ?"));
        row->bind(1, id);
        if (!row->executeStep()) {
            return notFound("machine", id);
        }
        job::Machine machine{id,           row->getColumn(0).getString(), row->getColumn(1).getString(),
                             std::nullopt, row->getColumn(3).getString(), row->getColumn(4).getString()};
        if (!row->getColumn(2).isNull()) {
            machine.year = row->getColumn(2).getInt();
        }
        return machine;
    });
}

Result<job::Owner> Store::owner(const Id& id) const {
    return guarded([&]() -> Result<job::Owner> {
        Using row(state_->database.prepared("SELECT name, phone, mail, address FROM owner WHERE stream = ?"));
        row->bind(1, id);
        if (!row->executeStep()) {
            return notFound("owner", id);
        }
        return job::Owner{id, row->getColumn(0).getString(), row->getColumn(1).getString(),
                          row->getColumn(2).getString(), row->getColumn(3).getString()};
    });
}

Result<std::vector<job::Mechanic>> Store::mechanics() const {
    return guarded([&]() -> Result<std::vector<job::Mechanic>> {
        Using row(state_->database.prepared("SELECT id, name FROM mechanic ORDER BY name, id"));
        std::vector<job::Mechanic> all;
        while (row->executeStep()) {
            all.push_back({row->getColumn(0).getString(), row->getColumn(1).getString()});
        }
        return all;
    });
}

Result<std::vector<JobLine>> Store::jobs(std::size_t mostDone) const {
    return guarded([&]() -> Result<std::vector<JobLine>> {
        // 'done' as it stands in the partial indexes of the schema: both halves are read from them.
        const std::string columns =
            "SELECT stream, number, machine, machine_label, frame_number, owner_name, reason, moment, "
            "stopped_key, stopped_values, next_key, next_values, waiting, open_unsafe, last_at, waits, "
            "waits_key, waits_values, EXISTS (SELECT 1 FROM recheck WHERE stream = job_line.stream) FROM "
            "job_line ";
        Using row(state_->database.prepared(columns + "WHERE moment <> 'done' UNION ALL SELECT * FROM (" +
                                            columns +
                                            "WHERE moment = 'done' ORDER BY last_at DESC LIMIT ?) "
                                            "ORDER BY last_at DESC, stream DESC"));
        row->bind(1, static_cast<std::int64_t>(mostDone));
        const auto text = [&row](int column) { return row->getColumn(column).getString(); };
        std::vector<JobLine> lines;
        while (row->executeStep()) {
            lines.push_back(
                {text(0),
                 text(1),
                 text(2),
                 text(3),
                 text(4),
                 text(5),
                 text(6),
                 job::momentFromCode(text(7)).value_or(job::Moment::TakeIn),
                 message(text(8), text(9)),
                 message(text(10), text(11)),
                 row->getColumn(12).getInt() != 0,
                 row->getColumn(13).getInt(),
                 row->getColumn(14).getInt64(),
                 {job::waitsFromCode(text(15)).value_or(job::Waits::Bench), message(text(16), text(17))},
                 row->getColumn(18).getInt() != 0});
        }
        return lines;
    });
}

Result<Id> Store::jobByNumberOrId(std::string_view text) const {
    return guarded([&]() -> Result<Id> {
        Using row(state_->database.prepared("SELECT stream FROM job_line WHERE stream = ?1 OR number = ?1 "
                                            "ORDER BY stream = ?1 DESC LIMIT 2"));
        row->bind(1, std::string(text));
        std::vector<Id> found;
        while (row->executeStep()) {
            found.push_back(row->getColumn(0).getString());
        }
        if (found.empty()) {
            return failed(Fault::NotFound, "job: none has the number or id '" + std::string(text) +
                                               "'; 'job list' shows all of them");
        }
        if (found.size() > 1 && found.front() != text) {
            return failed(Fault::Refused, "job: more than one has the number '" + std::string(text) +
                                              "'; give the id, which 'job list' shows");
        }
        return found.front();
    });
}

Result<std::vector<Hit>> Store::find(std::string_view words, std::size_t most) const {
    const auto wanted = askedFor(words);
    if (wanted.size() > mostWords) {
        return failed(Fault::Refused, "find: at most 16 words at a time");
    }
    if (wanted.empty()) {
        return std::vector<Hit>{};
    }
    return guarded([&]() -> Result<std::vector<Hit>> {
        Found found(state_->database, wanted, std::min(most, std::size_t{10'000}));
        std::vector<Hit> hits = found.hits();
        addNumbers(state_->database, words, std::min(most, std::size_t{10'000}), hits);
        return hits;
    });
}

Result<std::vector<journal::Entry>> Store::entries(const Id& stream) const {
    return guarded(
        [&]() -> Result<std::vector<journal::Entry>> { return entriesOf(state_->database, stream); });
}

} // namespace undercowl::store
