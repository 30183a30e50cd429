#include "core/store/stream.h"

#include "core/journal/entry.h"

#include <algorithm>

namespace undercowl::store {
namespace {

constexpr std::size_t pieceSize = std::size_t{1} << 18U;

} // namespace

FileSink::FileSink(std::filesystem::path file, std::shared_ptr<Files> files)
    : file_(std::move(file)), beside_(file_.parent_path() / (".incoming-" + journal::newId(0))),
      files_(std::move(files)) {}

FileSink::~FileSink() {
    if (out_) { // not finished
        out_.reset();
        (void)files_->remove(beside_);
    }
}

Result<void> FileSink::put(std::span<const std::byte> bytes) {
    if (!out_) {
        auto created = files_->create(beside_);
        if (!created) {
            return tl::unexpected(created.error());
        }
        out_ = std::move(*created);
        waiting_.reserve(2 * pieceSize);
    }
    waiting_.insert(waiting_.end(), bytes.begin(), bytes.end());
    return waiting_.size() < pieceSize ? Result<void>{} : flush();
}

Result<void> FileSink::flush() {
    auto written = writeAll(*out_, waiting_);
    waiting_.clear();
    return written;
}

Result<void> FileSink::end() {
    Result<void> done = put({});
    if (done) {
        done = flush();
    }
    if (done) {
        done = out_->sync();
    }
    if (done) {
        done = out_->close();
    }
    if (done) {
        done = files_->rename(beside_, file_);
    }
    if (!done) {
        return done;
    }
    out_.reset();
    const auto folder = file_.parent_path();
    return files_->syncFolder(folder.empty() ? "." : folder);
}

Result<std::unique_ptr<FileSource>> FileSource::open(const std::filesystem::path& file) {
    std::error_code error;
    std::ifstream in(file, std::ios::binary);
    if (!std::filesystem::is_regular_file(file, error) || !in) {
        return failed(Fault::NotFound, "there is no file " + file.string() + " that can be read");
    }
    return std::unique_ptr<FileSource>(new FileSource(std::move(in), file));
}

Result<std::size_t> FileSource::get(std::span<std::byte> into) {
    in_.read(reinterpret_cast<char*>(into.data()), static_cast<std::streamsize>(into.size()));
    if (in_.bad()) {
        return failed(Fault::InputOutput,
                      "cannot read " + file_.string() + ". Check the disk that it lies on.");
    }
    return static_cast<std::size_t>(in_.gcount());
}

} // namespace undercowl::store
