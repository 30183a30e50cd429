// Bytes on their way into and out of one large file: a backup is written and read piece by piece.
#pragma once

#include "core/store/files.h"

#include <cstddef>
#include <filesystem>
#include <fstream>
#include <memory>
#include <span>
#include <vector>

namespace undercowl::store {

class ByteSink {
public:
    ByteSink() = default;
    ByteSink(const ByteSink&) = delete;
    ByteSink& operator=(const ByteSink&) = delete;
    virtual ~ByteSink() = default;

    virtual Result<void> put(std::span<const std::byte> bytes) = 0;
    // Everything is where it belongs when this returns; to be called once.
    virtual Result<void> end() = 0;
};

class ByteSource {
public:
    ByteSource() = default;
    ByteSource(const ByteSource&) = delete;
    ByteSource& operator=(const ByteSource&) = delete;
    virtual ~ByteSource() = default;

    // How many bytes were put into the span; 0 at the end.
    virtual Result<std::size_t> get(std::span<std::byte> into) = 0;
};

// A file that appears under its name when it is whole: written beside, synced, renamed. Nothing is left
// behind when end() was not reached.
class FileSink final : public ByteSink {
public:
    FileSink(std::filesystem::path file, std::shared_ptr<Files> files);
    ~FileSink() override;

    Result<void> put(std::span<const std::byte> bytes) override;
    Result<void> end() override;

private:
    Result<void> flush();

    std::filesystem::path file_;
    std::filesystem::path beside_;
    std::shared_ptr<Files> files_;
    std::unique_ptr<OutFile> out_;
    std::vector<std::byte> waiting_;
};

class FileSource final : public ByteSource {
public:
    // NotFound when there is no such file.
    [[nodiscard]] static Result<std::unique_ptr<FileSource>> open(const std::filesystem::path& file);
    Result<std::size_t> get(std::span<std::byte> into) override;

private:
    FileSource(std::ifstream in, std::filesystem::path file) : in_(std::move(in)), file_(std::move(file)) {}
    std::ifstream in_;
    std::filesystem::path file_;
};

} // namespace undercowl::store
