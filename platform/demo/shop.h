// The demo shop: a small shop in a harbour town with machines in different states, told by the data files in
// assets/demo. Nothing in it is real.
#pragma once

#include "core/store/store.h"
#include "platform/demo/wiring.h"

#include <filesystem>
#include <string>

namespace undercowl::demo {

// Where the demo's data and photos lie: beside the installed program, else where it was built.
[[nodiscard]] std::filesystem::path builtInAssets();

struct Shop {
    job::Id job;        // the job that the demo follows
    std::string number; // of that job
    job::Id gathering;  // its connector
    job::Id step;       // the strip step that unplugs it
    bool made{};        // false: it was there already
};

// Makes the demo shop in the folder, or finds the one that was made there before; work done in it since is
// left alone. A making that was cut short is gone on with. The followed job's wiring is read from 'wiring'
// (usually wiringOf(assets)) by core/sight. Refused: a folder that holds another shop; data files and photos
// that cannot be read, with the file named.
[[nodiscard]] store::Result<Shop> makeShop(const std::filesystem::path& folder,
                                           const std::filesystem::path& assets, const WiringPlan& wiring);

// keepMap and keepChecks of wiring.h for the job that the demo follows.
[[nodiscard]] store::Result<void> keepMap(store::Store& store, const Shop& shop, const WiringPlan& plan,
                                          const Sighted& before);
[[nodiscard]] store::Result<void> keepChecks(store::Store& store, const Shop& shop, const WiringPlan& plan,
                                             const Sighted& after, const sight::Comparison& comparison);

} // namespace undercowl::demo
