// Reading a job's archive: everything in it is checked before anything is taken.
#include "core/store/archive.h"

#include "core/journal/digest.h"
#include "core/journal/fold.h"
#include "core/store/archivenames.h"
#include "core/store/chain.h"
#include "core/store/entryjson.h"
#include "core/store/limits.h"
#include "core/store/media.h"
#include "core/store/zip.h"

#include <map>
#include <set>

namespace undercowl::store {
namespace {

using journal::Entry;
using journal::StreamKind;

constexpr std::uint64_t largestText = std::uint64_t{128} << 20U; // job.json, checksums.txt
constexpr std::size_t hashDigits = 64;

tl::unexpected<Problem> refused(const std::string& why) {
    return failed(Fault::Refused, "archive: " + why);
}

std::string shown(std::string_view name) {
    return "'" + std::string(name.substr(0, 120)) + "'";
}

// The only names there may be. Whatever would leave the folder that an archive is unpacked to is among the
// others.
std::optional<std::string> nameProblem(std::string_view name) {
    if (name == jobFileName || name == recordName || name == checksumsName) {
        return std::nullopt;
    }
    if (name.starts_with('/') || name.find("..") != std::string_view::npos ||
        name.find('\\') != std::string_view::npos || name.find(':') != std::string_view::npos) {
        return "the name " + shown(name) + " leads out of the archive";
    }
    if (name.starts_with(mediaFolder) && isMediaName(name.substr(mediaFolder.size()))) {
        return std::nullopt;
    }
    return "the name " + shown(name) + " has no place in a job archive";
}

// "HASH  NAME" lines, as 'b2sum -l 256' writes them.
Result<std::map<std::string, std::string>> checksumsFrom(std::string_view lines) {
    std::map<std::string, std::string> sums;
    while (!lines.empty()) {
        const std::size_t end = lines.find('\n');
        const std::string_view line = lines.substr(0, end);
        if (end == std::string_view::npos || line.size() < hashDigits + 3 ||
            line.substr(hashDigits, 2) != "  " ||
            !sums.emplace(line.substr(hashDigits + 2), line.substr(0, hashDigits)).second) {
            return refused("checksums.txt: line " + std::to_string(sums.size() + 1) +
                           " is not a hash and a name");
        }
        lines.remove_prefix(end + 1);
    }
    return sums;
}

struct Content {
    JobFile job;
    std::set<std::string> media; // names without the folder
    bool record{};
};

class Reading {
public:
    Result<void> visit(ZipMember& member) {
        const std::string& name = member.name();
        if (auto problem = nameProblem(name)) {
            return refused(*problem);
        }
        const bool keep = name == jobFileName || name == checksumsName;
        journal::Blake2b256 hash;
        std::string& kept = texts_[name];
        auto read = member.read(keep ? largestText : largestMedia, [&](std::span<const std::byte> piece) {
            hash.add(text(piece));
            if (keep) {
                kept += text(piece);
            }
        });
        if (!read) {
            return read;
        }
        hashes_[name] = hash.finish();
        return {};
    }

    Result<Content> finish() {
        for (const std::string& needed : {jobFileName, checksumsName}) {
            if (!hashes_.contains(needed)) {
                return refused(needed + " is missing; this is no job archive, or it was cut short");
            }
        }
        const auto sums = checksumsFrom(texts_[checksumsName]);
        if (!sums) {
            return tl::unexpected(sums.error());
        }
        if (auto problem = sumsProblem(*sums)) {
            return refused(*problem);
        }
        auto job = jobFileFromJson(texts_[jobFileName]);
        if (!job) {
            return tl::unexpected(job.error());
        }
        Content content{std::move(*job), {}, hashes_.contains(recordName)};
        for (const auto& [name, hash] : hashes_) {
            if (name.starts_with(mediaFolder)) {
                content.media.insert(name.substr(mediaFolder.size()));
            }
        }
        return content;
    }

private:
    std::optional<std::string> sumsProblem(const std::map<std::string, std::string>& sums) {
        for (const auto& [name, hash] : hashes_) {
            const auto sum = sums.find(name);
            if (name != checksumsName && sum == sums.end()) {
                return name + ": is not listed in checksums.txt";
            }
            if (name != checksumsName && sum->second != hash) {
                return name +
                       ": its content does not fit its checksum; the archive is damaged, ask for it again";
            }
            if (name.starts_with(mediaFolder) && name.substr(mediaFolder.size(), hashDigits) != hash) {
                return name + ": its content does not fit its name";
            }
        }
        for (const auto& [name, hash] : sums) {
            if (!hashes_.contains(name)) {
                return shown(name) + ": is listed in checksums.txt but missing";
            }
        }
        return std::nullopt;
    }

