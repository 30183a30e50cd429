// A scripted piece of work on one job, with a list of its own of what the store confirmed, as a screen would
// say 'saved': the tests hold the store to that list, whatever happened to the disk or the program.
#pragma once

#include "tests/store/shop.h"

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace undercowl::store::test {

struct Confirmed {
    std::set<Id> entries;
    std::set<std::string> media;
    int draft{};      // number of the last draft that was kept
    int triedDraft{}; // of the last that was given
};

// Told of each thing at the moment at which it is confirmed: "E" and an entry, "M" and a media file, "D" and
// the number of a draft.
using Tell = std::function<void(char what, const std::string& name)>;
[[nodiscard]] Tell into(Confirmed& confirmed);

class Script {
public:
    Script(Store& store, Id job, Tell tell) : store_(store), job_(std::move(job)), tell_(std::move(tell)) {}

    // One action: a draft, a photo with its finding, a strip step, a gathering with wires, a reading, or a
    // memo in turn. Answers why it was refused.
    [[nodiscard]] std::optional<Problem> act(int turn);
    static constexpr int actions = 6;

private:
    [[nodiscard]] std::optional<Problem> say(std::span<const journal::Draft> drafts);
    [[nodiscard]] std::optional<Problem> photo(int turn);
    [[nodiscard]] std::optional<Problem> wiring(int turn);

    Store& store_;
    Id job_;
    Tell tell_;
};

// Makes a store with one open job in the folder, closed again. Answers the job.
[[nodiscard]] Id beginJob(const std::filesystem::path& folder);

// What is wrong with the store in the folder after all: it does not open, something confirmed is not there,
// something half said shows, the check finds a fault. Empty when nothing is.
[[nodiscard]] std::vector<std::string> losses(const std::filesystem::path& folder, const Id& job,
                                              const Confirmed& confirmed);

} // namespace undercowl::store::test
