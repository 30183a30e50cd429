// A process that is killed at any moment: what it had confirmed is there, and nothing half said shows.
#include "tests/store/shop.h"

#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <random>
#include <thread>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

// Takes photos and notes findings about them until it is killed; writes each entry's id to the pipe, as the
// screen would say 'saved', once append has returned.
[[noreturn]] void work(const std::filesystem::path& folder, const Id& job, int pipe) {
    auto store = Store::open(folder);
    for (int i = 0; store; ++i) {
        const auto media = store->keepMedia(bytes("photo " + std::to_string(i) + store->newId()), "jpg");
        if (!media) {
            break;
        }
        const Id finding = store->newId();
        const std::vector<journal::Draft> drafts{
            journal::findingNoted(job, {finding, "finding " + std::to_string(i), {}, {}, false, {}, {}}),
            journal::photoTaken(
                job, {store->newId(), media->name, job::PhotoPurpose::Finding, finding, "", 4, 3, 0, {}})};
        const auto entries = store->append(drafts);
        if (!entries) {
            break;
        }
        for (const auto& entry : *entries) {
            if (::write(pipe, entry.id.data(), entry.id.size()) != static_cast<ssize_t>(entry.id.size())) {
                break;
            }
        }
    }
    ::_exit(1);
}

std::vector<Id> confirmed(int pipe) {
    std::string all;
    char piece[4096];
    for (ssize_t got = 0; (got = ::read(pipe, piece, sizeof piece)) > 0;) {
        all.append(piece, static_cast<std::size_t>(got));
    }
    std::vector<Id> ids;
    for (std::size_t at = 0; at + 36 <= all.size(); at += 36) {
        ids.push_back(all.substr(at, 36));
    }
    return ids;
}

} // namespace

TEST_CASE("what was confirmed before a kill is there after it") {
    constexpr int kills = 25;
    std::mt19937 random(
        20261125); // NOLINT(cert-msc51-cpp): the same moments each time, as far as a clock goes
    Folder folder;
    const auto path = folder.path() / "shop";
    Id job;
    {
        Store store = must(Store::open(path));
        const Id mechanic = store.newId();
        must(store.append(journal::mechanicNamed({mechanic, "Ada"})));
        must(store.chooseMechanic(mechanic));
        job = store.newId();
        must(store.append(journal::jobOpened(job, {})));
    }
    std::size_t said = 0;
    // On a busy machine the first rounds may end before anything was said: later ones wait longer.
    for (int round = 0; round < kills || (said == 0 && round < 5 * kills); ++round) {
        INFO("round " << round);
        int pipe[2];
        REQUIRE(::pipe(pipe) == 0);
        const pid_t child = ::fork();
        if (child == 0) {
            ::close(pipe[0]);
            work(path, job, pipe[1]);
        }
        ::close(pipe[1]);
        std::this_thread::sleep_for(std::chrono::microseconds(2'000 + random() % 40'000) *
                                    (1 + round / kills));
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        const auto ids = confirmed(pipe[0]);
        ::close(pipe[0]);
        said += ids.size();

        Store store = must(Store::open(path));
        const auto entries = must(store.entries(job));
        for (const Id& id : ids) {
            REQUIRE(std::any_of(entries.begin(), entries.end(),
                                [&](const auto& entry) { return entry.id == id; }));
        }
        const auto known = must(store.job(job));
        REQUIRE(known.unreadable.empty());
        REQUIRE(known.photos.size() == known.findings.size()); // both were said at once
        REQUIRE(must(store.check()).faults == std::vector<std::string>{});
    }
    WARN("killed " << kills << " times or more; " << said << " confirmed entries, none lost");
    CHECK(said > 0);
}
