// Every single operation on the disk fails in turn, in every way, of the database and of the media alike.
#include "tests/store/faulty_disk.h"
#include "tests/store/long.h"
#include "tests/store/script.h"

#include <array>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

constexpr std::array names{
    "disk full", "input/output error",        "read-only disk", "short write", "failed sync",
    "power cut", "power cut with torn writes"};

bool isCut(Mishap mishap) {
    return mishap == Mishap::PowerCut || mishap == Mishap::PowerTorn;
}

std::filesystem::path parent() { // a disk in memory, where there is one: thousands of stores are made
    return std::filesystem::exists("/dev/shm") ? "/dev/shm" : std::filesystem::temp_directory_path();
}

class Trial {
public:
    Trial(const std::filesystem::path& pattern, const Id& job, unsigned seed)
        : shop_(folder_.path() / "shop"), job_(job), disk_(std::make_shared<FaultyDisk>(seed)) {
        if (!pattern.empty()) {
            std::filesystem::copy(pattern, shop_, std::filesystem::copy_options::recursive);
        }
    }

    // Opens, works, closes. The mishap comes when it comes; what was refused has to say why.
    void run(Mishap mishap, int operation, bool lasting) {
        disk_->failAt(operation, mishap, lasting);
        {
            auto store = Store::open(shop_, systemClock(), disk_);
            if (!store) {
                told(store.error());
                store = again(mishap);
            }
            for (int turn = 1; store && turn <= Script::actions; ++turn) {
                if (job_.empty()) {
                    begin(*store);
                } else if (const auto problem = Script(*store, job_, into(confirmed_)).act(turn)) {
                    told(*problem);
                    if (mishap == Mishap::DiskFull && problem->fault != Fault::DiskFull) {
                        wrong_.push_back("a full disk is told as: " + problem->message);
                    }
                }
            }
            if (store && !isCut(mishap)) { // there is room again: it goes on without being opened anew
                disk_->restart();
                for (int turn = 7; !job_.empty() && turn < 7 + Script::actions; ++turn) {
                    if (const auto problem = Script(*store, job_, into(confirmed_)).act(turn)) {
                        wrong_.push_back("does not go on: " + problem->message);
                    }
                }
            }
        }
        disk_->restart();
    }

    [[nodiscard]] bool happened() const { return disk_->happened(); }
    [[nodiscard]] std::vector<std::string> wrong() const {
        auto all = wrong_;
        const auto lost = losses(shop_, job_.empty() ? "none" : job_, confirmed_);
        all.insert(all.end(), lost.begin(), lost.end());
        return all;
    }

private:
    void told(const Problem& problem) {
        if (problem.message.empty()) {
            wrong_.emplace_back("something was refused without a word");
        }
    }
    Result<Store> again(Mishap mishap) {
        if (isCut(mishap)) {
            return failed(Fault::InputOutput, "the power is off");
        }
        disk_->restart();
        auto store = Store::open(shop_, systemClock(), disk_);
        if (!store) {
            wrong_.push_back("does not open although the disk is well again: " + store.error().message);
        }
        return store;
    }
    void begin(Store& store) {
        const Id mechanic = store.newId();
        const auto named = store.append(journal::mechanicNamed({mechanic, "Ada"}));
        if (!named) {
            told(named.error());
            return;
        }
        if (const auto chosen = store.chooseMechanic(mechanic); !chosen) {
            told(chosen.error());
            return;
        }
        const Id job = store.newId();
        if (const auto opened = store.append(journal::jobOpened(job, {}))) {
            job_ = job;
            confirmed_.entries.insert(opened->id);
        }
    }

    Folder folder_{parent()};
    std::filesystem::path shop_;
    Id job_;
    std::shared_ptr<FaultyDisk> disk_;
    Confirmed confirmed_;
    std::vector<std::string> wrong_;
};

// Every operation, or of many a few that differ from mishap to mishap.
struct Count {
    int injected{};
    int survived{};
};

void survive(const std::filesystem::path& pattern, const Id& job, Mishap mishap, bool lasting, int stride,
             Count& count) {
    for (int n = static_cast<int>(mishap) % stride;; n += stride) {
        INFO(names.at(static_cast<std::size_t>(mishap))
             << (lasting ? ", lasting," : "") << " at operation " << n);
        Trial trial(pattern, job, static_cast<unsigned>(n));
        trial.run(mishap, n, lasting);
        if (!trial.happened()) {
            return;
        }
        const auto wrong = trial.wrong();
        ++count.injected;
        count.survived += wrong.empty() ? 1 : 0;
        CHECK(wrong == std::vector<std::string>{});
    }
}

void surviveAll(const std::filesystem::path& pattern, const Id& job, int stride, const char* what) {
    Count count;
    for (int m = 0; m < mishaps; ++m) {
        const auto mishap = static_cast<Mishap>(m);
        survive(pattern, job, mishap, false, isLong() ? 1 : stride, count);
        if (!isCut(mishap) && mishap != Mishap::ShortWrite) {
            survive(pattern, job, mishap, true, isLong() ? 1 : stride + 2, count);
        }
    }
    WARN(what << ": survived " << count.survived << " of " << count.injected << " injected faults");
    CHECK(count.survived == count.injected);
    CHECK(count.injected > 50);
}

} // namespace

TEST_CASE("work on a job survives a fault at every operation on the disk") {
    Folder folder(parent());
    const Id job = beginJob(folder.path() / "shop");
    surviveAll(folder.path() / "shop", job, 17, "work on a job");
}

TEST_CASE("the making of a store survives a fault at every operation on the disk") {
    surviveAll({}, {}, 13, "a new store");
}
