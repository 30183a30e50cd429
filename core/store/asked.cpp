#include "core/store/asked.h"

#include "core/wiring/words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstddef>

namespace undercowl::store {
namespace {

// Whether the search index can hold anything of the word: it passes over punctuation, and over the symbols of
// U+2000 to U+2BFF and from U+1F000 on (in UTF-8: E2 80 to E2 AF, F0 9F).
bool hasLetters(std::string_view word) {
    for (std::size_t i = 0; i < word.size(); ++i) {
        const auto byte = static_cast<unsigned char>(word[i]);
        if (byte < 0x80) {
            if (std::isalnum(byte) != 0) {
                return true;
            }
            continue;
        }
        const auto second = static_cast<unsigned char>(i + 1 < word.size() ? word[i + 1] : '\0');
        const bool symbol = (byte == 0xE2 && second < 0xB0) || (byte == 0xF0 && second == 0x9F);
        if (!symbol) {
            return true;
        }
        i += byte == 0xE2 ? 2 : 3;
    }
    return false;
}

// What a question is made of beside what it asks for, in the five languages of the screen.
constexpr auto fillers = std::to_array<std::string_view>({
    "a",     "an",      "and",  "at",   "did",  "have", "i",   "in",  "is",   "it",    "of",    "on",
    "or",    "see",     "seen", "that", "the",  "this", "to",  "was", "what", "where", "which", "with", // en
    "am",    "an",      "auf",  "das",  "dem",  "den",  "der", "die", "ein",  "eine",  "einem", "einen",
    "einer", "gesehen", "habe", "ich",  "im",   "mit",  "und", "von", "war",  "was",   "wo", // de
    "au",    "avec",    "dans", "de",   "des",  "du",   "et",  "le",  "la",   "les",   "ou",    "sur",
    "un",    "une",
    "vu",                                                                                                // fr
    "che",   "con",     "del",  "di",   "dove", "e",    "ho",  "il",  "su",   "una",   "uno",   "visto", // it
    "donde", "el",      "en",   "los",  "vi",                                                            // es
});

bool isFiller(std::string_view word) {
    std::string plain;
    for (const char letter : word) {
        if (std::isalpha(static_cast<unsigned char>(letter)) != 0) {
            plain += static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
        } else if (static_cast<unsigned char>(letter) >= 0x80) {
            return word == "où" || word == "Où" || word == "dónde" || word == "Dónde";
        } else if (std::isdigit(static_cast<unsigned char>(letter)) != 0) {
            return false;
        }
    }
    return std::find(fillers.begin(), fillers.end(), plain) != fillers.end();
}

// "grey", or ("grey" AND "red") for colours joined by a hyphen or a stroke; empty unless all of them are
// known.
std::string inEnglish(std::string_view word) {
    std::string all;
    std::size_t pieces = 0;
    for (std::size_t at = 0; at <= word.size(); ++pieces) {
        const std::size_t end = std::min(word.find_first_of("-/", at), word.size());
        std::string_view piece = word.substr(at, end - at);
        while (!piece.empty() && std::ispunct(static_cast<unsigned char>(piece.back())) != 0) {
            piece.remove_suffix(1); // "gris?"
        }
        const std::string_view english = wiring::englishWireWord(piece);
        if (english.empty()) {
            return {};
        }
        all.append(pieces == 0 ? "\"" : " AND \"").append(english).append("\"");
        at = end + 1;
    }
    return pieces > 1 ? '(' + all + ')' : all;
}

// The words, each in quotes so that nothing in it is taken as query syntax.
std::vector<Asked> quoted(std::string_view words, bool sentence) {
    std::vector<Asked> all;
    std::size_t at = 0;
    while (at < words.size()) {
        const std::size_t begin = words.find_first_not_of(" \t\r\n", at);
        if (begin == std::string_view::npos) {
            break;
        }
        at = std::min(words.find_first_of(" \t\r\n", begin), words.size());
        const std::string_view word = words.substr(begin, at - begin);
        if (!hasLetters(word)) {
            continue; // an empty phrase would match nothing
        }
        if (sentence && isFiller(word)) {
            continue;
        }
        std::string made = "\"";
        for (const char letter : word) {
            made += letter == '"' ? "\"\"" : std::string(letter == '\0' ? 0 : 1, letter);
        }
        all.push_back({made + '"', inEnglish(word)});
    }
    return all;
}

} // namespace

std::vector<Asked> askedFor(std::string_view typed) {
    constexpr std::size_t sentenceFrom = 5;
    std::vector<Asked> all = quoted(typed, false);
    if (all.size() < sentenceFrom) {
        return all;
    }
    std::vector<Asked> content = quoted(typed, true);
    return content.empty() ? all : content;
}

} // namespace undercowl::store
