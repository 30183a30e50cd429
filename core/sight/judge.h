// From a straightened strip to a posterior over base and tracer. Only core/sight includes this.
#pragma once

#include "core/sight/networks.h"
#include "core/sight/reading.h"

#include <functional>
#include <vector>

namespace undercowl::sight {

// 'views' as from straighten(); 'further' gives what straightenFurther() does, and is asked only when it
// matters. Fills candidates, sure and doubts. 'widthPx' is in pixels of the photo, 'strength' how surely the
// tube is a wire, 0 to 1.
void judge(const std::vector<Strip>& views, const std::function<std::vector<Strip>()>& further,
           double widthPx, double strength, const LightCodes& light, const White& white,
           WireReading& reading);

} // namespace undercowl::sight
