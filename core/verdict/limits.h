// What a reading is held against, and how far that can be trusted.
#pragma once

#include "core/units/quantity.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace undercowl::verdict {

// Most trusted first: the machine's own manual wins over everything.
enum class Trust : std::uint8_t { Manual, ShopRecord, Standard, WorkedOutHere };

struct LimitSource {
    Trust trust = Trust::WorkedOutHere;
    std::string reference; // "page 7-12", "job 2024-031", "49 CFR 571.119 S6.4"

    [[nodiscard]] std::string text() const; // "manual, page 7-12"
};

[[nodiscard]] std::string_view englishName(Trust trust);

// One-sided or two-sided; a side may be missing, but not both.
struct Limits {
    std::optional<units::Quantity> low;
    std::optional<units::Quantity> high;
    LimitSource source;
};

// The limits of the most trusted source; of several equal ones the first. Nothing for none.
[[nodiscard]] const Limits* mostTrusted(std::span<const Limits> limits);

} // namespace undercowl::verdict
