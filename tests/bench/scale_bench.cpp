// How the store behaves as a shop grows: shops of 100, 1,000 and 10,000 jobs against each other and against
// what SQLite and the system do alone. With a file as second argument, the page docs/performance.md is
// written to it.
//
// usage: bench_scale FOLDER [PAGE [LARGEST]]
#include "core/journal/say.h"
#include "core/store/backup.h"
#include "tests/bench/shopmaker.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sys/utsname.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <memory>
#include <string>
#include <thread>
#include <type_traits>

namespace {

using namespace undercowl;

double milliseconds(const std::function<void()>& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

double at(std::vector<double> times, double share) {
    std::sort(times.begin(), times.end());
    return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

template<typename T>
T must(store::Result<T> result) {
    if (!result) {
        std::fprintf(stderr, "bench_scale: %s\n", result.error().message.c_str());
        std::exit(1);
    }
    if constexpr (!std::is_void_v<T>) {
        return std::move(*result);
    }
}

struct Row {
    std::size_t jobs{};
    std::size_t entries{};
    double window{};    // ms to the app's first frame; 0 where the app is not built
    double open{};      // ms to open the store and list what is worked on
    double find{};      // ms, p95 of a search as one types
    double rawFind{};   // ms, p95 of the bare FTS5 query
    double job{};       // ms to open a job that was not in memory
    double next{};      // ms to say what is next
    double entry{};     // ms to save an entry, synced
    double bareEntry{}; // ms of a bare synced insert beside it
    double rebuild{};   // ms for each job
    double backup{};    // MB a second, written and read again
    double copy{};      // MB a second of copying the same files, synced
};

void run(const std::string& command) {
    if (std::system(command.c_str()) != 0) {
        std::fprintf(stderr, "bench_scale: this failed: %s\n", command.c_str());
        std::exit(1);
    }
}

double firstFrame(const std::filesystem::path& shop) {
#ifdef UNDERCOWL_SHOP_WINDOW
    return milliseconds([&] { run("exec '" UNDERCOWL_SHOP_WINDOW "' '" + shop.string() + "'"); });
#else
    (void)shop;
    return 0;
#endif
}

// What is typed letter by letter, and what it comes to for FTS5.
const std::array<std::pair<const char*, const char*>, 14> searches{
    {{"ta", "\"ta\"*"},
     {"tail", "\"tail\"*"},
     {"tail la", "\"tail\"* \"la\"*"},
     {"tail lamp", "\"tail\"* \"lamp\"*"},
     {"seized", "\"seized\"*"},
     {"wheel seiz", "\"wheel\"* \"seiz\"*"},
     {"FR1000", "\"FR1000\"*"},
     {"FR100012", "\"FR100012\"*"},
     {"ilse", "\"ilse\"*"},
     {"ilse ost", "\"ilse\"* \"ost\"*"},
     {"PN-77", "\"PN-77\"*"},
     {"heron", "\"heron\"*"},
     {"mill lane 7", "\"mill\"* \"lane\"* \"7\"*"},
     {"zeppelin", "\"zeppelin\"*"}}};

// A shop of one size, and what was measured in it.
struct Measured {
    explicit Measured(const std::filesystem::path& in, std::size_t jobs)
        : made(bench::makeShop(in / "shop", jobs)), store(must(store::Store::open(made.folder))),
          raw((made.folder / "shop.db").string(), SQLite::OPEN_READONLY),
          query(raw, "SELECT rowid FROM search WHERE search MATCH ? ORDER BY rank LIMIT 50"),
          other((in / "bare.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE) {
        row.jobs = jobs;
        row.entries = made.entries;
        other.exec(
            "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE entry (id TEXT PRIMARY KEY, "
            "body TEXT NOT NULL)");
    }

    bench::MadeShop made;
    store::Store store;
    SQLite::Database raw;
    SQLite::Statement query;
    SQLite::Database other;
    Row row;
    std::vector<double> window, open, find, rawFind, job, next, entry, bareEntry;
};

// Shops of all sizes take turns, so that whatever else the machine does meets them alike.
using Shops = std::vector<std::unique_ptr<Measured>>;

void measureOpening(Shops& shops) {
    for (int round = 0; round < 9; ++round) {
        for (auto& shop : shops) {
            shop->window.push_back(firstFrame(shop->made.folder));
            shop->open.push_back(milliseconds([&] {
                const auto opened = must(store::Store::open(shop->made.folder));
                (void)must(opened.jobs(30));
            }));
        }
    }
}

void measureFind(Shops& shops) {
    for (int round = 0; round < 11; ++round) {
        for (const auto& [words, match] : searches) {
            for (auto& shop : shops) {
                shop->find.push_back(milliseconds([&, w = words] { must(shop->store.find(w, 50)); }));
                shop->rawFind.push_back(milliseconds([&, m = match] {
                    shop->query.reset();
                    shop->query.bind(1, m);
                    while (shop->query.executeStep()) {
                        (void)shop->query.getColumn(0).getInt64();
                    }
                }));
            }
        }
    }
}

// One job of one shop: opened, asked what is next, written in.
void measureJob(Measured& shop, const job::Id& id) {
    constexpr int often = 50; // one answer takes too short a time for the clock
    job::Job job;
    shop.job.push_back(milliseconds([&] { job = must(shop.store.job(id)); }));
    shop.next.push_back(milliseconds([&] {
                            for (int i = 0; i < often; ++i) {
                                (void)job::standing(job);
                            }
                        }) /
                        often);
    const auto draft =
        journal::memoKept(id, {shop.store.newId(), {}, "owner wants the old hose back", {}, {}});
    shop.entry.push_back(milliseconds([&] { must(shop.store.append(draft)); }));
    shop.bareEntry.push_back(milliseconds([&] {
        SQLite::Statement insert(shop.other, "INSERT INTO entry VALUES (?, ?)");
        insert.bind(1, shop.store.newId());
        insert.bind(2, draft.body);
        insert.exec();
    }));
}

void measureJobs(Shops& shops) {
    for (int round = 0; round < 5; ++round) {
        for (std::size_t i = 0; i < shops.front()->made.open.size(); ++i) {
            for (auto& shop : shops) {
                measureJob(*shop, shop->made.open.at(i));
            }
        }
    }
}

void measureBackup(Measured& shop) {
    const auto parent = shop.made.folder.parent_path();
    std::uint64_t bytes = std::filesystem::file_size(shop.made.folder / "shop.db");
    for (const auto& file : std::filesystem::directory_iterator(shop.made.folder / "media")) {
        bytes += file.file_size();
    }
    const double megabytes = static_cast<double>(bytes) / 1e6;
    // The same files copied by the system, on the disk when it is over, and read again as the backup is. What
    // takes a fraction of a second varies, so it is done several times.
    const int rounds = megabytes < 500 ? 5 : 1;
    std::vector<double> copying;
    std::vector<double> backingUp;
    for (int i = 0; i < rounds; ++i) {
        copying.push_back(milliseconds([&] {
            const std::string copy = "'" + (parent / "copy").string() + "'";
            run("cp -r '" + shop.made.folder.string() + "' " + copy + " && sync " + copy + " && find " +
                copy + " -type f -exec cat {} + >/dev/null");
        }));
        std::filesystem::remove_all(parent / "copy");
        backingUp.push_back(
            milliseconds([&] { must(store::writeBackup(shop.store, parent / "whole.backup")); }));
        std::filesystem::remove(parent / "whole.backup");
    }
    shop.row.copy = 1000 * megabytes / at(copying, 0.5);
    shop.row.backup = 1000 * megabytes / at(backingUp, 0.5);
}

std::vector<Row> measure(const std::filesystem::path& folder, std::size_t largest) {
    Shops shops;
    for (std::size_t jobs = 100; jobs <= largest; jobs *= 10) {
        std::filesystem::create_directories(folder / std::to_string(jobs));
        shops.push_back(std::make_unique<Measured>(folder / std::to_string(jobs), jobs));
        std::fprintf(stderr, "%zu jobs made\n", jobs);
    }
    measureOpening(shops);
    measureFind(shops);
    measureJobs(shops);
    std::vector<Row> rows;
    for (auto& shop : shops) {
        Row& row = shop->row;
        row.window = at(shop->window, 0.5);
        row.open = at(shop->open, 0.5);
        row.find = at(shop->find, 0.95);
        row.rawFind = at(shop->rawFind, 0.95);
        row.job = at(shop->job, 0.5);
        row.next = at(shop->next, 0.5);
        row.entry = at(shop->entry, 0.5);
        row.bareEntry = at(shop->bareEntry, 0.5);
        row.rebuild = milliseconds([&] { must(shop->store.rebuild()); }) / static_cast<double>(row.jobs);
        measureBackup(*shop);
        std::fprintf(stderr, "%zu jobs measured\n", row.jobs);
        rows.push_back(row);
    }
    return rows;
}

// --- the page

std::string bar(double value, double most) {
    std::string bars;
    for (int i = 0; i < static_cast<int>(30 * value / most + 0.5); ++i) {
        bars += "█";
    }
    return bars;
}

struct Figure {
    const char* title;
    const char* unit;
    const char* bar;
    std::function<double(const Row&)> value;
    std::function<std::string(const std::vector<Row>&)> verdict;
};

std::string ratio(const char* of, double a, double b) {
    char text[160];
    std::snprintf(text, sizeof text, "%s: %.2f.", of, a / b);
    return text;
}

std::vector<Figure> figures() {
    const auto grows = [](const std::function<double(const Row&)>& value) {
        return [value](const std::vector<Row>& rows) {
            return ratio("Largest against smallest shop", value(rows.back()), value(rows.front()));
        };
    };
    std::vector<Figure> all;
    const auto add = [&](const char* title, const char* unit, const char* limit, double Row::*field) {
        const auto value = [field](const Row& row) { return row.*field; };
        all.push_back({title, unit, limit, value, grows(value)});
    };
    add("First frame of the app, from starting the process", "ms", "at most 1.3 times the smallest shop",
        &Row::window);
    add("Opening the store and listing what is worked on", "ms", "at most 1.3 times the smallest shop",
        &Row::open);
    all.push_back({"Search as one types, 95 of 100 searches", "ms",
                   "at most 1.5 times the bare FTS5 query, and under a frame (16.7 ms)",
                   [](const Row& row) { return row.find; },
                   [](const std::vector<Row>& rows) {
                       std::string text = "Against the bare query:";
                       for (const Row& row : rows) {
                           char one[40];
                           std::snprintf(one, sizeof one, " %.2f (bare %.2f ms)", row.find / row.rawFind,
                                         row.rawFind);
                           text += one;
                       }
                       return text + ".";
                   }});
    add("Opening a job", "ms", "at most 1.2 times the smallest shop", &Row::job);
    add("Saying what is next", "ms", "at most 1.2 times the smallest shop", &Row::next);
    all.push_back({"Saving an entry, on the disk", "ms", "at most 1.2 times the smallest shop",
                   [](const Row& row) { return row.entry; },
                   [](const std::vector<Row>& rows) {
                       return ratio("Largest against smallest shop", rows.back().entry, rows.front().entry) +
                              " " +
                              ratio("Against a bare synced insert in the largest", rows.back().entry,
                                    rows.back().bareEntry);
                   }});
    add("Rebuilding every table, for each job", "ms", "linear: the same for each job", &Row::rebuild);
    all.push_back({"Backup of the whole shop, written and read again", "MB/s",
                   "at least half of copying the files", [](const Row& row) { return row.backup; },
                   [](const std::vector<Row>& rows) {
                       std::string text = "Against copying the same files, synced and read again:";
                       for (const Row& row : rows) {
                           char one[40];
                           std::snprintf(one, sizeof one, " %.2f", row.backup / row.copy);
                           text += one;
                       }
                       return text + ".";
                   }});
    return all;
}

std::string page(const std::vector<Row>& rows) {
    utsname machine{};
    uname(&machine);
    const auto today =
        std::chrono::year_month_day(std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now()));
    char head[500];
    double load = 0;
    (void)getloadavg(&load, 1);
    std::snprintf(
        head, sizeof head,
        "# How it grows\n\nWritten by `bench_scale` (`tests/bench`) on %04d-%02u-%02u, %s, %u processors, "
        "load %.0f. Times are worth little from one machine to\nthe next; the ratios are what counts, and "
        "those "
        "little where the load was above the number of processors. The shops took turns, operation by "
        "operation. "
        "Every job has\n100 entries and ten photos; thirty are worked on, the others done.\n",
        static_cast<int>(today.year()), static_cast<unsigned>(today.month()),
        static_cast<unsigned>(today.day()), machine.machine, std::thread::hardware_concurrency(), load);
    std::string text = head;
    for (const Figure& figure : figures()) {
        double most = 0;
        for (const Row& row : rows) {
            most = std::max(most, figure.value(row));
        }
        if (most <= 0) {
            continue;
        }
        text += std::string("\n## ") + figure.title + "\n\n```\n";
        for (const Row& row : rows) {
            char line[120];
            std::snprintf(line, sizeof line, "%6zu jobs %8zu entries %10.3f %-4s ", row.jobs, row.entries,
                          figure.value(row), figure.unit);
            text += line + bar(figure.value(row), most) + "\n";
        }
        text += std::string("```\n\nBar: ") + figure.bar + ". " + figure.verdict(rows) + "\n";
    }
    return text;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2 || argc > 4) {
        std::fprintf(stderr, "usage: bench_scale FOLDER [PAGE [LARGEST]]\n");
        return 2;
    }
    const auto folder = std::filesystem::path(argv[1]) / "undercowl-scale-bench";
    const std::size_t largest = argc > 3 ? static_cast<std::size_t>(std::atoi(argv[3])) : 10'000;
    std::filesystem::remove_all(folder);
    const std::vector<Row> rows = measure(folder, largest);
    std::filesystem::remove_all(folder);
    if (argc > 2) {
        std::ofstream(argv[2]) << page(rows);
    }
    std::fputs(page(rows).c_str(), stdout);
    return 0;
}
