// Tables of tyre markings.
#pragma once

#include <optional>
#include <string_view>

namespace undercowl::trade {

// Kilograms for load index 30 to 80 (UNECE R75, ISO 5751-1). Nothing outside that table.
[[nodiscard]] std::optional<double> loadOfIndex(int index);
// Kilometres per hour (UNECE R75 and R30). Nothing for a letter without a fixed speed.
[[nodiscard]] std::optional<double> speedOfSymbol(char symbol);

} // namespace undercowl::trade
