#include "tests/store/faulty_files.h"

#include <algorithm>

namespace undercowl::store::test {

class FaultyFile final : public OutFile {
public:
    FaultyFile(FaultyFiles& files, std::string inode) : files_(files), inode_(std::move(inode)) {}

    Result<std::size_t> write(std::span<const std::byte> bytes) override {
        const auto shortened = files_.operation(true);
        if (!shortened) {
            return tl::unexpected(shortened.error());
        }
        // Pieces of at most seven bytes, so that every file takes several writes.
        const std::size_t taken = std::min(bytes.size(), std::size_t{*shortened ? 1U : 7U});
        files_.inodes_[inode_].written.append(reinterpret_cast<const char*>(bytes.data()), taken);
        return taken;
    }
    Result<void> sync() override {
        if (const auto done = files_.operation(); !done) {
            return tl::unexpected(done.error());
        }
        files_.inodes_[inode_].synced = files_.inodes_[inode_].written;
        return {};
    }
    Result<void> close() override {
        const auto done = files_.operation();
        return done ? Result<void>{} : tl::unexpected(done.error());
    }

private:
    FaultyFiles& files_;
    std::string inode_;
};

void FaultyFiles::failAt(int operation, Mishap mishap) {
    operations_ = 0;
    failAt_ = operation;
    mishap_ = mishap;
    happened_ = false;
}

void FaultyFiles::restart() {
    if (off_) {
        names_ = syncedNames_;
        for (auto& [inode, content] : inodes_) {
            content.written = content.synced;
        }
    }
    off_ = false;
    failAt_ = -1;
}

Result<bool> FaultyFiles::operation(bool write) {
    if (off_) {
        return failed(Fault::InputOutput, "the power is off");
    }
    if (operations_++ != failAt_) {
        return false;
    }
    happened_ = true;
    switch (mishap_) {
    case Mishap::DiskFull: return failed(Fault::DiskFull, "no space left");
    case Mishap::InputOutput: return failed(Fault::InputOutput, "input/output error");
    case Mishap::ShortWrite: return write;
    case Mishap::PowerCut: off_ = true; break;
    }
    return failed(Fault::InputOutput, "the power went off");
}

Result<void> FaultyFiles::makeFolder(const std::filesystem::path& folder) {
    const auto done = operation();
    return done ? posixFiles()->makeFolder(folder) : tl::unexpected(done.error()); // for the database
}

Result<std::unique_ptr<OutFile>> FaultyFiles::create(const std::filesystem::path& file) {
    if (const auto done = operation(); !done) {
        return tl::unexpected(done.error());
    }
    if (names_.contains(file.string())) {
        return failed(Fault::InputOutput, "file exists");
    }
    const std::string inode = std::to_string(inodes_.size());
    inodes_[inode];
    names_[file.string()] = inode;
    return std::make_unique<FaultyFile>(*this, inode);
}

Result<void> FaultyFiles::rename(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (const auto done = operation(); !done) {
        return tl::unexpected(done.error());
    }
    const auto at = names_.find(from.string());
    if (at == names_.end()) {
        return failed(Fault::NotFound, "no such file");
    }
    names_[to.string()] = at->second;
    names_.erase(from.string());
    return {};
}

Result<void> FaultyFiles::remove(const std::filesystem::path& file) {
    if (const auto done = operation(); !done) {
        return tl::unexpected(done.error());
    }
    names_.erase(file.string());
    return {};
}

Result<void> FaultyFiles::syncFolder(const std::filesystem::path& /*folder*/) {
    if (const auto done = operation(); !done) {
        return tl::unexpected(done.error());
    }
    syncedNames_ = names_;
    return {};
}

Result<std::optional<std::uint64_t>> FaultyFiles::size(const std::filesystem::path& file) {
    if (const auto done = operation(); !done) {
        return tl::unexpected(done.error());
    }
    const auto at = names_.find(file.string());
    return at == names_.end() ? std::nullopt
                              : std::optional<std::uint64_t>(inodes_[at->second].written.size());
}

Result<std::vector<std::string>> FaultyFiles::list(const std::filesystem::path& folder) {
    if (const auto done = operation(); !done) {
        return tl::unexpected(done.error());
    }
    std::vector<std::string> all;
    for (const auto& [name, inode] : names_) {
        if (std::filesystem::path(name).parent_path() == folder) {
            all.push_back(std::filesystem::path(name).filename().string());
        }
    }
    return all;
}

Result<void> FaultyFiles::read(const std::filesystem::path& file,
                               const std::function<void(std::span<const std::byte>)>& take) {
    if (const auto done = operation(); !done) {
        return tl::unexpected(done.error());
    }
    const auto at = names_.find(file.string());
    if (at == names_.end()) {
        return failed(Fault::NotFound, "no such file");
    }
    take(std::as_bytes(std::span(inodes_[at->second].written)));
    return {};
}

} // namespace undercowl::store::test
