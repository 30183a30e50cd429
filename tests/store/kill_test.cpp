// A process that is killed at any moment: what it had confirmed is there, and nothing half said shows.
#include "tests/store/long.h"
#include "tests/store/script.h"

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

// Works until it is killed, and says on the pipe what the store confirmed: the list of what must be there is
// kept by the one who kills.
[[noreturn]] void work(const std::filesystem::path& folder, const Id& job, int first, int pipe) {
    if (auto store = Store::open(folder)) {
        Script script(*store, job, [pipe](char what, const std::string& name) {
            const std::string line = what + name + "\n"; // below PIPE_BUF: whole or not at all
            if (::write(pipe, line.data(), line.size()) != static_cast<ssize_t>(line.size())) {
                ::_exit(2);
            }
        });
        for (int turn = first; !script.act(turn); ++turn) {
        }
    }
    ::_exit(1);
}

void readInto(Confirmed& confirmed, int pipe) {
    std::string all;
    char piece[4096];
    for (ssize_t got = 0; (got = ::read(pipe, piece, sizeof piece)) > 0;) {
        all.append(piece, static_cast<std::size_t>(got));
    }
    const Tell tell = into(confirmed);
    for (std::size_t at = 0, end = 0; (end = all.find('\n', at)) != std::string::npos; at = end + 1) {
        tell(all[at], all.substr(at + 1, end - at - 1));
    }
}

} // namespace

TEST_CASE("what was confirmed before a kill is there after it") {
    const int kills = isLong() ? 500 : 40;
    constexpr int killsOfOneStore = 25; // so that checking it stays short
    std::mt19937 random(
        20261125); // NOLINT(cert-msc51-cpp): the same moments each time, as far as a clock goes
    std::optional<Folder> folder;
    Id job;
    Confirmed confirmed;
    std::size_t entries = 0;
    std::size_t media = 0;
    int survived = 0;
    int patience = 1; // on a busy machine, or under a sanitizer, nothing may be said within 40 ms
    std::size_t before = 0;
    for (int round = 0; round < kills; ++round) {
        INFO("round " << round);
        if (round % killsOfOneStore == 0) {
            entries += confirmed.entries.size();
            media += confirmed.media.size();
            confirmed = {};
            folder.emplace();
            job = beginJob(folder->path() / "shop");
        }
        int pipe[2];
        REQUIRE(::pipe(pipe) == 0);
        const pid_t child = ::fork();
        if (child == 0) {
            ::close(pipe[0]);
            work(folder->path() / "shop", job, confirmed.triedDraft + 1, pipe[1]);
        }
        ::close(pipe[1]);
        // From the opening of the store to the middle of its work.
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 40'000) * patience);
        ::kill(child, SIGKILL);
        int how = 0;
        ::waitpid(child, &how, 0);
        REQUIRE(WIFSIGNALED(how)); // it was still at work
        readInto(confirmed, pipe[0]);
        ::close(pipe[0]);
        const auto lost = losses(folder->path() / "shop", job, confirmed);
        if (round % 8 == 7) {
            const std::size_t now = entries + confirmed.entries.size();
            patience *= now == before ? 2 : 1;
            before = now;
        }
        survived += lost.empty() ? 1 : 0;
        CHECK(lost == std::vector<std::string>{});
    }
    entries += confirmed.entries.size();
    media += confirmed.media.size();
    WARN("survived " << survived << " of " << kills << " kills; " << entries << " entries and " << media
                     << " media files were confirmed, none lost");
    CHECK(survived == kills);
    CHECK(entries > 0);
}
