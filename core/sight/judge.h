// From a straightened strip to a posterior over base and tracer. Only core/sight includes this.
#pragma once

#include "core/sight/networks.h"
#include "core/sight/reading.h"

#include <functional>
#include <vector>

namespace undercowl::sight {

// A wire as it can be looked at. Each view costs some milliseconds, so they are made when they matter.
struct Views {
    std::function<Strip(double share)> atTap;    // as from straighten()
    std::function<std::vector<Strip>()> further; // as from straightenFurther()
};

// Fills candidates, sure and doubts. 'widthPx' is in pixels of the photo, 'strength' how surely the tube is a
// wire, 0 to 1.
void judge(const Views& views, double widthPx, double strength, const LightCodes& light, const White& white,
           WireReading& reading);

} // namespace undercowl::sight
