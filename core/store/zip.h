// ZIP files, member by member, with limits on what is read.
#pragma once

#include "core/store/files.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <set>
#include <span>
#include <string>

struct archive;

namespace undercowl::store {

inline constexpr std::uint64_t largestUnpacked = std::uint64_t{2} << 30U; // bytes of all members together
inline constexpr std::size_t mostMembers = 20'000;

// Writes beside the file, syncs, renames. Nothing is left behind when it fails or is never finished.
class ZipWriter {
public:
    explicit ZipWriter(std::filesystem::path file, std::shared_ptr<Files> files);
    ZipWriter(const ZipWriter&) = delete;
    ZipWriter& operator=(const ZipWriter&) = delete;
    ~ZipWriter();

    // A member of known size; 'give' calls the function it gets with the content, piece by piece. Photos and
    // sound are stored as they are, the rest is compressed.
    using Take = std::function<Result<void>(std::span<const std::byte>)>;
    Result<void> add(const std::string& name, std::uint64_t size, bool compress, std::int64_t timeSeconds,
                     const std::function<Result<void>(const Take&)>& give);
    Result<void> finish();

    struct Sink; // where libarchive's output goes

private:
    Result<void> begin();
    Problem problem(const std::string& what) const;

    std::filesystem::path file_;
    std::filesystem::path beside_;
    std::shared_ptr<Files> files_;
    std::unique_ptr<Sink> sink_;
    archive* archive_{};
};

// One member while it is being read.
class ZipMember {
public:
    ZipMember(archive* from, std::string name, std::uint64_t declared, std::uint64_t& left)
        : archive_(from), name_(std::move(name)), declared_(declared), left_(left) {}

    [[nodiscard]] const std::string& name() const { return name_; }
    [[nodiscard]] std::uint64_t declared() const { return declared_; }
    // Gives the content piece by piece; refused when it is more or less than declared, more than 'most', or
    // does not fit its checksum.
    Result<void> read(std::uint64_t most, const std::function<void(std::span<const std::byte>)>& take);

private:
    archive* archive_;
    std::string name_;
    std::uint64_t declared_;
    std::uint64_t& left_; // of what may be unpacked altogether
};

// Opens the file and gives each member to 'visit' once, stopping at the first problem. Refused: what is not a
// whole ZIP, links, folders, encrypted members, a name twice, too many members, too much content.
Result<void> readZip(const std::filesystem::path& file, const std::function<Result<void>(ZipMember&)>& visit);

} // namespace undercowl::store
