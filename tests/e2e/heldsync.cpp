#include "tests/e2e/heldsync.h"

#include <sqlite3.h>

#include <algorithm>
#include <condition_variable>
#include <list>
#include <mutex>

namespace undercowl::e2e {

namespace {

struct Gate {
    std::mutex mutex;
    std::condition_variable moved;
    bool closed{};
    int waiting{};

    void pass() {
        std::unique_lock lock(mutex);
        ++waiting;
        moved.wait(lock, [this] { return !closed; });
        --waiting;
    }
};

Gate gate;
sqlite3_vfs* real = nullptr;
sqlite3_vfs gated;

// Files that are locked and those that are not have different methods; each kind is copied once.
struct Methods {
    sqlite3_io_methods gated{}; // first: a file points to it
    const sqlite3_io_methods* real{};
};
std::list<Methods> kinds;

int gatedSync(sqlite3_file* file, int flags) {
    gate.pass();
    return reinterpret_cast<const Methods*>(file->pMethods)->real->xSync(file, flags);
}

int gatedOpen(sqlite3_vfs* /*gated*/, sqlite3_filename name, sqlite3_file* file, int flags, int* opened) {
    const int result = real->xOpen(real, name, file, flags, opened);
    if (result != SQLITE_OK || file->pMethods == nullptr)
        return result;
    const std::scoped_lock lock(gate.mutex);
    auto kind = std::ranges::find(kinds, file->pMethods, &Methods::real);
    if (kind == kinds.end()) {
        kind = kinds.insert(kinds.end(), {*file->pMethods, file->pMethods});
        kind->gated.xSync = gatedSync;
    }
    file->pMethods = &kind->gated;
    return result;
}

} // namespace

void placeSyncGate() {
    if (real != nullptr)
        return;
    real = sqlite3_vfs_find(nullptr);
    gated = *real;
    gated.zName = "gated";
    gated.pNext = nullptr;
    gated.xOpen = gatedOpen;
    sqlite3_vfs_register(&gated, 1);
}

HeldSync::HeldSync() {
    const std::scoped_lock lock(gate.mutex);
    gate.closed = true;
}

HeldSync::~HeldSync() {
    const std::scoped_lock lock(gate.mutex);
    gate.closed = false;
    gate.moved.notify_all();
}

bool HeldSync::waits() {
    const std::scoped_lock lock(gate.mutex);
    return gate.closed && gate.waiting > 0;
}

} // namespace undercowl::e2e
