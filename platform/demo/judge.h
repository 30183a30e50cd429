// Verdicts of the demo's readings, worked out by core/verdict like those of the app. Not for use outside this
// folder.
#pragma once

#include "core/job/model.h"

#include <tl/expected.hpp>

#include <string>
#include <string_view>

namespace undercowl::demo {

// Fills verdict and probability of a reading with a value, an uncertainty ("0.03 V (k = 2)") and limits.
// 'kind' is what is measured, "voltage". The error names the field that cannot be read.
[[nodiscard]] tl::expected<void, std::string> judge(job::Reading& reading, std::string_view kind);

} // namespace undercowl::demo
