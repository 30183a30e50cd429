#include "tests/store/faulty_disk.h"

#include "tests/store/faulty_vfs.h"
#include "tests/store/shop.h"

#include <algorithm>
#include <atomic>
#include <fstream>

namespace undercowl::store::test {
namespace {

using Outcome = FaultyDisk::Outcome;

Problem problem(Outcome outcome) {
    switch (outcome) {
    case Outcome::Full: return {Fault::DiskFull, "no space left on the disk"};
    case Outcome::Locked: return {Fault::CannotOpen, "the disk may only be read"};
    default: return {Fault::InputOutput, "input/output error"};
    }
}

std::string folderOf(const std::string& file) {
    return std::filesystem::path(file).parent_path().string();
}

class FaultyFile final : public OutFile {
public:
    FaultyFile(FaultyDisk& disk, std::unique_ptr<OutFile> real, std::string name)
        : disk_(disk), real_(std::move(real)), name_(std::move(name)) {}

    Result<std::size_t> write(std::span<const std::byte> bytes) override {
        const Outcome outcome = disk_.deed(Deed::Write);
        if (outcome != Outcome::Fine && outcome != Outcome::Short) {
            return tl::unexpected(problem(outcome));
        }
        // In pieces, so that every file takes several writes.
        const std::size_t most = outcome == Outcome::Short ? 1 : std::max(std::size_t{7}, bytes.size() / 4);
        bytes = bytes.first(std::min(bytes.size(), most));
        auto taken = real_->write(bytes);
        if (taken) {
            disk_.wrote(name_, at_, {reinterpret_cast<const char*>(bytes.data()), *taken});
            at_ += static_cast<std::int64_t>(*taken);
        }
        return taken;
    }
    Result<void> sync() override {
        const Outcome outcome = disk_.deed(Deed::Sync);
        disk_.synced(name_, false, outcome != Outcome::Fine);
        return outcome == Outcome::Fine ? Result<void>{} : tl::unexpected(problem(outcome));
    }
    Result<void> close() override {
        const Outcome outcome = disk_.deed(Deed::Sync);
        return outcome == Outcome::Fine ? real_->close() : tl::unexpected(problem(outcome));
    }

private:
    FaultyDisk& disk_;
    std::unique_ptr<OutFile> real_;
    std::string name_;
    std::int64_t at_{};
};

} // namespace

FaultyDisk::FaultyDisk(unsigned seed) : random_(seed) {
    static std::atomic<int> count{};
    name_ = "faulty" + std::to_string(++count);
    addFaultyVfs(name_, *this);
}

FaultyDisk::~FaultyDisk() {
    removeFaultyVfs(name_);
}

void FaultyDisk::failAt(int operation, Mishap mishap, bool lasting) {
    occasions_ = 0;
    failAt_ = operation;
    mishap_ = mishap;
    lasting_ = lasting;
    happened_ = false;
}

Outcome FaultyDisk::deed(Deed kind, bool takesRoom) {
    if (off_) {
        return Outcome::Error;
    }
    bool applies = true;
    switch (mishap_) {
    case Mishap::DiskFull: applies = kind == Deed::Write && takesRoom; break;
    case Mishap::ReadOnly: applies = kind == Deed::Write || kind == Deed::Remove; break;
    case Mishap::ShortWrite: applies = kind == Deed::Write && takesRoom; break;
    case Mishap::FailedSync: applies = kind == Deed::Sync; break;
    default: break;
    }
    if (!applies) {
        return Outcome::Fine;
    }
    const int now = occasions_++;
    if (failAt_ < 0 || now < failAt_ || (now > failAt_ && !lasting_)) {
        return Outcome::Fine;
    }
    happened_ = true;
    switch (mishap_) {
    case Mishap::DiskFull: return Outcome::Full;
    case Mishap::ReadOnly: return Outcome::Locked;
    case Mishap::ShortWrite: return Outcome::Short;
    case Mishap::PowerCut:
    case Mishap::PowerTorn: off_ = true; break;
    default: break;
    }
    return Outcome::Error;
}

FaultyDisk::InodePtr FaultyDisk::inode(const std::string& file) {
    const auto at = seen_.find(file);
    if (at != seen_.end() && at->second) {
        return at->second;
    }
    // Met for the first time: it was there before, hence on the medium.
    auto fresh = std::make_shared<Inode>();
    fresh->medium = slurp(file);
    seen_[file] = fresh;
    medium_.try_emplace(file, fresh);
    return fresh;
}

void FaultyDisk::wrote(const std::string& file, std::int64_t at, std::string_view bytes) {
    seen_.at(file)->unsynced.push_back({at, std::string(bytes)});
}

void FaultyDisk::truncated(const std::string& file, std::int64_t size) {
    seen_.at(file)->unsynced.push_back({size, {}});
}

namespace {
void apply(std::string& content, std::int64_t at, std::string_view bytes) {
    const auto begin = static_cast<std::size_t>(at);
    if (bytes.empty()) {
        content.resize(begin);
        return;
    }
    content.resize(std::max(content.size(), begin + bytes.size()));
    content.replace(begin, bytes.size(), bytes);
}
} // namespace

void FaultyDisk::synced(const std::string& file, bool nameToo, bool lost) {
    if (off_) {
        return;
    }
    const InodePtr node = inode(file);
    if (!lost) {
        for (const Change& change : node->unsynced) {
            apply(node->medium, change.at, change.bytes);
        }
        if (nameToo) {
            settle(folderOf(file), file);
        }
    }
    node->unsynced.clear();
}

void FaultyDisk::created(const std::string& file) {
    medium_.try_emplace(file, nullptr);
    seen_[file] = std::make_shared<Inode>();
    namings_.push_back({file, seen_[file]});
}

void FaultyDisk::removing(const std::string& file) {
    (void)inode(file);
}

void FaultyDisk::removed(const std::string& file, bool synced) {
    seen_[file] = nullptr;
    namings_.push_back({file, nullptr});
    if (synced) {
        settle(folderOf(file), file);
    }
}

// Names of the folder, or the one, become as the program sees them.
void FaultyDisk::settle(const std::string& folder, const std::string& only) {
    std::erase_if(namings_, [&](const Naming& naming) {
        const bool meant = only.empty() ? folderOf(naming.name) == folder : naming.name == only;
        if (meant) {
            medium_[naming.name] = naming.inode;
        }
        return meant;
    });
}

void FaultyDisk::restart() {
    const bool torn = mishap_ == Mishap::PowerTorn;
    failAt_ = -1;
    if (!std::exchange(off_, false)) {
        return;
    }
    if (torn) { // a journalling file system keeps the order of names
        const std::size_t kept = random_() % (namings_.size() + 1);
        for (std::size_t i = 0; i < kept; ++i) {
            medium_[namings_[i].name] = namings_[i].inode;
        }
    }
    namings_.clear();
    for (const auto& [name, node] : seen_) {
        std::filesystem::remove(name);
    }
    for (const auto& [name, node] : medium_) {
        if (!node) {
            std::filesystem::remove(name);
            continue;
        }
        if (torn && !node->unsynced.empty()) {
            const std::size_t part = random_() % node->unsynced.size();
            for (std::size_t i = 0; i < node->unsynced.size(); ++i) {
                const Change& change = node->unsynced[i];
                if (i == part && !change.bytes.empty()) {
                    apply(node->medium, change.at,
                          std::string_view(change.bytes).substr(0, 1 + random_() % change.bytes.size()));
                } else if (random_() % 2 == 0) {
                    apply(node->medium, change.at, change.bytes);
                }
            }
        }
        std::ofstream(name, std::ios::binary) << node->medium;
    }
    seen_.clear();
    medium_.clear();
}

Result<void> FaultyDisk::makeFolder(const std::filesystem::path& folder) {
    const Outcome outcome = deed(Deed::Write);
    return outcome == Outcome::Fine || outcome == Outcome::Short ? posixFiles()->makeFolder(folder)
                                                                 : tl::unexpected(problem(outcome));
}

Result<std::unique_ptr<OutFile>> FaultyDisk::create(const std::filesystem::path& file) {
    const Outcome outcome = deed(Deed::Write);
    if (outcome != Outcome::Fine && outcome != Outcome::Short) {
        return tl::unexpected(problem(outcome));
    }
    auto real = posixFiles()->create(file);
    if (!real) {
        return real;
    }
    created(file.string());
    return std::make_unique<FaultyFile>(*this, std::move(*real), file.string());
}

Result<void> FaultyDisk::rename(const std::filesystem::path& from, const std::filesystem::path& to) {
    const Outcome outcome = deed(Deed::Write);
    if (outcome != Outcome::Fine && outcome != Outcome::Short) {
        return tl::unexpected(problem(outcome));
    }
    const InodePtr moved = inode(from.string());
    if (std::filesystem::exists(to)) {
        (void)inode(to.string());
    }
    auto done = posixFiles()->rename(from, to);
    if (done) {
        medium_.try_emplace(to.string(), nullptr);
        seen_[to.string()] = moved;
        seen_[from.string()] = nullptr;
        namings_.push_back({to.string(), moved});
        namings_.push_back({from.string(), nullptr});
    }
    return done;
}

Result<void> FaultyDisk::remove(const std::filesystem::path& file) {
    const Outcome outcome = deed(Deed::Remove);
    if (outcome != Outcome::Fine) {
        return tl::unexpected(problem(outcome));
    }
    if (std::filesystem::exists(file)) {
        removing(file.string());
    }
    auto done = posixFiles()->remove(file);
    if (done) {
        removed(file.string(), false);
    }
    return done;
}

Result<void> FaultyDisk::syncFolder(const std::filesystem::path& folder) {
    const Outcome outcome = deed(Deed::Sync);
    if (outcome != Outcome::Fine) {
        return tl::unexpected(problem(outcome));
    }
    settle(folder.string(), {});
    return {};
}

Result<std::optional<std::uint64_t>> FaultyDisk::size(const std::filesystem::path& file) {
    const Outcome outcome = deed(Deed::Read);
    return outcome == Outcome::Fine ? posixFiles()->size(file) : tl::unexpected(problem(outcome));
}

Result<std::vector<std::string>> FaultyDisk::list(const std::filesystem::path& folder) {
    const Outcome outcome = deed(Deed::Read);
    return outcome == Outcome::Fine ? posixFiles()->list(folder) : tl::unexpected(problem(outcome));
}

Result<void> FaultyDisk::read(const std::filesystem::path& file,
                              const std::function<void(std::span<const std::byte>)>& take) {
    const Outcome outcome = deed(Deed::Read);
    return outcome == Outcome::Fine ? posixFiles()->read(file, take) : tl::unexpected(problem(outcome));
}

} // namespace undercowl::store::test
