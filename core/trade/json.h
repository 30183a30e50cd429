// Declarations and outcomes as JSON, for scripts.
#pragma once

#include "core/trade/registry.h"

#include <nlohmann/json.hpp>

namespace undercowl::trade {

// {"value": 9.4, "unit": "N.m"}
[[nodiscard]] nlohmann::ordered_json toJson(const units::Quantity& quantity);

// {"name", "results": {key: {"value", "unit", "text"}}, "verdict", "working", "sources", "cautions"}.
// "verdict" is null where none is given; where a measurement was judged "probability", "accept_from",
// "accept_to" and "uncertainty" stand beside it.
[[nodiscard]] nlohmann::ordered_json toJson(const Declaration& declaration, const Result& result);

// {"error": {"field", "given", "reason", "possible", "message"}}
[[nodiscard]] nlohmann::ordered_json toJson(const Problem& problem);

// Everything that a form needs.
[[nodiscard]] nlohmann::ordered_json toJson(const Declaration& declaration);

// Adds to OBJECT what a verdict says: "verdict", "probability", "accept_from", "accept_to", "uncertainty".
void addVerdict(nlohmann::ordered_json& object, const verdict::Verdict& verdict);

} // namespace undercowl::trade
