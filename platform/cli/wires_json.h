// Readings as JSON and as lines of text, in the shapes that scripts rely on.
#pragma once

#include "core/sight/compare.h"
#include "core/sight/reader.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace undercowl::platform {

[[nodiscard]] nlohmann::json toJson(const colour::WireColour& wire);
[[nodiscard]] nlohmann::json tapToJson(const sight::WireReading& reading);
[[nodiscard]] nlohmann::json crossingToJson(const sight::WireReading& reading);
[[nodiscard]] nlohmann::json toJson(const sight::Comparison& comparison);
[[nodiscard]] nlohmann::json toJson(const sight::Proposal& proposal);

// "GY/RD grey with red tracer, sure" or "not sure: BN or RD: no white in view: lay a sheet of paper beside
// it".
[[nodiscard]] std::string toText(const sight::WireReading& reading);

} // namespace undercowl::platform
