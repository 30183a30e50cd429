#include "core/store/hashbeside.h"

#include "core/store/files.h"

namespace undercowl::store {
namespace {

constexpr std::uint64_t worthAThread = std::uint64_t{1} << 22U; // bytes; below it hashing takes milliseconds
constexpr std::size_t mostWaiting = 16;                         // pieces of 256 KiB, as files are read

} // namespace

HashBeside::~HashBeside() {
    end();
}

void HashBeside::add(std::span<const std::byte> bytes) {
    given_ += bytes.size();
    if (given_ < worthAThread) {
        hash_.add(text(bytes));
        return;
    }
    if (!worker_.joinable()) {
        worker_ = std::thread([this] { work(); });
    }
    std::vector<std::byte> piece(bytes.begin(), bytes.end());
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return waiting_.size() < mostWaiting; });
    waiting_.push_back(std::move(piece));
    changed_.notify_all();
}

std::string HashBeside::finish() {
    end();
    return hash_.finish();
}

void HashBeside::end() {
    if (!worker_.joinable()) {
        return;
    }
    {
        const std::scoped_lock lock(mutex_);
        over_ = true;
        changed_.notify_all();
    }
    worker_.join();
}

void HashBeside::work() {
    for (;;) {
        std::vector<std::byte> piece;
        {
            std::unique_lock lock(mutex_);
            changed_.wait(lock, [this] { return over_ || !waiting_.empty(); });
            if (waiting_.empty()) {
                return;
            }
            piece = std::move(waiting_.front());
            waiting_.pop_front();
            changed_.notify_all();
        }
        hash_.add(text(piece));
    }
}

} // namespace undercowl::store
