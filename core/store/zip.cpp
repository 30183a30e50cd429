#include "core/store/zip.h"

#include "core/journal/entry.h"

#include <archive.h>
#include <archive_entry.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <vector>

namespace undercowl::store {

struct ZipWriter::Sink {
    std::unique_ptr<OutFile> file;
    Problem problem{Fault::InputOutput, {}};
    bool dropped{};
};

namespace {

la_ssize_t writeTo(archive* zip, void* client, const void* data, size_t size) {
    auto& sink = *static_cast<ZipWriter::Sink*>(client);
    if (sink.dropped) {
        return static_cast<la_ssize_t>(size);
    }
    const auto written = writeAll(*sink.file, {static_cast<const std::byte*>(data), size});
    if (!written) {
        sink.problem = written.error();
        archive_set_error(zip, EIO, "%s", sink.problem.message.c_str());
        return -1;
    }
    return static_cast<la_ssize_t>(size);
}

tl::unexpected<Problem> refused(std::string message) {
    return failed(Fault::Refused, std::move(message));
}

std::string said(archive* zip) {
    const char* text = archive_error_string(zip);
    return text != nullptr ? text : "no reason given";
}

struct FreeReader {
    void operator()(archive* zip) const { archive_read_free(zip); }
};
struct FreeEntry {
    void operator()(archive_entry* entry) const { archive_entry_free(entry); }
};

} // namespace

ZipWriter::ZipWriter(std::filesystem::path file, std::shared_ptr<Files> files)
    : file_(std::move(file)), files_(std::move(files)) {}

ZipWriter::~ZipWriter() {
    if (archive_ != nullptr) {
        // Closing writes the rest of the ZIP, which nobody wants. archive_write_fail() would avoid that but
        // leaks libarchive's buffer.
        sink_->dropped = true;
        archive_write_free(archive_);
    }
    if (sink_) { // not finished
        sink_.reset();
        (void)files_->remove(beside_);
    }
}

Problem ZipWriter::problem(const std::string& what) const {
    if (sink_ && !sink_->problem.message.empty()) {
        return sink_->problem;
    }
    return {Fault::InputOutput, "archive: cannot write " + what + ": " + said(archive_)};
}

Result<void> ZipWriter::begin() {
    beside_ = file_.parent_path() / (".incoming-" + journal::newId(0));
    auto created = files_->create(beside_);
    if (!created) {
        return tl::unexpected(created.error());
    }
    sink_ = std::make_unique<Sink>();
    sink_->file = std::move(*created);
    archive_ = archive_write_new();
    if (archive_write_set_format_zip(archive_) != ARCHIVE_OK ||
        archive_write_set_bytes_in_last_block(archive_, 1) != ARCHIVE_OK ||
        archive_write_open(archive_, sink_.get(), nullptr, writeTo, nullptr) != ARCHIVE_OK) {
        return tl::unexpected(problem(file_.string()));
    }
    return {};
}

Result<void> ZipWriter::add(const std::string& name, std::uint64_t size, bool compress,
                            std::int64_t timeSeconds, const std::function<Result<void>(const Take&)>& give) {
    if (archive_ == nullptr) {
        if (auto begun = begin(); !begun) {
            return begun;
        }
    }
    if (compress) {
        archive_write_zip_set_compression_deflate(archive_);
    } else {
        archive_write_zip_set_compression_store(archive_);
    }
    const std::unique_ptr<archive_entry, FreeEntry> entry(archive_entry_new());
    archive_entry_set_pathname(entry.get(), name.c_str());
    archive_entry_set_size(entry.get(), static_cast<la_int64_t>(size));
    archive_entry_set_filetype(entry.get(), AE_IFREG);
    archive_entry_set_perm(entry.get(), 0644);
    archive_entry_set_mtime(entry.get(), timeSeconds, 0);
    if (archive_write_header(archive_, entry.get()) != ARCHIVE_OK) {
        return tl::unexpected(problem(name));
    }
    std::uint64_t given = 0;
    auto done = give([&](std::span<const std::byte> piece) -> Result<void> {
        given += piece.size();
        while (!piece.empty()) {
            const la_ssize_t taken = archive_write_data(archive_, piece.data(), piece.size());
            if (taken <= 0) {
                return tl::unexpected(problem(name));
            }
            piece = piece.subspan(static_cast<std::size_t>(taken));
        }
        return {};
    });
    if (!done) {
        return done;
    }
    if (given != size) {
        return failed(Fault::InputOutput,
                      "archive: " + name + " changed its size while it was read; try again");
    }
    return {};
}

Result<void> ZipWriter::finish() {
    if (archive_ == nullptr || archive_write_close(archive_) != ARCHIVE_OK) {
        return tl::unexpected(problem(file_.string()));
    }
    for (const auto& step : {sink_->file->sync(), sink_->file->close(), files_->rename(beside_, file_)}) {
        if (!step) {
            return step;
        }
    }
    sink_.reset();
    archive_write_free(archive_);
    archive_ = nullptr;
    const auto folder = file_.parent_path();
    return files_->syncFolder(folder.empty() ? "." : folder);
}

Result<void> ZipMember::read(std::uint64_t most,
                             const std::function<void(std::span<const std::byte>)>& take) {
    const std::string where = "archive: " + name_ + ": ";
    if (declared_ > most) {
        return refused(where + "declares " + std::to_string(declared_) + " bytes, at most " +
                       std::to_string(most) + " are taken");
    }
    std::vector<std::byte> piece(std::size_t{1} << 17U);
    std::uint64_t got = 0;
    for (;;) {
        const la_ssize_t count = archive_read_data(archive_, piece.data(), piece.size());
        if (count == 0) {
            break;
        }
        if (count < 0) {
            return refused(where + "cannot be unpacked: " + said(archive_) +
                           ". The archive is damaged; ask for it again.");
        }
        const auto size = static_cast<std::uint64_t>(count);
        got += size;
        if (got > declared_ || size > left_) {
            return refused(where + "unpacks to more than it may");
        }
        left_ -= size;
        take(std::span(piece).first(static_cast<std::size_t>(count)));
    }
    if (got != declared_) {
        return refused(where + "is cut short: " + std::to_string(got) + " of " + std::to_string(declared_) +
                       " bytes");
    }
    return {};
}

Result<void> readZip(const std::filesystem::path& file,
                     const std::function<Result<void>(ZipMember&)>& visit) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) {
        return failed(Fault::NotFound, "archive: there is no file " + file.string());
    }
    const std::unique_ptr<archive, FreeReader> zip(archive_read_new());
    // The seekable reader goes by the directory at the end of the file: without it the file is cut short.
    archive_read_support_format_zip_seekable(zip.get());
    if (archive_read_open_filename(zip.get(), file.c_str(), std::size_t{1} << 16U) != ARCHIVE_OK) {
        return refused("archive: " + file.string() + " is not a whole ZIP file: " + said(zip.get()));
    }
    std::set<std::string> names;
    std::uint64_t left = largestUnpacked;
    for (;;) {
        archive_entry* entry = nullptr;
        const int status = archive_read_next_header(zip.get(), &entry);
        if (status == ARCHIVE_EOF) {
            return {};
        }
        if (status != ARCHIVE_OK) {
            return refused("archive: " + file.string() + " is not a whole ZIP file: " + said(zip.get()));
        }
        const char* path = archive_entry_pathname(entry);
        const std::string name = path != nullptr ? path : "";
        if (archive_entry_filetype(entry) != AE_IFREG || archive_entry_is_encrypted(entry) != 0 ||
            archive_entry_size_is_set(entry) == 0 || archive_entry_size(entry) < 0) {
            return refused("archive: '" + name + "' is not a plain file of known size");
        }
        if (!names.insert(name).second) {
            return refused("archive: the name '" + name + "' occurs twice");
        }
        if (names.size() > mostMembers) {
            return refused("archive: has more than " + std::to_string(mostMembers) + " members");
        }
        ZipMember member(zip.get(), name, static_cast<std::uint64_t>(archive_entry_size(entry)), left);
        if (auto done = visit(member); !done) {
            return done;
        }
    }
}

} // namespace undercowl::store
