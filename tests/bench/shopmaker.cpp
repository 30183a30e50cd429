#include "tests/bench/shopmaker.h"

#include "core/journal/digest.h"
#include "core/journal/say.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <random>
#include <string>

namespace undercowl::bench {
namespace {

using journal::Draft;
using journal::Entry;

constexpr std::array makes{"Marrowin", "Kesselby", "Tarnholt", "Ostrel", "Vandrey"};
constexpr std::array models{"Tern 125", "Dart 50", "Heron 80", "Finch 100", "Rail 150"};
constexpr std::array places{"front brake", "rear wheel", "carburettor", "switch cluster", "tail lamp",
                            "exhaust",     "fork",       "generator",   "footboard",      "fuel tap"};
constexpr std::array states{"cracked", "seized",   "worn",       "loose",
                            "leaking", "corroded", "wrong part", "missing"};
constexpr std::array people{"Ilse", "Noor", "Jory", "Pavo", "Mirre", "Tamsin", "Odo", "Wenna"};

template<typename T>
T must(store::Result<T> result) {
    if (!result) {
        std::fprintf(stderr, "bench: %s\n", result.error().message.c_str());
        std::exit(1);
    }
    return std::move(*result);
}

// Entries of a device of its own, sealed and chained as the store does it, for merging: appending a million
// of them one by one would be a million syncs.
class Maker {
public:
    explicit Maker(std::filesystem::path media) : media_(std::move(media)) {}

