// Writing a job's archive.
#include "core/store/archive.h"

#include "core/journal/digest.h"
#include "core/journal/fold.h"
#include "core/store/archivenames.h"
#include "core/store/entryjson.h"
#include "core/store/zip.h"

#include <algorithm>
#include <set>

namespace undercowl::store {
namespace {

using journal::Entry;

// The mechanics that these entries name, as the shop's stream tells them, with what was withdrawn of it.
std::vector<Entry> mechanicEntries(const std::vector<Entry>& shop, std::span<const Entry> entries) {
    std::set<Id> mechanics;
    for (const Entry& entry : entries) {
        mechanics.insert(entry.mechanic);
    }
    std::vector<Entry> taken;
    std::set<Id> ids;
    for (const Entry& entry : shop) { // in order: a withdrawal comes after what it withdraws
        const bool names = entry.kind == "mechanic.named" && mechanics.contains(entry.subject);
        const bool withdraws = entry.kind == "entry.withdrawn" && ids.contains(entry.subject);
        if (names || withdraws) {
            ids.insert(entry.id);
            taken.push_back(entry);
        }
    }
    return taken;
}

Result<JobFile> gather(const Store& store, const Id& job) {
    const auto folded = store.job(job);
    if (!folded) {
        return tl::unexpected(folded.error());
    }
    auto entries = store.entries(job);
    if (!entries) {
        return tl::unexpected(entries.error());
    }
    JobFile file{job, folded->number, std::move(*entries)};
    auto streams = surroundingsNamed(file.entries);
    streams.erase(job);
    for (const Id& stream : streams) {
        const auto more = store.entries(stream);
        if (!more) {
            return tl::unexpected(more.error());
        }
        file.entries.insert(file.entries.end(), more->begin(), more->end());
    }
    const auto shop = store.entries(std::string(journal::shopStream));
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto mechanics = mechanicEntries(*shop, file.entries);
    file.entries.insert(file.entries.begin(), mechanics.begin(), mechanics.end());
    std::sort(file.entries.begin(), file.entries.end(), journal::before);
    return file;
}

std::set<std::string> mediaOf(std::span<const Entry> entries) {
    std::set<std::string> names;
    for (const Entry& entry : entries) {
        if (auto name = journal::mediaNamed(entry); !name.empty()) {
            names.insert(std::move(name));
        }
    }
    return names;
}

std::string checksumLine(const std::string& hash, const std::string& name) {
    return hash + "  " + name + "\n";
}

class Export {
public:
    Export(const Store& store, const std::filesystem::path& file, std::int64_t timeSeconds)
        : store_(store), files_(posixFiles()), zip_(file, files_), time_(timeSeconds) {}

    Result<void> addText(const std::string& name, std::string_view content) {
        checksums_ += checksumLine(journal::blake2b256(content), name);
        return addBytes(name, content, true);
    }

    Result<void> addMedia(const std::string& name) {
        const auto file = store_.media(name);
        if (!file) {
            return tl::unexpected(file.error());
        }
        const auto size = files_->size(*file);
        if (!size || !*size) {
            return tl::unexpected(size ? Problem{Fault::NotFound, file->string() + " is missing"}
                                       : size.error());
        }
        journal::Blake2b256 hash;
        auto added = zip_.add(mediaFolder + name, **size, false, time_, [&](const ZipWriter::Take& take) {
            Result<void> taken;
            const auto read = files_->read(*file, [&](std::span<const std::byte> piece) {
                hash.add(text(piece));
                if (taken) {
                    taken = take(piece);
                }
            });
            return read ? taken : read;
        });
        if (!added) {
            return added;
        }
        const std::string found = hash.finish();
        if (name.substr(0, found.size()) != found) {
            return failed(Fault::Damaged, "media file " + name +
                                              ": its content does not fit its name. Put it back "
                                              "from a backup, then export again.");
        }
        checksums_ += checksumLine(found, mediaFolder + name);
        return {};
    }

    Result<void> finish() {
        if (auto added = addBytes(checksumsName, checksums_, true); !added) {
            return added;
        }
        return zip_.finish();
    }

private:
    Result<void> addBytes(const std::string& name, std::string_view content, bool compress) {
        return zip_.add(name, content.size(), compress, time_,
                        [&](const ZipWriter::Take& take) { return take(std::as_bytes(std::span(content))); });
    }

    const Store& store_;
    std::shared_ptr<Files> files_;
    ZipWriter zip_;
    std::int64_t time_;
    std::string checksums_;
};

} // namespace

Result<ArchiveContent> exportJob(const Store& store, const Id& job, const std::filesystem::path& file,
                                 std::span<const std::byte> record) {
    const auto gathered = gather(store, job);
    if (!gathered) {
        return tl::unexpected(gathered.error());
    }
    const auto media = mediaOf(gathered->entries);
    // Stamped with the last entry's time: the same job gives the same bytes.
    Export archive(store, file, gathered->entries.back().clock.wallMs / 1000);
    Result<void> done = archive.addText(jobFileName, toJson(*gathered));
    for (const std::string& name : media) {
        if (done) {
            done = archive.addMedia(name);
        }
    }
    if (done && !record.empty()) {
        done = archive.addText(recordName, text(record));
    }
    if (done) {
        done = archive.finish();
    }
    if (!done) {
        return tl::unexpected(done.error());
    }
    return ArchiveContent{job, gathered->number, gathered->entries.size(), media.size(), !record.empty()};
}

} // namespace undercowl::store
