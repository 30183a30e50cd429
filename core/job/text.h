// How typed words are compared. ASCII letters only: other letters stand for themselves.
#pragma once

#include <string>
#include <string_view>

namespace undercowl::job {

[[nodiscard]] std::string lowered(std::string_view text);

// Lowered, and without the blanks around it: what two people type for the same name.
[[nodiscard]] std::string folded(std::string_view text);

} // namespace undercowl::job