    void say(const Draft& draft) {
        Entry entry;
        entry.id = journal::newId(now_);
        entry.device = device_;
        entry.number = ++number_;
        entry.clock = {now_ += 60'000, 0};
        entry.kind = draft.kind;
        entry.stream = draft.stream;
        entry.subject = draft.subject;
        entry.mechanic = mechanic_;
        entry.body = draft.body;
        entry.previous = previous_;
        seal(entry);
        previous_ = entry.hash;
        entries.push_back(std::move(entry));
    }

    job::Id opened(std::size_t number) {
        const job::Id job = id();
        const job::Id machine = id();
        const job::Id owner = id();
        say(journal::machineDescribed({machine,
                                       pick(makes),
                                       pick(models),
                                       1970 + static_cast<int>(random_() % 35),
                                       "FR" + std::to_string(100'000 + number),
                                       {}}));
        say(journal::ownerDescribed({owner,
                                     pick(people) + " " + pick(makes) + std::to_string(number),
                                     "555 0" + std::to_string(number),
                                     {},
                                     "Mill Lane " + std::to_string(number)}));
        journal::JobPatch patch;
        patch.number = "20" + std::to_string(10 + number / 700) + "-" + std::to_string(number % 700);
        patch.machine = machine;
        patch.owner = owner;
        patch.reason = "stood for " + std::to_string(1 + random_() % 20) + " years, " + pick(places) + " " +
                       pick(states);
        say(journal::jobOpened(job, patch));
        return job;
    }

    job::Id job(std::size_t number, bool open) {
        const job::Id job = opened(number);
        const job::Id task = id();
        say(journal::taskNamed(job, {task, pick(places), false, {}, 0}));
        for (int i = 0; i < 10; ++i) {
            work(job, task, i);
        }
        say(journal::recheckDue(job, {id(), "spoke tension", job::TypedValue{"200", "km"}, 30, {}}));
        if (!open) {
            say(journal::jobHandedOver(job, "runs"));
        }
        return job;
    }

    job::Id strip(std::size_t steps, std::string_view photo) {
        const job::Id job = opened(1);
        const job::Id task = id();
        say(journal::taskNamed(job, {task, pick(places), false, {}, 0}));
        for (std::size_t i = 0; i < steps; ++i) {
            job::StripStep step;
            step.id = id();
            step.task = task;
            step.title =
                "take off the " + pick(places) + (i % 5 == 0 ? " with its bracket and both clips" : "");
            step.hardware = {{4, "screw", "M6", "20 mm", job::TypedValue{"9.3", "N.m"}}};
            step.bag = std::to_string(i + 1);
            say(journal::stepStripped(job, step));
            // What follows the end of the picture is no part of it, but makes another file.
            say(journal::photoTaken(job, {id(),
                                          kept(std::string(photo) + std::to_string(i)),
                                          job::PhotoPurpose::Strip,
                                          step.id,
                                          {},
                                          4000,
                                          3000,
                                          now_,
                                          {}}));
        }
        return job;
    }

    std::vector<Entry> entries;

private:
    // Nine or ten entries: a finding with its photo, a step, wires, a reading, a part, a memo, the step back.
    void work(const job::Id& job, const job::Id& task, int i) {
        const std::string what = pick(places);
        const job::Id finding = id();
        say(journal::findingNoted(
            job, {finding, what + " " + pick(states), job::Severity::Soon, "look again", false, {}, {}}));
        say(journal::photoTaken(
            job, {id(), photo(), job::PhotoPurpose::Finding, finding, "the " + what, 4000, 3000, now_, {}}));
        job::StripStep step;
        step.id = id();
        step.task = task;
        step.title = "take off the " + what;
        step.hardware = {{4, "screw", "M6", "20 mm", job::TypedValue{"9.3", "N.m"}}};
        step.bag = std::to_string(i + 1);
        say(journal::stepStripped(job, step));
        wiring::Gathering gathering;
        gathering.id = id();
        gathering.title = what + " connector";
        gathering.places = 4;
        gathering.step = step.id;
        say(journal::gatheringDescribed(job, gathering));
        wiring::PlaceAnswer answer;
        answer.wire.colour = *colour::wireColourFromCode(i % 2 == 0 ? "GN/YE" : "BN");
        answer.wire.function = "to the " + what;
        answer.how = wiring::HowKnown::Typed;
        answer.probability = 1;
        for (int place = 1; place <= 2; ++place) {
            say(journal::wireAnswered(job, gathering.id, {wiring::Half::Loom, place, 1},
                                      wiring::Answer::AsFound, answer));
        }
        job::Reading reading;
        reading.id = id();
        reading.what = what + ", torque";
        reading.value = {std::to_string(8 + random_() % 4) + ".2", "N.m"};
        say(journal::readingTaken(job, reading));
        say(journal::partStated(job, {id(),
                                      what + " seal",
                                      "PN-" + std::to_string(random_() % 9999),
                                      job::PartState::Fitted,
                                      {},
                                      finding,
                                      {}}));
        say(journal::findingSettled(job, finding, "replaced"));
        say(journal::stepRefitted(job, step.id));
    }

    // A small file of its own content; not synced, since it is only to be read.
    std::string photo() {
        std::string content = "\xFF\xD8 photo " + id();
        while (content.size() < 2'000) {
            content += std::to_string(random_());
        }
        return kept(content);
    }

    [[nodiscard]] std::string kept(const std::string& content) const {
        const std::string name = journal::blake2b256(content) + ".jpg";
        std::ofstream(media_ / name, std::ios::binary) << content;
        return name;
    }

    job::Id id() { return journal::newId(now_); }
    template<std::size_t n>
    std::string pick(const std::array<const char*, n>& from) {
        return from[random_() % n];
    }

    std::filesystem::path media_;
    std::mt19937 random_{26}; // NOLINT(cert-msc51-cpp): the same shop each time
    job::TimeMs now_{1'262'304'000'000};
    job::Id device_ = journal::newId(now_);
    job::Id mechanic_ = journal::newId(now_);
    std::uint64_t number_{};
    std::string previous_;

public:
    void nameMechanic() { say(journal::mechanicNamed({mechanic_, "Ada"})); }
    [[nodiscard]] const job::Id& mechanic() const { return mechanic_; }
};

} // namespace

MadeShop makeShop(const std::filesystem::path& folder, std::size_t jobs) {
    constexpr std::size_t atOnce = 100;
    MadeShop made{folder, jobs, 0, {}};
    auto shop = must(store::Store::open(folder));
    Maker maker(folder / "media");
    maker.nameMechanic();
    for (std::size_t i = 0; i < jobs; ++i) {
        const bool open = i + 30 >= jobs; // thirty are worked on, whatever the size of the shop
        auto job = maker.job(i, open);
        if (open) {
            made.open.push_back(std::move(job));
        }
        if (maker.entries.size() > atOnce * 100 || i + 1 == jobs) {
            made.entries += must(shop.merge(maker.entries));
            maker.entries.clear();
        }
    }
    if (!shop.chooseMechanic(maker.mechanic())) {
        std::exit(1);
    }
    return made;
}

MadeShop makeLongStrip(const std::filesystem::path& folder, std::size_t steps, std::string_view photo) {
    MadeShop made{folder, 1, 0, {}};
    auto shop = must(store::Store::open(folder));
    Maker maker(folder / "media");
    maker.nameMechanic();
    made.open.push_back(maker.strip(steps, photo));
    made.entries = must(shop.merge(maker.entries));
    if (!shop.chooseMechanic(maker.mechanic())) {
        std::exit(1);
    }
    return made;
}

} // namespace undercowl::bench
