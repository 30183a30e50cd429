#include "core/store/state.h"

#include <chrono>
#include <system_error>

namespace undercowl::store {
namespace {

using std::filesystem::path;

bool holdsSomething(const path& folder) {
    std::error_code error;
    return std::filesystem::exists(folder, error) && !std::filesystem::is_empty(folder, error);
}

// A folder with other things in it, or with media or copies whose database is gone, is not silently made a
// new store. An empty database counts as gone: that is what a file system that was cut off may leave of a
// whole one.
Result<void> mayCreate(const path& folder) {
    std::error_code error;
    const auto bytes = std::filesystem::file_size(folder / "shop.db", error);
    if (!error && bytes > 0) {
        return {};
    }
    const bool emptied = !error;
    if (holdsSomething(folder / "media") || holdsSomething(folder / "backups") ||
        (!emptied && std::filesystem::exists(folder / "shop.db-wal", error))) {
        return failed(Fault::Damaged,
                      "the store in " + folder.string() +
                          (emptied ? " has an empty shop.db" : " has lost its shop.db") +
                          ", but photos or copies of it are there. Nothing was changed. Bring "
                          "what can be read into a new place with 'undercowlctl store salvage "
                          "--to NEWFOLDER', and name a backup with --from if there is one.");
    }
    if (emptied) { // the making of it was cut off
        return {};
    }
    for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end;
         at.increment(error)) {
        const std::string name = at->path().filename().string();
        if (!name.starts_with('.') && name != "media" && name != "lost+found") {
            return failed(Fault::CannotOpen, folder.string() + " holds no store but other things, such as '" +
                                                 name + "'. Name an empty folder or a new one.");
        }
    }
    return {};
}

// An empty file is an empty database. Its name is on the medium before SQLite puts a log beside it: a log
// whose database a cut has taken would look like a shop that was lost.
Result<void> makeDatabase(const path& folder, Files& files) {
    const auto there = files.size(folder / "shop.db");
    if (!there || there->value_or(0) > 0) {
        return there ? Result<void>{} : tl::unexpected(there.error());
    }
    if (!*there) {
        auto file = files.create(folder / "shop.db");
        const Result<void> done = file ? (*file)->close() : tl::unexpected(file.error());
        if (!done) {
            return done;
        }
    }
    return files.syncFolder(folder); // also of a file that an attempt before this one left empty
}

Problem asOpening(Problem problem) {
    if (problem.fault == Fault::NotFound || problem.fault == Fault::InputOutput) {
        problem.fault = Fault::CannotOpen;
    }
    return problem;
}

} // namespace

WallClock systemClock() {
    return [] {
        return std::chrono::duration_cast<std::chrono::milliseconds>(
                   std::chrono::system_clock::now().time_since_epoch())
            .count();
    };
}

std::string Store::State::value(std::string_view table, std::string_view name) {
    Using statement(database.prepared("SELECT value FROM " + std::string(table) + " WHERE name = ?"));
    statement->bind(1, std::string(name));
    return statement->executeStep() ? statement->getColumn(0).getString() : std::string{};
}

void Store::State::setValue(std::string_view table, std::string_view name, std::string_view text) {
    Using statement(database.prepared("INSERT INTO " + std::string(table) +
                                      " (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = "
                                      "excluded.value"));
    statement->bind(1, std::string(name));
    statement->bind(2, std::string(text));
    statement->exec();
}

void Store::State::becomeNewDevice() {
    device = journal::newId(clock());
    setValue("device_state", "device", device);
    head = {};
}

void Store::State::forget() {
    dataVersion = -1;
    projector.forget();
}

void Store::State::refresh() {
    Using statement(database.prepared("PRAGMA data_version"));
    statement->executeStep();
    const std::int64_t version = statement->getColumn(0).getInt64();
    if (version == dataVersion) {
        return;
    }
    projector.forget();
    device = value("device_state", "device");
    mechanic = value("device_state", "mechanic");
    head = headOf(database, device);
    // Entries of this device are always later than what was merged before them.
    newest = head.clock;
    Using merged(database.prepared("SELECT value FROM device_state WHERE name = 'merged_ms'"));
    if (merged->executeStep()) {
        const journal::Clock other{
            merged->getColumn(0).getInt64(),
            static_cast<std::uint32_t>(std::stoul(value("device_state", "merged_counter")))};
        newest = std::max(newest, other);
    }
    dataVersion = version;
}

Result<Store> Store::open(const std::filesystem::path& folder, WallClock clock) {
    return open(folder, std::move(clock), posixFiles());
}

Result<Store> Store::open(const std::filesystem::path& folder, WallClock clock,
                          std::shared_ptr<Files> files) {
    if (auto may = mayCreate(folder); !may) {
        return tl::unexpected(may.error());
    }
    if (auto made = files->makeFolder(folder); !made) {
        return tl::unexpected(asOpening(made.error()));
    }
    if (auto made = makeDatabase(folder, *files); !made) {
        return tl::unexpected(asOpening(made.error()));
    }
    auto database = Database::open(folder / "shop.db", migrations(), files->vfs());
    if (!database) {
        return tl::unexpected(database.error());
    }
    auto state = std::make_unique<State>(folder, std::move(clock), std::move(*database), std::move(files));
    if (auto prepared = state->media.prepare(); !prepared) {
        return tl::unexpected(asOpening(prepared.error()));
    }
    const auto ready = inTransaction(*state, [&]() -> Result<void> {
        if (state->device.empty()) {
            state->becomeNewDevice();
        }
        if (state->value("device_state", "projection") != std::to_string(projectionVersion)) {
            state->rebuildAll({});
        }
        return {};
    });
    if (!ready) {
        return tl::unexpected(ready.error());
    }
    return Store(std::move(state));
}

Store::Store(std::unique_ptr<State> state) : state_(std::move(state)) {}
Store::~Store() = default;
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;

} // namespace undercowl::store
