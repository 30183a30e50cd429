// Air in a closed tyre of constant volume.
#pragma once

namespace undercowl::trade {

// Gauge pressure in kPa after a change of temperature (degC) and of ambient pressure (kPa absolute): ideal
// gas law, p2 = (p1 + ambient1) T2/T1 - ambient2.
[[nodiscard]] double shiftedGauge(double gauge, double ambient1, double celsius1, double celsius2,
                                  double ambient2);

} // namespace undercowl::trade
