#include "core/store/media.h"

#include "core/journal/digest.h"

#include <algorithm>
#include <array>

namespace undercowl::store {
namespace {

constexpr std::size_t hashDigits = 64;
constexpr std::array<std::string_view, 3> suffixes{"jpg", "png", "wav"};

} // namespace

bool isMediaSuffix(std::string_view suffix) {
    return std::find(suffixes.begin(), suffixes.end(), suffix) != suffixes.end();
}

bool isMediaName(std::string_view name) {
    return name.size() > hashDigits + 1 && name[hashDigits] == '.' &&
           name.substr(0, hashDigits).find_first_not_of("0123456789abcdef") == std::string_view::npos &&
           isMediaSuffix(name.substr(hashDigits + 1));
}

// What is being written lies in a folder of its own: listing it is quick however many photos there are.
MediaFolder::MediaFolder(std::filesystem::path folder, std::shared_ptr<Files> files)
    : folder_(std::move(folder)), incoming_(folder_.parent_path() / incomingFolder),
      files_(std::move(files)) {}

Result<void> MediaFolder::prepare() {
    for (const auto& folder : {folder_, incoming_}) {
        if (auto made = files_->makeFolder(folder); !made) {
            return made;
        }
    }
    const auto all = files_->list(incoming_);
    if (!all) {
        return tl::unexpected(all.error());
    }
    for (const std::string& name : *all) {
        // Not being able to remove it (a disk that may only be read) keeps nobody from working.
        (void)files_->remove(incoming_ / name);
    }
    return {};
}

Result<void> MediaFolder::writeBeside(std::span<const std::byte> bytes, const std::filesystem::path& beside) {
    auto file = files_->create(beside);
    if (!file) {
        return tl::unexpected(file.error());
    }
    Result<void> done = writeAll(**file, bytes);
    if (done) {
        done = (*file)->sync();
    }
    if (done) {
        done = (*file)->close();
    }
    if (!done) {
        file->reset();
        (void)files_->remove(beside); // else the next opening does it
    }
    return done;
}

bool MediaFolder::isWhole(const std::string& name) const {
    const auto size = files_->size(folder_ / name);
    return size && *size && !problem(name);
}

Result<std::string> MediaFolder::keep(std::span<const std::byte> bytes, std::string_view suffix,
                                      const std::string& uuid) {
    if (!isMediaSuffix(suffix)) {
        return failed(Fault::Refused,
                      "media: the suffix '" + std::string(suffix) + "' is none of jpg, png, wav");
    }
    if (bytes.empty() || bytes.size() > largestMedia) {
        return failed(Fault::Refused, "media: a file must have between 1 byte and 256 MiB, this one has " +
                                          std::to_string(bytes.size()) + " bytes");
    }
    const std::string name = journal::blake2b256(text(bytes)) + "." + std::string(suffix);
    const auto beside = incoming_ / uuid;
    for (int attempt = 1; !isWhole(name); ++attempt) { // one that has rotted is written anew
        if (auto written = writeBeside(bytes, beside); !written) {
            return tl::unexpected(written.error());
        }
        const auto renamed = files_->rename(beside, folder_ / name);
        if (renamed) {
            break;
        }
        if (renamed.error().fault != Fault::NotFound || attempt == 2) {
            (void)files_->remove(beside);
            return tl::unexpected(renamed.error());
        }
    }
    // Also when the file was there: whoever wrote it may have failed at just this.
    if (auto synced = files_->syncFolder(folder_); !synced) {
        return tl::unexpected(synced.error());
    }
    return name;
}

Result<std::filesystem::path> MediaFolder::find(std::string_view name) const {
    if (!isMediaName(name)) {
        return failed(Fault::Refused, "media: '" + std::string(name.substr(0, 100)) +
                                          "' is not the name of a media file (64 hex digits and a suffix)");
    }
    auto file = folder_ / name;
    const auto size = files_->size(file);
    if (!size) {
        return tl::unexpected(size.error());
    }
    if (!*size) {
        return failed(Fault::NotFound, "media: the file " + file.string() +
                                           " is missing. Put it back from a backup or an archive.");
    }
    return file;
}

std::optional<std::string> MediaFolder::problem(const std::string& name) const {
    journal::Blake2b256 hash;
    const auto read =
        files_->read(folder_ / name, [&hash](std::span<const std::byte> piece) { hash.add(text(piece)); });
    if (!read) {
        return read.error().message;
    }
    if (hash.finish() != name.substr(0, hashDigits)) {
        return "media file " + name +
               ": its content does not fit its name. Put it back from a backup or an "
               "archive.";
    }
    return std::nullopt;
}

Result<std::vector<std::string>> MediaFolder::names() const {
    auto all = files_->list(folder_);
    if (all) {
        std::erase_if(*all, [](const std::string& name) { return name.starts_with('.'); });
        std::sort(all->begin(), all->end());
    }
    return all;
}

} // namespace undercowl::store
