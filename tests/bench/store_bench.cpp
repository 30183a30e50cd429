// One confirmed entry against a bare SQLite insert of the same body with the same pragmas, in the same run on
// the same disk, turn and turn about; then what an entry costs in a job of 300 entries.
#include "core/journal/say.h"
#include "core/store/store.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

namespace {

using namespace undercowl;
using Clock = std::chrono::steady_clock;

double microseconds(const auto& work) {
    const auto begin = Clock::now();
    work();
    return std::chrono::duration<double, std::micro>(Clock::now() - begin).count();
}

struct Times {
    std::vector<double> all;

    [[nodiscard]] double at(double share) {
        std::sort(all.begin(), all.end());
        return all.at(static_cast<std::size_t>(share * static_cast<double>(all.size() - 1)));
    }
};

template<typename T>
T must(store::Result<T> result) {
    if (!result) {
        std::fprintf(stderr, "store_bench: %s\n", result.error().message.c_str());
        std::exit(1);
    }
    return std::move(*result);
}

void compare(store::Store& shop, SQLite::Database& bare, int entries) {
    const job::Id job = shop.newId();
    must(shop.append(journal::jobOpened(job, {})));
    SQLite::Statement insert(bare, "INSERT INTO entry (id, body) VALUES (?, ?)");
    Times ours;
    Times theirs;
    for (int i = 0; i < entries; ++i) {
        const auto draft = journal::findingNoted(
            job,
            {shop.newId(), "finding " + std::to_string(i), job::Severity::Note, "look again", false, {}, {}});
        ours.all.push_back(microseconds([&] { must(shop.append(draft)); }));
        const std::string id = shop.newId();
        theirs.all.push_back(microseconds([&] {
            insert.reset();
            insert.bind(1, id);
            insert.bind(2, draft.body);
            insert.exec();
        }));
    }
    std::printf("job of %4d entries: entry %.0f us, bare insert %.0f us, ratio %.2f (median); p95 %.2f\n",
                entries, ours.at(0.5), theirs.at(0.5), ours.at(0.5) / theirs.at(0.5),
                ours.at(0.95) / theirs.at(0.95));
}

} // namespace

int main(int argc, char** argv) {
    // The folder may be named: where it lies on a disk in memory a sync costs nothing and the ratio misleads.
    const std::filesystem::path parent = argc > 1 ? argv[1] : std::filesystem::current_path();
    const auto folder =
        parent / ("undercowl-bench-" + std::to_string(Clock::now().time_since_epoch().count()));
    {
        store::Store shop = must(store::Store::open(folder / "shop"));
        const job::Id mechanic = shop.newId();
        must(shop.append(journal::mechanicNamed({mechanic, "Ada"})));
        if (!shop.chooseMechanic(mechanic)) {
            return 1;
        }
        SQLite::Database bare((folder / "bare.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        bare.exec("PRAGMA journal_mode = WAL");
        bare.exec("PRAGMA synchronous = FULL");
        bare.exec("PRAGMA foreign_keys = ON");
        bare.exec("PRAGMA secure_delete = ON");
        bare.exec("PRAGMA cell_size_check = ON");
        bare.exec("CREATE TABLE entry (id TEXT PRIMARY KEY, body TEXT NOT NULL)");
        compare(shop, bare, 30);
        compare(shop, bare, 300);
        compare(shop, bare, 1000);
    }
    std::filesystem::remove_all(folder);
    return 0;
}
