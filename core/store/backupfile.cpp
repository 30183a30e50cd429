#include "core/store/backupfile.h"

#include "core/journal/digest.h"
#include "core/store/archivenames.h"
#include "core/store/hashbeside.h"
#include "core/store/limits.h"
#include "core/store/media.h"

#include <nlohmann/json.hpp>

#include <charconv>

namespace undercowl::store {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::uint64_t largestText = std::uint64_t{1} << 30U; // the lists of a very large shop
constexpr std::uint64_t largestHead = std::uint64_t{1} << 20U;
constexpr std::uint64_t largestDatabase = std::uint64_t{1} << 42U;
constexpr std::size_t hashDigits = 64;

tl::unexpected<Problem> refused(const std::string& why) {
    return failed(Fault::Refused, "backup: " + why);
}

Result<BackupContent> headFrom(std::string_view json) {
    if (const auto problem = jsonProblem(json, 4)) {
        return refused(backupHead + " " + *problem);
    }
    const Json head = Json::parse(json, nullptr, false);
    const auto at = head.find("format");
    if (at == head.end() || *at != backupFormat) {
        return refused("this is no backup of a shop");
    }
    const auto version = head.find("version");
    if (version == head.end() || !version->is_number_unsigned()) {
        return refused(backupHead + ": version: is missing or not a number");
    }
    if (*version > backupVersion) {
        return failed(Fault::TooNew, "backup: was written by a newer version of this program; update it");
    }
    BackupContent content;
    const auto id = head.find("id");
    const auto made = head.find("made_at");
    const auto entries = head.find("entries");
    const auto follows = head.find("follows");
    if (id == head.end() || !id->is_string() || !isId(id->get<std::string>())) {
        return refused(backupHead + ": id: is missing or not an id");
    }
    if (made == head.end() || !made->is_number_unsigned() || *made > latestTime) {
        return refused(backupHead + ": made_at: is missing or not a time");
    }
    if (entries == head.end() || !entries->is_number_unsigned()) {
        return refused(backupHead + ": entries: is missing or not a number");
    }
    if (follows == head.end() || !follows->is_array() || follows->size() > 10'000) {
        return refused(backupHead + ": follows: is missing or not a list");
    }
    content.id = id->get<std::string>();
    content.at = made->get<job::TimeMs>();
    content.entries = entries->get<std::size_t>();
    for (const auto& one : *follows) {
        if (!one.is_string()) {
            return refused(backupHead + ": follows: holds something that is not an id");
        }
        content.follows.push_back(one.get<std::string>());
    }
    return content;
}

// Calls 'take' with each line, without its end; the last line ends with one too.
std::optional<std::string> eachLine(std::string_view lines,
                                    const std::function<bool(std::string_view)>& take) {
    for (std::size_t number = 1; !lines.empty(); ++number) {
        const std::size_t end = lines.find('\n');
        if (end == std::string_view::npos || !take(lines.substr(0, end))) {
            return "line " + std::to_string(number) + " is not as it should be";
        }
        lines.remove_prefix(end + 1);
    }
    return std::nullopt;
}

class Reading {
public:
    explicit Reading(const BackupVisitor& visitor) : visitor_(visitor) {}

    // The members come in a fixed order, so that whatever stands in a wrong place is refused.
    Result<bool> visit(TarMember& member) {
        const std::string& name = member.name();
        if (stage_ == 0 && name == backupHead) {
            auto head =
                kept(member, largestHead).and_then([](const std::string& json) { return headFrom(json); });
            if (!head) {
                return tl::unexpected(head.error());
            }
            content_ = std::move(*head);
            return next();
        }
        if (stage_ == 1 && name == backupDatabase) {
            const auto read = member.read(largestDatabase, [&](auto piece) { return database(piece); });
            if (!read) {
                return tl::unexpected(read.error());
            }
            hashes_[name] = database_.finish();
            return next();
        }
        if (stage_ == 2 && name.starts_with(mediaFolder)) {
            auto done = media(member);
            return done ? Result<bool>(true) : tl::unexpected(done.error());
        }
        if (stage_ == 2 && name == backupMediaList) {
            auto done = mediaList(member);
            return done ? next() : tl::unexpected(done.error());
        }
        if (stage_ == 3 && name == checksumsName) {
            auto done = checksums(member);
            return done ? next() : tl::unexpected(done.error());
        }
        return refused("'" + name.substr(0, 120) +
                       "' has no place here; this is no backup of a shop, or it is damaged");
    }

