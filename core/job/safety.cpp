#include "core/job/safety.h"

#include "core/job/text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <iterator>
#include <string>
#include <vector>

namespace undercowl::job {
namespace {

constexpr std::array<std::string_view, 10> holding{"brake",     "caliper", "master cylinder", "wheel",
                                                   "axle",      "fork",    "steering",        "handlebar",
                                                   "swing arm", "shock"};
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

// Which end or side is meant; the words of those pairs exclude each other.
using Place = std::array<std::string_view, 8>; // beginnings of words
struct Opposites {
    Place one;
    Place other;
};
constexpr std::array<Opposites, 2> opposites{{
    {{"front", "vorn", "vorder", "avant", "davanti", "anterior", "delanter", "front"},
     {"rear", "hinten", "hinter", "arrière", "dietro", "posterior", "traser", "rear"}},
    {{"left", "links", "linke", "gauche", "sinistr", "izquierd", "left", "left"},
     {"right", "rechts", "rechte", "droit", "destro", "destra", "derech", "right"}},
}};

// Alone it says too little: hose and pads are both of the brake.
constexpr std::string_view generic = "brake";

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

// The one names the front, the other the rear.
bool elsewhere(std::string_view text, std::string_view other) {
    const std::string a = inTradeWords(text);
    const std::string b = inTradeWords(other);
    return std::any_of(opposites.begin(), opposites.end(), [&](const Opposites& pair) {
        const bool aOne = saysAny(a, pair.one) && !saysAny(a, pair.other);
        const bool aOther = saysAny(a, pair.other) && !saysAny(a, pair.one);
        const bool bOne = saysAny(b, pair.one) && !saysAny(b, pair.other);
        const bool bOther = saysAny(b, pair.other) && !saysAny(b, pair.one);
        return (aOne && bOther) || (aOther && bOne);
    });
}

// Without the generic word, unless there is no other.
std::vector<std::string> tellingWordsOf(std::string_view text) {
    std::vector<std::string> words = wordsOf(text);
    std::vector<std::string> telling;
    std::copy_if(words.begin(), words.end(), std::back_inserter(telling),
                 [](const std::string& word) { return word != generic && word != "brakes"; });
    return telling.empty() ? words : telling;
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
    if (elsewhere(text, other))
        return false;
    const auto words = tellingWordsOf(text);
    const auto others = tellingWordsOf(other);
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::any_of(others.begin(), others.end(),
                           [&](const std::string& each) { return sameWord(word, each); });
    });
}

} // namespace undercowl::job
