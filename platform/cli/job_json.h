// Jobs and what belongs to them as JSON. Codes are those of the core; times are ISO 8601 in UTC.
#pragma once

#include "core/job/refit.h"
#include "core/job/standing.h"
#include "core/store/store.h"

#include <nlohmann/json.hpp>

#include <string>

namespace undercowl::platform {

using OrderedJson = nlohmann::ordered_json;

[[nodiscard]] std::string isoTime(job::TimeMs time); // "2026-11-25T10:20:30Z"
[[nodiscard]] std::string inWords(const job::TypedValue& value);

[[nodiscard]] OrderedJson toJson(const store::JobLine& line);
[[nodiscard]] OrderedJson toJson(const job::Standing& standing);
[[nodiscard]] OrderedJson toJson(const job::StripStep& step);
[[nodiscard]] OrderedJson toJson(const wiring::Gathering& gathering);
[[nodiscard]] OrderedJson toJson(const job::Job& job, const job::Machine& machine, const job::Owner& owner);

} // namespace undercowl::platform
