// Hoses, vents and control cables among the strip steps: what is read back on refit by where it runs and
// ends.
#pragma once

#include "core/job/refit.h"

#include <string_view>
#include <vector>

namespace undercowl::job {

// By the words of a step's title, in the trade's words of five languages ("petrol hose off", "Gaszug
// aushaengen"). Common words, no source; what they miss is a line all the same once its ends were written
// down.
[[nodiscard]] bool isHose(std::string_view title); // hose, pipe, vent
[[nodiscard]] bool isCable(std::string_view title);

// A hose, vent or cable: its title says so, or where its ends sit was written down.
[[nodiscard]] bool isLine(const StripStep& step);

// Where it runs or where its ends sit was written down.
[[nodiscard]] bool isDescribed(const StripStep& step);

// A photo of it was taken before it came off: one of its step that is not of refitting.
[[nodiscard]] bool photographed(const Job& job, const StripStep& step);

// In the order of refitting, those that are on again too: what lies over a hose hides it, so that it is read
// back in that order.
[[nodiscard]] std::vector<RefitStep> linesOf(const Job& job);

} // namespace undercowl::job
