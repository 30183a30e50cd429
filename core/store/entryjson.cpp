#include "core/store/entryjson.h"

#include "core/store/limits.h"

#include <nlohmann/json.hpp>

namespace undercowl::store {
namespace {

using Json = nlohmann::ordered_json;
using journal::Entry;

Json json(const Entry& entry) {
    Json made{{"id", entry.id},
              {"device", entry.device},
              {"number", entry.number},
              {"clock", Json{{"ms", entry.clock.wallMs}, {"counter", entry.clock.counter}}},
              {"kind", entry.kind},
              {"stream", entry.stream},
              {"subject", entry.subject},
              {"mechanic", entry.mechanic},
              {"supersedes", entry.supersedes},
              {"body", entry.body},
              {"redacted", entry.redacted},
              {"salt", entry.salt},
              {"bodyHash", entry.bodyHash},
              {"previous", entry.previous},
              {"hash", entry.hash}};
    return made;
}

// Reads the fields of one object and remembers the first that does not fit.
class Reader {
public:
    explicit Reader(const Json& object) : object_(object) {}

    std::string text(const char* name) {
        const auto at = object_.find(name);
        if (at == object_.end() || !at->is_string()) {
            note(name, "a text");
            return {};
        }
        return at->get<std::string>();
    }
    std::uint64_t whole(const char* name, std::uint64_t most) {
        const auto at = object_.find(name);
        if (at == object_.end() || !at->is_number_unsigned() || at->get<std::uint64_t>() > most) {
            note(name, "a whole number from 0 to " + std::to_string(most));
            return 0;
        }
        return at->get<std::uint64_t>();
    }
    bool flag(const char* name) {
        const auto at = object_.find(name);
        if (at == object_.end() || !at->is_boolean()) {
            note(name, "true or false");
            return false;
        }
        return at->get<bool>();
    }
    const Json& child(const char* name, bool array) {
        static const Json none = Json::object();
        const auto at = object_.find(name);
        if (at == object_.end() || (array ? !at->is_array() : !at->is_object())) {
            note(name, array ? "a list" : "an object");
            return none;
        }
        return *at;
    }
    [[nodiscard]] const std::string& problem() const { return problem_; }

private:
    void note(const std::string& name, const std::string& wanted) {
        if (problem_.empty()) {
            problem_ = name + ": is missing or not " + wanted;
        }
    }

    const Json& object_;
    std::string problem_;
};

Result<Entry> entryFrom(const Json& object) {
    if (!object.is_object()) {
        return failed(Fault::Refused, "is not an object");
    }
    constexpr std::uint64_t exact = (std::uint64_t{1} << 53U) - 1;
    Reader read(object);
    Reader clock(read.child("clock", false));
    Entry entry;
    entry.id = read.text("id");
    entry.device = read.text("device");
    entry.number = read.whole("number", exact);
    entry.clock.wallMs = static_cast<job::TimeMs>(clock.whole("ms", static_cast<std::uint64_t>(latestTime)));
    entry.clock.counter = static_cast<std::uint32_t>(clock.whole("counter", 0xFFFF'FFFF));
    entry.kind = read.text("kind");
    entry.stream = read.text("stream");
    entry.subject = read.text("subject");
    entry.mechanic = read.text("mechanic");
    entry.supersedes = read.text("supersedes");
    entry.body = read.text("body");
    entry.redacted = read.flag("redacted");
    entry.salt = read.text("salt");
    entry.bodyHash = read.text("bodyHash");
    entry.previous = read.text("previous");
    entry.hash = read.text("hash");
    for (const Reader* part : {&read, &clock}) {
        if (!part->problem().empty()) {
            return failed(Fault::Refused, part->problem());
        }
    }
    return entry;
}

} // namespace

std::string toJson(const JobFile& file) {
    Json made{
        {"format", archiveFormat}, {"version", archiveVersion}, {"job", file.job}, {"number", file.number}};
    Json& entries = made["entries"] = Json::array();
    for (const Entry& entry : file.entries) {
        entries.push_back(json(entry));
    }
    return made.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<JobFile> jobFileFromJson(std::string_view text) {
    const auto refused = [](const std::string& why) {
        return failed(Fault::Refused, "archive: job.json: " + why);
    };
    constexpr std::size_t deepest = 6;
    if (auto problem = jsonProblem(text, deepest)) {
        return refused(*problem);
    }
    const Json json = Json::parse(text, nullptr, false);
    Reader read(json);
    if (read.text("format") != archiveFormat) {
        return refused("format: is not '" + std::string(archiveFormat) + "'; this ZIP is something else");
    }
    if (const auto version = read.whole("version", 1'000'000); version != archiveVersion) {
        return refused("version: is " + std::to_string(version) +
                       ", known here: " + std::to_string(archiveVersion) + ". Update this program.");
    }
    JobFile file;
    file.job = read.text("job");
    file.number = read.text("number");
    const Json& entries = read.child("entries", true);
    if (!read.problem().empty()) {
        return refused(read.problem());
    }
    if (entries.size() > mostArchivedEntries) {
        return refused("entries: more than " + std::to_string(mostArchivedEntries));
    }
    for (const Json& object : entries) {
        auto entry = entryFrom(object);
        if (!entry) {
            return refused("entries: number " + std::to_string(file.entries.size() + 1) + ": " +
                           entry.error().message);
        }
        file.entries.push_back(std::move(*entry));
    }
    return file;
}

std::set<job::Id> surroundingsNamed(std::span<const Entry> entries) {
    std::set<job::Id> named;
    for (const Entry& entry : entries) {
        if (entry.kind != "job.opened" && entry.kind != "job.described") {
            continue;
        }
        const auto body = nlohmann::json::parse(entry.body, nullptr, false);
        for (const char* field : {"machine", "owner"}) {
            const auto at = body.is_object() ? body.find(field) : body.end();
            if (at != body.end() && at->is_string() && !at->get<std::string>().empty()) {
                named.insert(at->get<std::string>());
            }
        }
    }
    return named;
}

} // namespace undercowl::store
