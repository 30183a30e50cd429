// The followed job's connector: read from the photo before, kept as its map, compared with the photo after.
#pragma once

#include "core/sight/compare.h"
#include "core/sight/reader.h"
#include "core/store/store.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace undercowl::demo {

struct Stroke {
    std::filesystem::path photo;
    sight::Polyline along; // across the wires, from place 1 on; pixels of the photo as it is shown
    std::optional<sight::Card> card;
};

struct WiringPlan {
    std::string title;
    wiring::Side seenFrom{};
    std::string latch;
    std::vector<std::string> functions; // of place 1, 2 ...
    std::vector<std::string> din;
    Stroke before;
    Stroke after;
};

// From wiring.json in the folder; its photos are named relative to it.
[[nodiscard]] store::Result<WiringPlan> wiringOf(const std::filesystem::path& assets);

// A photo and what the reader says of the wires along its stroke.
struct Sighted {
    sight::Photo photo;
    std::vector<sight::WireReading> wires;
};

[[nodiscard]] store::Result<Sighted> sighted(const Stroke& stroke);

// Keeps the photo and says what was read of it, as the job's wiring: the gathering, and an answer for each
// wire that the reader is sure of. One that it is not sure of is no answer: it becomes a finding that names
// the choices, for the mechanic to look at. What is in the job already is not said again; answers for places
// that no longer hold are taken back. 'ids' gives the ids of the photo, the gathering and the findings by
// name.
using IdFor = std::function<job::Id(const std::string& name)>;
[[nodiscard]] store::Result<void> keepMap(store::Store& store, const job::Id& job, const job::Id& step,
                                          const WiringPlan& plan, const Sighted& before, const IdFor& ids);

// Says for each place whether the photo after matches: what differs, and, when something does, what does not.
// Nothing when the comparison could not tell.
[[nodiscard]] store::Result<void> keepChecks(store::Store& store, const job::Id& job,
                                             const job::Id& gathering, const WiringPlan& plan,
                                             const Sighted& after, const sight::Comparison& comparison,
                                             const IdFor& ids);

} // namespace undercowl::demo
