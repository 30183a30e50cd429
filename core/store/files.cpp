#include "core/store/files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace undercowl::store {
namespace {

using std::filesystem::path;

tl::unexpected<Problem> systemProblem(int error, const std::string& what, const path& file) {
    const std::string message = what + " " + file.string() + ": " + std::generic_category().message(error);
    switch (error) {
    case ENOSPC:
    case EDQUOT: return failed(Fault::DiskFull, message + ". Make room on the disk, then try again.");
    case EACCES:
    case EPERM:
    case EROFS:
        return failed(Fault::CannotOpen,
                      message + ". Check who owns the folder and whether it may be written.");
    case ENOENT: return failed(Fault::NotFound, message);
    default: return failed(Fault::InputOutput, message);
    }
}

class PosixFile final : public OutFile {
public:
    PosixFile(int descriptor, path file) : descriptor_(descriptor), file_(std::move(file)) {}
    ~PosixFile() override {
        if (descriptor_ >= 0) {
            ::close(descriptor_);
        }
    }

    Result<std::size_t> write(std::span<const std::byte> bytes) override {
        for (;;) {
            const ssize_t taken = ::write(descriptor_, bytes.data(), bytes.size());
            if (taken > 0 || (taken == 0 && bytes.empty())) {
                return static_cast<std::size_t>(taken);
            }
            if (taken == 0) {
                return systemProblem(EIO, "cannot write", file_);
            }
            if (errno != EINTR) {
                return systemProblem(errno, "cannot write", file_);
            }
        }
    }

    Result<void> sync() override {
        if (::fsync(descriptor_) != 0) { // not repeated: after a failed sync the written pages may be gone
            return systemProblem(errno, "cannot sync", file_);
        }
        return {};
    }

    Result<void> close() override {
        const int descriptor = std::exchange(descriptor_, -1);
        if (::close(descriptor) != 0 && errno != EINTR) {
            return systemProblem(errno, "cannot close", file_);
        }
        return {};
    }

private:
    int descriptor_;
    path file_;
};

class PosixFiles final : public Files {
public:
    Result<void> makeFolder(const path& folder) override {
        std::error_code error;
        path wanted = std::filesystem::absolute(folder, error).lexically_normal();
        if (!wanted.has_filename()) { // a slash at its end
            wanted = wanted.parent_path();
        }
        if (error || std::filesystem::is_directory(wanted, error) || !wanted.has_relative_path()) {
            return {};
        }
        const path parent = wanted.parent_path();
        if (auto made = makeFolder(parent); !made) {
            return made;
        }
        if (::mkdir(wanted.c_str(), 0777) != 0 && errno != EEXIST) {
            return systemProblem(errno, "cannot make the folder", folder);
        }
        if (!std::filesystem::is_directory(wanted, error)) {
            return systemProblem(ENOTDIR, "cannot make the folder", folder);
        }
        // Until its name is synced, a cut would take the folder with everything in it.
        auto synced = syncFolder(parent);
        if (!synced) {
            (void)::rmdir(wanted.c_str()); // so that the next attempt syncs too
        }
        return synced;
    }

    Result<std::unique_ptr<OutFile>> create(const path& file) override {
        const int descriptor =
            ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0644);
        if (descriptor < 0) {
            return systemProblem(errno, "cannot create", file);
        }
        return std::make_unique<PosixFile>(descriptor, file);
    }

    Result<void> rename(const path& from, const path& to) override {
        if (::rename(from.c_str(), to.c_str()) != 0) {
            return systemProblem(errno, "cannot rename to", to);
        }
        return {};
    }

    Result<void> remove(const path& file) override {
        if (::unlink(file.c_str()) != 0) {
            return systemProblem(errno, "cannot remove", file);
        }
        return {};
    }

    Result<void> syncFolder(const path& folder) override {
        const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
        if (descriptor < 0) {
            return systemProblem(errno, "cannot open the folder", folder);
        }
        return PosixFile(descriptor, folder).sync();
    }

    Result<std::optional<std::uint64_t>> size(const path& file) override {
        struct stat status {};
        if (::lstat(file.c_str(), &status) != 0) {
            if (errno == ENOENT || errno == ENOTDIR) {
                return std::nullopt;
            }
            return systemProblem(errno, "cannot look at", file);
        }
        if (!S_ISREG(status.st_mode)) {
            return failed(Fault::Refused, file.string() + " is not a regular file. Move it away.");
        }
        return static_cast<std::uint64_t>(status.st_size);
    }

    Result<std::vector<std::string>> list(const path& folder) override {
        std::error_code error;
        std::vector<std::string> names;
        for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end;
             at.increment(error)) {
            names.push_back(at->path().filename().string());
        }
        if (error) {
            return systemProblem(error.value(), "cannot list the folder", folder);
        }
        return names;
    }

    Result<void> read(const path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override {
        const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
        if (descriptor < 0) {
            return systemProblem(errno, "cannot open", file);
        }
        PosixFile closer(descriptor, file);
        // Not filled with zeros first: for a small photo that would cost more than reading it.
        constexpr std::size_t most = std::size_t{1} << 18U;
        const auto piece = std::make_unique_for_overwrite<std::byte[]>(most);
        for (;;) {
            const ssize_t got = ::read(descriptor, piece.get(), most);
            if (got == 0) {
                return {};
            }
            if (got > 0) {
                take({piece.get(), static_cast<std::size_t>(got)});
            } else if (errno != EINTR) {
                return systemProblem(errno, "cannot read", file);
            }
        }
    }
};

} // namespace

std::shared_ptr<Files> posixFiles() {
    return std::make_shared<PosixFiles>();
}

Result<void> writeAll(OutFile& file, std::span<const std::byte> bytes) {
    while (!bytes.empty()) {
        const auto taken = file.write(bytes);
        if (!taken) {
            return tl::unexpected(taken.error());
        }
        bytes = bytes.subspan(*taken);
    }
    return {};
}

} // namespace undercowl::store
