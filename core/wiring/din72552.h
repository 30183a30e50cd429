// Terminal designations by DIN 72552-2:1971, with the plug-in relay practice for 87 and 87a. Only those are
// listed whose meaning was read in a published copy.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace undercowl::wiring {

struct Designation {
    std::string_view number;
    std::string_view meaning; // English
};

[[nodiscard]] std::span<const Designation> din72552();
[[nodiscard]] std::optional<std::string_view> din72552Meaning(std::string_view number);

} // namespace undercowl::wiring
