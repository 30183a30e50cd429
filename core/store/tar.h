// TAR files, member by member, from and to a stream: a backup may be larger than memory, and sealed.
#pragma once

#include "core/store/stream.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <string>

struct archive;

namespace undercowl::store {

class TarWriter {
public:
    explicit TarWriter(ByteSink& to);
    TarWriter(const TarWriter&) = delete;
    TarWriter& operator=(const TarWriter&) = delete;
    ~TarWriter();

    // A member of known size; then data() until all of it was given.
    Result<void> begin(const std::string& name, std::uint64_t size, std::int64_t timeSeconds);
    Result<void> data(std::span<const std::byte> bytes);
    Result<void> add(const std::string& name, std::span<const std::byte> content, std::int64_t timeSeconds);
    // Ends the stream below too.
    Result<void> finish();

    struct Sink; // where libarchive's output goes

private:
    [[nodiscard]] tl::unexpected<Problem> problem() const;
    std::unique_ptr<Sink> sink_;
    archive* archive_{};
};

// One member while it is being read.
class TarMember {
public:
    TarMember(archive* from, std::string name, std::uint64_t size)
        : archive_(from), name_(std::move(name)), size_(size) {}
    [[nodiscard]] const std::string& name() const { return name_; }
    [[nodiscard]] std::uint64_t size() const { return size_; } // as declared
    // Gives the content piece by piece; refused when it is more than 'most' or not what was declared.
    Result<void> read(std::uint64_t most,
                      const std::function<Result<void>(std::span<const std::byte>)>& take);

private:
    archive* archive_;
    std::string name_;
    std::uint64_t size_;
};

// Gives each member to 'visit' once, stopping at the first problem or when 'visit' answers false; what a
// visit leaves unread is passed over. Refused: what is no TAR, links, folders, a name twice, too many
// members.
Result<void> readTar(ByteSource& from, const std::function<Result<bool>(TarMember&)>& visit);

inline constexpr std::size_t mostBackupMembers = 5'000'000;

} // namespace undercowl::store
