#include "core/units/spelling.h"

#include <array>

namespace undercowl::units {
namespace {

struct Replacement {
    std::string_view from;
    std::string_view to;
};

constexpr std::array unitReplacements{
    Replacement{"\u00b7", "."},     Replacement{"\u22c5", "."},   Replacement{"\u2022", "."},
    Replacement{"\u00b2", "2"},     Replacement{"\u00b3", "3"},   Replacement{"\u00b0C", "degC"},
    Replacement{"\u00b0F", "degF"}, Replacement{"\u00b0", "deg"}, Replacement{"\u00b5", "u"},
    Replacement{"\u03bc", "u"},     Replacement{"\u03a9", "ohm"}, Replacement{"\u2126", "ohm"},
    Replacement{"\u2033", "\""},    Replacement{"\u201d", "\""},  Replacement{"*", "."},
    Replacement{"-", "."},          Replacement{"^", ""},         Replacement{" ", ""},
    Replacement{"\t", ""},
};

constexpr std::array blankReplacements{
    Replacement{"\u00a0", " "},    Replacement{"\u2009", " "},    Replacement{"\u202f", " "},
    Replacement{"\t", " "},        Replacement{"\u2212", "-"},    Replacement{"\u2044", "/"},
    Replacement{"\u00bd", " 1/2"}, Replacement{"\u00bc", " 1/4"}, Replacement{"\u00be", " 3/4"},
};

template<std::size_t N>
std::string replaced(std::string_view text, const std::array<Replacement, N>& replacements) {
    std::string result;
    while (!text.empty()) {
        bool hit = false;
        for (const Replacement& replacement : replacements) {
            if (!text.starts_with(replacement.from))
                continue;
            result += replacement.to;
            text.remove_prefix(replacement.from.size());
            hit = true;
            break;
        }
        if (!hit) {
            result += text.front();
            text.remove_prefix(1);
        }
    }
    return result;
}

} // namespace

std::string plainBlanks(std::string_view text) {
    const std::string plain = replaced(text, blankReplacements);
    const auto first = plain.find_first_not_of(' ');
    if (first == std::string::npos)
        return {};
    return plain.substr(first, plain.find_last_not_of(' ') - first + 1);
}

std::string compactSpelling(std::string_view text) {
    return replaced(plainBlanks(text), unitReplacements);
}

std::string foldedSpelling(std::string_view compact) {
    std::string folded{compact};
    for (char& letter : folded)
        if (letter >= 'A' && letter <= 'Z')
            letter = static_cast<char>(letter - 'A' + 'a');
    return folded;
}

} // namespace undercowl::units