    std::map<std::string, std::string> texts_;
    std::map<std::string, std::string> hashes_;
};

// An archive speaks of its own job, of that job's machine and owner, and of the mechanics' names: nothing
// that it holds may reach into other jobs.
std::optional<std::string> strayProblem(const JobFile& file) {
    std::vector<Entry> own;
    std::set<Id> ids;
    for (const Entry& entry : file.entries) {
        if (entry.stream == file.job) {
            own.push_back(entry);
        }
        ids.insert(entry.id);
    }
    const auto around = surroundingsNamed(own);
    for (const Entry& entry : file.entries) {
        const StreamKind kind = streamKind(entry);
        const bool unknown = kind == StreamKind::Unknown;
        bool fits = false;
        if (entry.stream == file.job) {
            fits = kind == StreamKind::Job || unknown;
        } else if (entry.stream == journal::shopStream) {
            fits =
                kind == StreamKind::Shop || (entry.kind == "entry.withdrawn" && ids.contains(entry.subject));
        } else if (around.contains(entry.stream)) {
            fits = kind == StreamKind::Machine || kind == StreamKind::Owner || unknown;
        }
        if (!fits) {
            return "entry " + entry.id + " (" + entry.kind + "): does not belong to this job";
        }
    }
    return own.empty() ? std::optional<std::string>("no entry belongs to the job " + file.job) : std::nullopt;
}

std::optional<std::string> contentProblem(const Content& content) {
    if (!isId(content.job.job)) {
        return "job.json: job: is not an id";
    }
    std::set<std::string> named;
    for (const Entry& entry : content.job.entries) {
        if (auto problem = entryProblem(entry)) {
            return problem;
        }
        if (auto name = journal::mediaNamed(entry); !name.empty()) {
            if (!content.media.contains(name)) {
                return "entry " + entry.id + ": its media file " + shown(name) + " is not in the archive";
            }
            named.insert(std::move(name));
        }
    }
    for (const std::string& name : content.media) {
        if (!named.contains(name)) {
            return mediaFolder + name + ": no entry names it";
        }
    }
    if (auto problem = chainProblem(content.job.entries)) {
        return problem;
    }
    return strayProblem(content.job);
}

Result<Content> readArchive(const std::filesystem::path& file) {
    Reading reading;
    if (auto read = readZip(file, [&](ZipMember& member) { return reading.visit(member); }); !read) {
        return tl::unexpected(read.error());
    }
    auto content = reading.finish();
    if (content) {
        if (auto problem = contentProblem(*content)) {
            return refused(*problem);
        }
    }
    return content;
}

ArchiveContent summary(const Content& content) {
    return {content.job.job, content.job.number, content.job.entries.size(), content.media.size(),
            content.record};
}

// Photos and memos that are not here yet. The name is checked against the content once more, since the file
// may have changed between the two readings.
Result<std::size_t> takeMedia(Store& store, const std::filesystem::path& file) {
    std::size_t taken = 0;
    const auto read = readZip(file, [&](ZipMember& member) -> Result<void> {
        if (!member.name().starts_with(mediaFolder)) {
            return {};
        }
        const std::string name = member.name().substr(mediaFolder.size());
        if (store.media(name)) {
            return {};
        }
        std::string bytes;
        if (auto got =
                member.read(largestMedia, [&](std::span<const std::byte> piece) { bytes += text(piece); });
            !got) {
            return got;
        }
        const auto kept = store.keepMedia(std::as_bytes(std::span(bytes)), name.substr(hashDigits + 1));
        if (!kept) {
            return tl::unexpected(kept.error());
        }
        ++taken;
        return kept->name == name ? Result<void>{} : refused(name + ": changed while it was read");
    });
    return read ? Result<std::size_t>(taken) : tl::unexpected(read.error());
}

} // namespace

Result<ArchiveContent> verifyArchive(const std::filesystem::path& file) {
    return readArchive(file).map(summary);
}

Result<Imported> importArchive(Store& store, const std::filesystem::path& file) {
    const auto content = readArchive(file);
    if (!content) {
        return tl::unexpected(content.error());
    }
    // What merge() would refuse is refused before a single photo is taken.
    if (const auto may = store.mergeable(content->job.entries); !may) {
        return tl::unexpected(may.error());
    }
    const auto media = takeMedia(store, file);
    if (!media) {
        return tl::unexpected(media.error());
    }
    const auto merged = store.merge(content->job.entries);
    if (!merged) {
        return tl::unexpected(merged.error());
    }
    return Imported{summary(*content), *merged, *media};
}

} // namespace undercowl::store
