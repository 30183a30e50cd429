#include "core/job/text.h"

#include <algorithm>

namespace undercowl::job {
namespace {

constexpr std::string_view blanks = " \t\n\v\f\r";

char lower(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

} // namespace

std::string lowered(std::string_view text) {
    std::string small{text};
    std::transform(small.begin(), small.end(), small.begin(), lower);
    return small;
}

std::string folded(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    return first == std::string_view::npos
               ? std::string{}
               : lowered(text.substr(first, text.find_last_not_of(blanks) - first + 1));
}

} // namespace undercowl::job
