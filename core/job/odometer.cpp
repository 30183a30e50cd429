#include "core/job/odometer.h"

#include <algorithm>

namespace undercowl::job {

std::optional<std::string> odometerDoubt(const units::Typed& typed) {
    const auto mark = typed.text.find_first_of(".,");
    if (mark == std::string::npos || typed.text.size() - mark - 1 <= 1)
        return std::nullopt;
    std::string whole = typed.text;
    whole.erase(mark, 1);
    return "\"" + typed.text +
           "\" has more than one digit behind the mark, and an odometer has at most one: type " + whole +
           " if that is meant, or " + typed.text.substr(0, mark + 2);
}

} // namespace undercowl::job
