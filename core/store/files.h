// What the store asks of the file system, behind an interface so that tests can fail, tear or forget any one
// operation. The database goes through the same seam: whoever stands in for the file system names the SQLite
// VFS that does so too.
#pragma once

#include "core/store/result.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::store {

// The bytes as the characters that they are, for hashing and parsing.
[[nodiscard]] inline std::string_view text(std::span<const std::byte> bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

// A new file being written. Closed by the destructor at the latest.
class OutFile {
public:
    OutFile() = default;
    OutFile(const OutFile&) = delete;
    OutFile& operator=(const OutFile&) = delete;
    virtual ~OutFile() = default;

    // How many bytes were taken, which may be fewer than given but at least one of a non-empty span.
    virtual Result<std::size_t> write(std::span<const std::byte> bytes) = 0;
    // The content is on the medium when this returns.
    virtual Result<void> sync() = 0;
    // Not to be written to afterwards. Reports what the system held back until now.
    virtual Result<void> close() = 0;
};

class Files {
public:
    Files() = default;
    Files(const Files&) = delete;
    Files& operator=(const Files&) = delete;
    virtual ~Files() = default;

    // The SQLite VFS through which the database beside these files goes; empty for SQLite's own.
    [[nodiscard]] virtual std::string vfs() const { return {}; }

    // With the parents that are missing, their names on the medium when this returns; no failure if it is
    // there.
    virtual Result<void> makeFolder(const std::filesystem::path& folder) = 0;
    // Fails when the file exists.
    virtual Result<std::unique_ptr<OutFile>> create(const std::filesystem::path& file) = 0;
    virtual Result<void> rename(const std::filesystem::path& from, const std::filesystem::path& to) = 0;
    virtual Result<void> remove(const std::filesystem::path& file) = 0;
    // The folder's names are on the medium when this returns.
    virtual Result<void> syncFolder(const std::filesystem::path& folder) = 0;
    // The size of a regular file; nothing when there is none of this name. Links are not followed.
    virtual Result<std::optional<std::uint64_t>> size(const std::filesystem::path& file) = 0;
    // The names in the folder, in no order.
    virtual Result<std::vector<std::string>> list(const std::filesystem::path& folder) = 0;
    // Gives the content to 'take' piece by piece. NotFound when there is no such file.
    virtual Result<void> read(const std::filesystem::path& file,
                              const std::function<void(std::span<const std::byte>)>& take) = 0;
};

[[nodiscard]] std::shared_ptr<Files> posixFiles();

// Writes all of it, in as many pieces as the file takes.
Result<void> writeAll(OutFile& file, std::span<const std::byte> bytes);

} // namespace undercowl::store
