// A shop in a folder of its own, with a clock that the test winds.
#pragma once

#include "core/journal/say.h"
#include "core/store/files.h"
#include "core/store/store.h"

#include <catch2/catch.hpp>

#include <cstddef>
#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::store::test {

// A new empty folder; removed at the end.
class Folder {
public:
    explicit Folder(const std::filesystem::path& parent = std::filesystem::temp_directory_path());
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder();
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

[[nodiscard]] std::span<const std::byte> bytes(std::string_view text);

[[nodiscard]] std::string slurp(const std::filesystem::path& file); // empty when there is none

// Fails the test with the problem's message.
template<typename T>
T must(Result<T> result) {
    if (!result) {
        FAIL(result.error().message);
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*result);
    }
}

struct Shop {
    explicit Shop(std::shared_ptr<Files> files = posixFiles());

    Folder folder;
    job::TimeMs time{1'700'000'000'000};
    Store store;
    Id mechanic;

    [[nodiscard]] WallClock clock();
    [[nodiscard]] Store another(); // a second store on the same folder
    journal::Entry say(const journal::Draft& draft);

    // A job with machine, owner, photo, findings, task, steps, wiring, part, reading, memo, recheck.
    Id wholeJob(const std::string& number);
    Id smallJob(const std::string& number);
    [[nodiscard]] std::string photo(std::string_view content); // media name
};

// Everything that a screen could show of the store.
[[nodiscard]] std::string everything(const Store& store);

} // namespace undercowl::store::test
