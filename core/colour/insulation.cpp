#include "core/colour/insulation.h"

#include <algorithm>
#include <cctype>
#include <cstddef>

namespace undercowl::colour {
namespace {

struct Name {
    std::string_view code;
    std::string_view word;
};

// In the order of the enumeration.
constexpr std::array<Name, allInsulations.size()> names{{{"BK", "black"},
                                                         {"BN", "brown"},
                                                         {"RD", "red"},
                                                         {"OG", "orange"},
                                                         {"YE", "yellow"},
                                                         {"GN", "green"},
                                                         {"BU", "blue"},
                                                         {"VT", "violet"},
                                                         {"GY", "grey"},
                                                         {"WH", "white"},
                                                         {"PK", "pink"},
                                                         {"TQ", "turquoise"},
                                                         {"LBU", "light blue"},
                                                         {"LGN", "light green"}}};

const Name& nameOf(Insulation colour) {
    return names.at(static_cast<std::size_t>(colour));
}

bool sameLetters(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](unsigned char x, unsigned char y) { return std::toupper(x) == std::toupper(y); });
}

} // namespace

std::string_view code(Insulation colour) {
    return nameOf(colour).code;
}

std::string_view englishWord(Insulation colour) {
    return nameOf(colour).word;
}

std::optional<Insulation> insulationFromCode(std::string_view text) {
    for (const Insulation colour : allInsulations)
        if (sameLetters(code(colour), text))
            return colour;
    return std::nullopt;
}

std::string code(const WireColour& colour) {
    std::string text{code(colour.base)};
    if (colour.tracer)
        text.append("/").append(code(*colour.tracer));
    return text;
}

std::string englishWords(const WireColour& colour) {
    std::string text{englishWord(colour.base)};
    if (colour.tracer)
        text.append(" with ").append(englishWord(*colour.tracer)).append(" tracer");
    return text;
}

std::optional<WireColour> wireColourFromCode(std::string_view text) {
    const auto joint = text.find_first_of("/-");
    const auto base = insulationFromCode(text.substr(0, joint));
    if (!base)
        return std::nullopt;
    if (joint == std::string_view::npos)
        return WireColour{*base, std::nullopt};
    const auto tracer = insulationFromCode(text.substr(joint + 1));
    if (!tracer)
        return std::nullopt;
    return WireColour{*base, tracer};
}

} // namespace undercowl::colour
