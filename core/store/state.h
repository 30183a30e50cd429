// What an open store holds. Only the store's own source files look here.
#pragma once

#include "core/store/media.h"
#include "core/store/projector.h"
#include "core/store/store.h"

#include <optional>
#include <set>

namespace undercowl::store {

struct Store::State {
    State(std::filesystem::path folderGiven, WallClock clockGiven, Database databaseGiven,
          std::shared_ptr<Files> filesGiven)
        : folder(std::move(folderGiven)), clock(std::move(clockGiven)), files(std::move(filesGiven)),
          database(std::move(databaseGiven)), media(folder / "media", files), projector(database) {}

    std::filesystem::path folder;
    WallClock clock;
    std::shared_ptr<Files> files;
    Database database;
    MediaFolder media;
    Projector projector;
    Id device;
    Id mechanic;
    Head head;             // of this device
    journal::Clock newest; // of any entry that this store has seen
    std::int64_t dataVersion{-1};
    std::string readOnly;            // why; empty for a store to be worked with
    std::vector<std::string> unread; // what openReadable() could not read

    // --- all of these throw SQLite::Exception
    // Reads device, mechanic, head and clock anew when another connection has committed since the last time.
    void refresh();
    void forget(); // after a rollback: nothing in memory is trusted
    [[nodiscard]] std::string value(std::string_view table, std::string_view name);
    void setValue(std::string_view table, std::string_view name, std::string_view text);
    void becomeNewDevice();
    void rebuildAll(const std::function<bool(std::size_t, std::size_t)>& progress);

    // Which of the incoming entries are new, and which bring a body that is missing here; Refused for what
    // does not fit.
    struct Merge {
        std::vector<journal::Entry> added;
        std::vector<journal::Entry> restored;
    };
    [[nodiscard]] Result<Merge> plan(std::span<const journal::Entry> entries);
};

// Runs the work in one write transaction, rolled back when it throws or answers a problem.
template<typename State, typename Work>
auto inTransaction(State& state, const Work& work) -> decltype(work()) {
    if (!state.readOnly.empty()) {
        return failed(Fault::CannotOpen, state.readOnly);
    }
    auto result = guarded([&]() -> decltype(work()) {
        SQLite::Transaction transaction(state.database.raw(), SQLite::TransactionBehavior::IMMEDIATE);
        state.refresh();
        auto done = work();
        if (done) {
            transaction.commit();
        }
        return done;
    });
    if (!result) {
        state.forget();
    }
    return result;
}

} // namespace undercowl::store