    [[nodiscard]] const BackupContent& begun() const { return content_; } // as far as it was read

    Result<BackupContent> finish() {
        return stage_ == 4 ? Result<BackupContent>(std::move(content_))
                           : failedAt(Problem{Fault::Refused,
                                              "backup: is cut short: it ends before its list of checksums"});
    }

    // How a reading ends that met this: what came before it counts where damage is passed over.
    Result<BackupContent> failedAt(Problem problem) {
        if (stage_ == 0 || stopped_) { // it is not known to be a backup, or whoever visits has had enough
            return tl::unexpected(std::move(problem));
        }
        if (!problem.message.starts_with("backup: ")) {
            problem.message.insert(0, "backup: ");
        }
        if (visitor_.damage) {
            visitor_.damage(problem.message);
            return std::move(content_);
        }
        problem.message +=
            ". What can still be read of it comes back with 'undercowlctl backup restore --incomplete'";
        return tl::unexpected(std::move(problem));
    }

private:
    // An answer of the visitor's.
    Result<void> visited(Result<void> answer) {
        stopped_ = stopped_ || !answer;
        return answer;
    }
    Result<bool> next() {
        ++stage_;
        return true;
    }
    Result<void> step(std::size_t bytes) {
        return visited(visitor_.progress && !visitor_.progress(bytes) ? tl::unexpected(backupCancelled())
                                                                      : Result<void>{});
    }

    Result<std::string> kept(TarMember& member, std::uint64_t most) {
        std::string all;
        const auto read = member.read(most, [&](std::span<const std::byte> piece) -> Result<void> {
            all += text(piece);
            return {};
        });
        if (!read) {
            return tl::unexpected(read.error());
        }
        hashes_[member.name()] = journal::blake2b256(all);
        return all;
    }

    Result<void> database(std::span<const std::byte> piece) {
        database_.add(piece);
        auto done = step(piece.size());
        return done && visitor_.database ? visited(visitor_.database(piece)) : done;
    }

    Result<void> media(TarMember& member) {
        const std::string name = member.name().substr(mediaFolder.size());
        if (!isMediaName(name)) {
            return refused("'" + member.name().substr(0, 120) + "' is not the name of a media file");
        }
        const auto content = kept(member, largestMedia);
        if (!content) {
            return tl::unexpected(content.error());
        }
        auto done = step(content->size());
        if (done && hashes_[member.name()] != name.substr(0, hashDigits)) {
            const std::string problem =
                member.name() + ": its content does not fit its name; the backup is damaged";
            if (!visitor_.damage) {
                return refused(problem);
            }
            visitor_.damage(problem);
            return {};
        }
        return done && visitor_.media ? visited(visitor_.media(name, std::as_bytes(std::span(*content))))
                                      : done;
    }

    // "HASH.jpg here" or "HASH.jpg earlier"
    Result<void> mediaList(TarMember& member) {
        const auto lines = kept(member, largestText);
        if (!lines) {
            return tl::unexpected(lines.error());
        }
        std::size_t here = 0;
        const auto problem = eachLine(*lines, [&](std::string_view line) {
            const std::size_t gap = line.find(' ');
            const std::string name(line.substr(0, gap));
            const bool isHere = gap != std::string_view::npos && line.substr(gap) == " here";
            here += isHere ? 1 : 0;
            return isMediaName(name) && gap != std::string_view::npos &&
                   (isHere ? hashes_.contains(mediaFolder + name) : line.substr(gap) == " earlier") &&
                   content_.media.emplace(name, isHere).second;
        });
        if (problem) {
            return refused(backupMediaList + ": " + *problem);
        }
        return here + 3 == hashes_.size() ? Result<void>{}
                                          : refused("holds media that its list does not name");
    }

    Result<void> checksums(TarMember& member) {
        const auto lines = kept(member, largestText);
        if (!lines) {
            return tl::unexpected(lines.error());
        }
        std::size_t seen = 0;
        const auto problem = eachLine(*lines, [&](std::string_view line) {
            if (line.size() < hashDigits + 3 || line.substr(hashDigits, 2) != "  ") {
                return false;
            }
            const auto at = hashes_.find(std::string(line.substr(hashDigits + 2)));
            ++seen;
            return at != hashes_.end() && at->first != checksumsName &&
                   at->second == line.substr(0, hashDigits);
        });
        if (problem || seen + 1 != hashes_.size()) {
            return refused(checksumsName + ": does not fit what is in the backup; it is damaged");
        }
        return {};
    }

