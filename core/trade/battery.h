// Lead-acid batteries.
#pragma once

namespace undercowl::trade {

// A hydrometer reading brought to 80 F (26.7 degC): 0.004 for each 10 F, battery-maker
// temperature-compensation table.
[[nodiscard]] double correctedGravity(double reading, double celsius);

} // namespace undercowl::trade
