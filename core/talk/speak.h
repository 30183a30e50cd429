// What was meant, said back: the sentence that the grammar would take for the same intent.
#pragma once

#include "core/talk/intent.h"

#include <string>

namespace undercowl::talk {

// "torque twenty five newton metres", "bag seven", "grey with red tracer blade six point three stop lamp".
[[nodiscard]] std::string spoken(const Intent& intent);

// "twelve point six volts"; one of a unit is said in the singular, "one volt".
[[nodiscard]] std::string spoken(const job::TypedValue& value);

// "blade six point three"; empty for an unknown one.
[[nodiscard]] std::string spoken(const wiring::Terminal& terminal);

// Text as typed, with numbers and units as they are said: "M5 x 16 mm" gives "M five by sixteen millimetres".
[[nodiscard]] std::string spokenText(std::string_view text);

} // namespace undercowl::talk