    const BackupVisitor& visitor_;
    BackupContent content_;
    std::map<std::string, std::string> hashes_; // of members
    HashBeside database_;
    int stage_{};
    bool stopped_{};
};

} // namespace

Problem backupCancelled() {
    return {Fault::Refused, "cancelled; nothing was changed"};
}

std::string headJson(const BackupContent& content) {
    return Json{{"format", backupFormat}, {"version", backupVersion},   {"id", content.id},
                {"made_at", content.at},  {"entries", content.entries}, {"follows", content.follows}}
               .dump(1) +
           "\n";
}

std::string mediaListOf(const BackupContent& content) {
    std::string lines;
    for (const auto& [name, here] : content.media) {
        lines += name + (here ? " here\n" : " earlier\n");
    }
    return lines;
}

BackupMade summaryOf(const BackupContent& content) {
    BackupMade made;
    made.id = content.id;
    made.at = content.at;
    made.entries = content.entries;
    made.media = content.media.size();
    for (const auto& [name, here] : content.media) {
        made.mediaHere += here ? 1 : 0;
    }
    made.bytes = content.bytes;
    return made;
}

Result<BackupContent> readBackup(ByteSource& from, const BackupVisitor& visitor) {
    Reading reading(visitor);
    const auto read = readTar(from, [&](TarMember& member) { return reading.visit(member); });
    return read ? reading.finish() : reading.failedAt(read.error());
}

namespace {

// The TAR file in a backup: itself, or what its seal is round.
struct Unsealed {
    std::unique_ptr<FileSource> file;
    std::unique_ptr<ByteSource> inside; // null: not sealed
    [[nodiscard]] ByteSource& tar() const { return inside == nullptr ? *file : *inside; }
};

Result<bool> isSealedFile(const std::filesystem::path& file) {
    std::array<std::byte, sealMagic.size()> begin{};
    return FileSource::open(file)
        .and_then([&](const auto& look) { return look->get(begin); })
        .map([&](std::size_t /*got*/) { return isSealed(text(begin)); });
}

Result<Unsealed> unsealed(const std::filesystem::path& file, const std::string& passphrase) {
    const auto sealed = isSealedFile(file);
    auto source = FileSource::open(file);
    if (!sealed || !source) {
        return tl::unexpected(sealed ? source.error() : sealed.error());
    }
    if (!*sealed) {
        return Unsealed{std::move(*source), nullptr};
    }
    if (passphrase.empty()) {
        return refused(file.string() + " is sealed: give its passphrase");
    }
    auto inside = unsealing(**source, passphrase);
    return Unsealed{std::move(*source), std::move(inside)};
}

} // namespace

Result<BackupContent> readBackup(const std::filesystem::path& file, const std::string& passphrase,
                                 const BackupVisitor& visitor) {
    const auto open = unsealed(file, passphrase);
    if (!open) {
        return tl::unexpected(open.error());
    }
    std::error_code ignored;
    const std::uint64_t bytes = std::filesystem::file_size(file, ignored);
    return readBackup(open->tar(), visitor).map([bytes](BackupContent content) {
        content.bytes = bytes;
        return content;
    });
}

Result<BackupHead> readBackupHead(const std::filesystem::path& file, const std::string& passphrase) {
    const auto sealed = isSealedFile(file);
    if (!sealed) {
        return tl::unexpected(sealed.error());
    }
    if (*sealed && passphrase.empty()) {
        return BackupHead{true, {}, {}, {}, {}};
    }
    const auto open = unsealed(file, passphrase);
    if (!open) {
        return tl::unexpected(open.error());
    }
    const BackupVisitor nothing;
    Reading reading(nothing);
    const auto read = readTar(open->tar(), [&](TarMember& member) {
        return reading.visit(member).map([](bool) { return false; }); // no further than the first
    });
    if (!read) {
        return tl::unexpected(read.error());
    }
    const BackupContent& content = reading.begun();
    if (content.id.empty()) {
        return refused("there is nothing in it");
    }
    return BackupHead{*sealed, content.id, content.follows, content.at, content.entries};
}

} // namespace undercowl::store
