// BLAKE2b-256 of a long stream, taken on a thread of its own: hashing a large database costs as much time as
// reading and writing it.
#pragma once

#include "core/journal/digest.h"

#include <condition_variable>
#include <cstddef>
#include <cstdint>
#include <deque>
#include <mutex>
#include <span>
#include <string>
#include <thread>
#include <vector>

namespace undercowl::store {

// Used by one thread. What is short is hashed at once; memory stays at a few megabytes however long it is.
class HashBeside {
public:
    HashBeside() = default;
    HashBeside(const HashBeside&) = delete;
    HashBeside& operator=(const HashBeside&) = delete;
    ~HashBeside();

    // Waits while the other thread lags far behind.
    void add(std::span<const std::byte> bytes);
    // 64 hex digits; to be called once, with nothing added after it.
    [[nodiscard]] std::string finish();

private:
    void work();
    void end();

    journal::Blake2b256 hash_; // the worker's, once there is one
    std::uint64_t given_{};
    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<std::vector<std::byte>> waiting_;
    bool over_{};
    std::thread worker_;
};

} // namespace undercowl::store
