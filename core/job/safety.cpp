#include "core/job/safety.h"

#include "core/job/text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>
#include <vector>

namespace undercowl::job {
namespace {

constexpr std::array<std::string_view, 10> holding{"brake",     "caliper", "master cylinder", "wheel",
                                                   "axle",      "fork",    "steering",        "handlebar",
                                                   "swing arm", "shock"};
// The last ones are those of German, Italian, French and Spanish that core/job/tradewords.cpp does not know.
// The later ones are those of other languages that core/job/tradewords.cpp does not know.
constexpr std::array<std::string_view, 15> measured{
    "tread",       "tyre",  "tire",     "lining",   "rotor",    "profil",   "belag", "beläge",
    "battistrada", "gomma", "pastigli", "pastilla", "plaquett", "sculptur", "pneu"};
// As whole words: a battery discharges.
constexpr std::array<std::string_view, 7> whole{"pad", "pads", "disc", "discs", "disk", "disque", "disco"};

// Places say nothing of what a thing is.
constexpr std::array<std::string_view, 22> places{
    "front",     "rear",       "left",      "right",   "upper",   "lower",  "hinten", "vorn",
    "vorne",     "links",      "rechts",    "avant",   "arrière", "gauche", "droite", "davanti",
    "anteriore", "posteriore", "delantero", "trasero", "with",    "from"};

constexpr std::size_t fewLetters = 3; // shorter words join and count
constexpr std::size_t mostMore = 2;   // letters of an ending: "hoses"

template<std::size_t N>
bool saysAny(std::string_view words, const std::array<std::string_view, N>& wanted) {
    return std::any_of(wanted.begin(), wanted.end(),
                       [&](std::string_view word) { return saysWord(words, word); });
}

bool isLetter(char letter) {
    const auto byte = static_cast<unsigned char>(letter);
    return byte >= 0x80 || std::isalpha(byte) != 0; // UTF-8: every letter beyond ASCII
}

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    for (const char letter : inTradeWords(text) + " ") {
        if (isLetter(letter)) {
            word += letter;
            continue;
        }
        if (word.size() >= fewLetters && std::find(places.begin(), places.end(), word) == places.end())
            words.push_back(word);
        word.clear();
    }
    return words;
}

bool sameWord(std::string_view a, std::string_view b) {
    if (a.size() > b.size())
        std::swap(a, b);
    return b.substr(0, a.size()) == a && b.size() - a.size() <= mostMore;
}

} // namespace

bool holdsOrStops(std::string_view text) {
    return saysAny(inTradeWords(text), holding);
}

bool concernsSafety(std::string_view text) {
    const std::string said = inTradeWords(text);
    const auto words = wordsOf(text);
    return saysAny(said, holding) || saysAny(said, measured) ||
           std::any_of(words.begin(), words.end(), [](const std::string& word) {
               return std::find(whole.begin(), whole.end(), word) != whole.end();
           });
}

bool nameTheSame(std::string_view text, std::string_view other) {
    const auto words = wordsOf(text);
    const auto others = wordsOf(other);
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::any_of(others.begin(), others.end(),
                           [&](const std::string& each) { return sameWord(word, each); });
    });
}

} // namespace undercowl::job
