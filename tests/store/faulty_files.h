// A file system in memory that fails, tears or forgets on demand.
#pragma once

#include "core/store/files.h"

#include <map>
#include <string>

namespace undercowl::store::test {

// What happens at the chosen operation. A cut of the power drops everything that was not synced, and every
// operation after it fails until restart().
enum class Mishap : std::uint8_t { DiskFull, InputOutput, ShortWrite, PowerCut };

class FaultyFiles final : public Files {
public:
    void failAt(int operation, Mishap mishap);
    void restart(); // power is back; what was not synced is gone
    [[nodiscard]] int operations() const { return operations_; }
    [[nodiscard]] bool happened() const { return happened_; }
    [[nodiscard]] const std::map<std::string, std::string>& names() const { return names_; }

    Result<void> makeFolder(const std::filesystem::path& folder) override;
    Result<std::unique_ptr<OutFile>> create(const std::filesystem::path& file) override;
    Result<void> rename(const std::filesystem::path& from, const std::filesystem::path& to) override;
    Result<void> remove(const std::filesystem::path& file) override;
    Result<void> syncFolder(const std::filesystem::path& folder) override;
    Result<std::optional<std::uint64_t>> size(const std::filesystem::path& file) override;
    Result<std::vector<std::string>> list(const std::filesystem::path& folder) override;
    Result<void> read(const std::filesystem::path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override;

private:
    friend class FaultyFile;
    struct Content {
        std::string written;
        std::string synced;
    };
    Result<bool> operation(bool write = false); // true: a short write is wanted

    std::map<std::string, std::string> names_;       // to inodes, as seen by the program
    std::map<std::string, std::string> syncedNames_; // as they stand on the medium
    std::map<std::string, Content> inodes_;
    int operations_{};
    int failAt_{-1};
    Mishap mishap_{};
    bool happened_{};
    bool off_{};
};

} // namespace undercowl::store::test
