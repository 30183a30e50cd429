// Vehicle identification numbers.
#pragma once

#include <optional>
#include <string_view>

namespace undercowl::trade {

// 49 CFR 565.15 tables III to V. Value of a letter or digit; nothing for I, O, Q and everything else.
[[nodiscard]] std::optional<int> vinValue(char c);
[[nodiscard]] int vinWeight(int position); // 1 to 17
// The weighted sum. Nothing unless there are 17 characters that all have a value.
[[nodiscard]] std::optional<int> vinSum(std::string_view number);
// First year of the 30-year cycle that the code of position 10 names. Nothing for U, Z, 0 and the rest.
[[nodiscard]] std::optional<int> vinYear(char code);

} // namespace undercowl::trade
