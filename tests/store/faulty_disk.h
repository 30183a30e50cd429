// A disk that fails, tears or forgets on demand: the file system of the store's media and, as a SQLite VFS,
// of its database, with one count of operations over both. What is written lies in real files, so that SQLite
// locks and maps them as ever; beside them it is kept what of it had been synced.
#pragma once

#include "core/store/files.h"

#include <cstdint>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <vector>

namespace undercowl::store::test {

enum class Mishap : std::uint8_t {
    DiskFull,    // ENOSPC, of what would take room
    InputOutput, // EIO, of anything
    ReadOnly,    // EROFS, of what would change something
    ShortWrite,  // fewer bytes than given; from a database, which asks for all or nothing, it is an error
    FailedSync,  // EIO, and what was to be synced never reaches the medium, as Linux does it
    PowerCut,    // nothing works until restart(); nothing that was not synced is left
    PowerTorn,   // the same, but of the unsynced writes any may have reached the medium, one of them in part
};
inline constexpr int mishaps = 7;

enum class Deed : std::uint8_t { Read, Write, Remove, Sync };

class FaultyDisk final : public Files {
public:
    explicit FaultyDisk(unsigned seed = 1);
    ~FaultyDisk() override;

    // The n-th operation to which it applies from now on meets the mishap; with 'lasting' all after it too,
    // until restart().
    void failAt(int operation, Mishap mishap, bool lasting = false);
    // Room is made, or the power is back. After a cut no store may be open: real files become what the medium
    // holds.
    void restart();
    [[nodiscard]] bool happened() const { return happened_; }
    // How often the mishap of failAt() could have happened.
    [[nodiscard]] int occasions() const { return occasions_; }

    [[nodiscard]] std::string vfs() const override { return name_; }
    Result<void> makeFolder(const std::filesystem::path& folder) override;
    Result<std::unique_ptr<OutFile>> create(const std::filesystem::path& file) override;
    Result<void> rename(const std::filesystem::path& from, const std::filesystem::path& to) override;
    Result<void> remove(const std::filesystem::path& file) override;
    Result<void> syncFolder(const std::filesystem::path& folder) override;
    Result<std::optional<std::uint64_t>> size(const std::filesystem::path& file) override;
    Result<std::vector<std::string>> list(const std::filesystem::path& folder) override;
    Result<void> read(const std::filesystem::path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override;

    // --- for the VFS and the files
    enum class Outcome : std::uint8_t { Fine, Short, Full, Error, Locked };
    [[nodiscard]] Outcome deed(Deed kind, bool takesRoom = true);
    // What happens to a file, told after it was done to the real one.
    void wrote(const std::string& file, std::int64_t at, std::string_view bytes);
    void truncated(const std::string& file, std::int64_t size);
    void synced(const std::string& file, bool nameToo, bool lost);
    void created(const std::string& file);
    void removing(const std::string& file); // before the real one goes
    void removed(const std::string& file, bool synced);

private:
    struct Change {
        std::int64_t at{}; // or the new size, when there are no bytes
        std::string bytes;
    };
    struct Inode {
        std::string medium; // what a cut leaves at least
        std::vector<Change> unsynced;
    };
    using InodePtr = std::shared_ptr<Inode>;
    struct Naming { // not yet synced
        std::string name;
        InodePtr inode; // null: the name goes
    };
    InodePtr inode(const std::string& file);
    void settle(const std::string& folder, const std::string& only);

    std::string name_;
    std::map<std::string, InodePtr> seen_;   // as the program sees the names; null: removed
    std::map<std::string, InodePtr> medium_; // as they stand on the medium; null: not there
    std::vector<Naming> namings_;
    std::mt19937 random_;
    int occasions_{};
    int failAt_{-1};
    Mishap mishap_{};
    bool lasting_{};
    bool happened_{};
    bool off_{};
};

} // namespace undercowl::store::test
