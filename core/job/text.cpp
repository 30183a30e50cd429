#include "core/job/text.h"

#include <algorithm>
#include <cctype>

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

bool saysWord(std::string_view text, std::string_view word) {
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1))
        if (at == 0 || std::isalpha(static_cast<unsigned char>(text[at - 1])) == 0)
            return true;
    return false;
}

std::string listed(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& word : words)
        all += (all.empty() ? "" : ", ") + word;
    return all;
}

} // namespace undercowl::job
