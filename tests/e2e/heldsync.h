// Holds the database back where it waits for the disk: SQLite's own file system with a gate before each sync.
#pragma once

namespace undercowl::e2e {

// Puts the gate in place, open, for databases that are opened from now on. Once for the program.
void placeSyncGate();

// While one lives no sync returns; those that wait go on when it ends.
class HeldSync {
public:
    HeldSync();
    ~HeldSync();
    HeldSync(const HeldSync&) = delete;
    HeldSync& operator=(const HeldSync&) = delete;
    HeldSync(HeldSync&&) = delete;
    HeldSync& operator=(HeldSync&&) = delete;

    [[nodiscard]] static bool waits(); // a sync stands at the gate
};

} // namespace undercowl::e2e
