#include "core/store/tar.h"

#include <archive.h>
#include <archive_entry.h>

#include <cerrno>
#include <set>
#include <vector>

namespace undercowl::store {

struct TarWriter::Sink {
    ByteSink& to;
    Problem problem{Fault::InputOutput, {}};
    bool dropped{};
};

namespace {

constexpr std::size_t pieceSize = std::size_t{1} << 18U;

la_ssize_t writeTo(archive* tar, void* client, const void* data, size_t size) {
    auto& sink = *static_cast<TarWriter::Sink*>(client);
    if (sink.dropped) {
        return static_cast<la_ssize_t>(size);
    }
    const auto written = sink.to.put({static_cast<const std::byte*>(data), size});
    if (!written) {
        sink.problem = written.error();
        archive_set_error(tar, EIO, "%s", sink.problem.message.c_str());
        return -1;
    }
    return static_cast<la_ssize_t>(size);
}

struct Source {
    ByteSource& from;
    std::vector<std::byte> piece = std::vector<std::byte>(pieceSize);
    Problem problem{Fault::Refused, {}};
};

la_ssize_t readFrom(archive* tar, void* client, const void** data) {
    auto& source = *static_cast<Source*>(client);
    const auto got = source.from.get(source.piece);
    if (!got) {
        source.problem = got.error();
        archive_set_error(tar, EIO, "%s", source.problem.message.c_str());
        return -1;
    }
    *data = source.piece.data();
    return static_cast<la_ssize_t>(*got);
}

std::string said(archive* tar) {
    const char* text = archive_error_string(tar);
    return text != nullptr ? text : "no reason given";
}

struct FreeReader {
    void operator()(archive* tar) const { archive_read_free(tar); }
};
struct FreeEntry {
    void operator()(archive_entry* entry) const { archive_entry_free(entry); }
};

} // namespace

TarWriter::TarWriter(ByteSink& to)
    : sink_(std::make_unique<Sink>(Sink{to, {Fault::InputOutput, {}}, false})) {
    archive_ = archive_write_new();
    archive_write_set_format_pax_restricted(archive_);
    archive_write_set_bytes_per_block(archive_, static_cast<int>(pieceSize));
    archive_write_set_bytes_in_last_block(archive_, 512);
    archive_write_open(archive_, sink_.get(), nullptr, writeTo, nullptr);
}

TarWriter::~TarWriter() {
    if (archive_ != nullptr) {
        sink_->dropped = true; // closing writes the rest, which nobody wants
        archive_write_free(archive_);
    }
}

tl::unexpected<Problem> TarWriter::problem() const {
    return sink_->problem.message.empty()
               ? failed(Fault::InputOutput, "backup: cannot be written: " + said(archive_))
               : tl::unexpected<Problem>(sink_->problem);
}

Result<void> TarWriter::begin(const std::string& name, std::uint64_t size, std::int64_t timeSeconds) {
    const std::unique_ptr<archive_entry, FreeEntry> entry(archive_entry_new());
    archive_entry_set_pathname(entry.get(), name.c_str());
    archive_entry_set_size(entry.get(), static_cast<la_int64_t>(size));
    archive_entry_set_filetype(entry.get(), AE_IFREG);
    archive_entry_set_perm(entry.get(), 0600);
    archive_entry_set_mtime(entry.get(), timeSeconds, 0);
    return archive_write_header(archive_, entry.get()) == ARCHIVE_OK ? Result<void>{} : problem();
}

Result<void> TarWriter::data(std::span<const std::byte> bytes) {
    while (!bytes.empty()) {
        const la_ssize_t taken = archive_write_data(archive_, bytes.data(), bytes.size());
        if (taken <= 0) {
            return problem();
        }
        bytes = bytes.subspan(static_cast<std::size_t>(taken));
    }
    return {};
}

Result<void> TarWriter::add(const std::string& name, std::span<const std::byte> content,
                            std::int64_t timeSeconds) {
    auto done = begin(name, content.size(), timeSeconds);
    return done ? data(content) : done;
}

Result<void> TarWriter::finish() {
    if (archive_write_close(archive_) != ARCHIVE_OK) {
        return problem();
    }
    archive_write_free(archive_);
    archive_ = nullptr;
    return sink_->to.end();
}

Result<void> TarMember::read(std::uint64_t most,
                             const std::function<Result<void>(std::span<const std::byte>)>& take) {
    if (size_ > most) {
        return failed(Fault::Refused, "backup: " + name_.substr(0, 120) + " has " + std::to_string(size_) +
                                          " bytes, at most " + std::to_string(most) + " are taken");
    }
    std::uint64_t got = 0;
    for (;;) {
        // As it lies in libarchive's buffer: what comes before a place where the file ends is given too.
        const void* piece = nullptr;
        std::size_t count = 0;
        la_int64_t offset = 0;
        const int code = archive_read_data_block(archive_, &piece, &count, &offset);
        if (code == ARCHIVE_EOF) {
            break;
        }
        if (code != ARCHIVE_OK) {
            return failed(Fault::Refused, said(archive_));
        }
        if (offset < 0 || static_cast<std::uint64_t>(offset) != got) {
            return failed(Fault::Refused, "backup: " + name_.substr(0, 120) + " has holes");
        }
        got += count;
        if (got > size_) {
            return failed(Fault::Refused, "backup: " + name_.substr(0, 120) + " is longer than it says");
        }
        if (auto taken = take({static_cast<const std::byte*>(piece), count}); !taken) {
            return taken;
        }
    }
    return got == size_ ? Result<void>{}
                        : failed(Fault::Refused, "backup: " + name_.substr(0, 120) + " is cut short");
}

Result<void> readTar(ByteSource& from, const std::function<Result<bool>(TarMember&)>& visit) {
    Source source{from};
    const std::unique_ptr<archive, FreeReader> tar(archive_read_new());
    archive_read_support_format_tar(tar.get());
    const auto refused = [&](const std::string& why) {
        return source.problem.message.empty() ? failed(Fault::Refused, "backup: " + why)
                                              : tl::unexpected<Problem>(source.problem);
    };
    if (archive_read_open(tar.get(), &source, nullptr, readFrom, nullptr) != ARCHIVE_OK) {
        return refused("cannot be read: " + said(tar.get()));
    }
    std::set<std::string> names;
    for (;;) {
        archive_entry* entry = nullptr;
        const int status = archive_read_next_header(tar.get(), &entry);
        if (status == ARCHIVE_EOF) {
            for (;;) { // to the stream's own end: a sealed one tells only there that nothing was cut off
                const auto rest = from.get(source.piece);
                if (!rest || *rest == 0) {
                    return rest ? Result<void>{} : tl::unexpected(rest.error());
                }
            }
        }
        if (status != ARCHIVE_OK) {
            return refused("is damaged or cut short: " + said(tar.get()));
        }
        const char* path = archive_entry_pathname(entry);
        const std::string name = path != nullptr ? path : "";
        if (archive_entry_filetype(entry) != AE_IFREG || archive_entry_hardlink(entry) != nullptr ||
            archive_entry_size_is_set(entry) == 0 || archive_entry_size(entry) < 0) {
            return refused("'" + name.substr(0, 120) + "' is not a plain file");
        }
        if (!names.insert(name).second) {
            return refused("the name '" + name.substr(0, 120) + "' occurs twice");
        }
        if (names.size() > mostBackupMembers) {
            return refused("has more members than any shop");
        }
        TarMember member(tar.get(), name, static_cast<std::uint64_t>(archive_entry_size(entry)));
        const auto more = visit(member);
        if (!more) {
            return source.problem.message.empty() ? tl::unexpected(more.error())
                                                  : tl::unexpected<Problem>(source.problem);
        }
        if (!*more) {
            return {};
        }
    }
}

} // namespace undercowl::store
