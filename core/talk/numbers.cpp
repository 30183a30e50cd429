#include "core/talk/numbers.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>

namespace undercowl::talk {
namespace {

constexpr std::array<std::string_view, 10> digitWords{"zero", "one", "two",   "three", "four",
                                                      "five", "six", "seven", "eight", "nine"};
constexpr std::array<std::string_view, 10> teenWords{"ten",      "eleven",  "twelve",  "thirteen",
                                                     "fourteen", "fifteen", "sixteen", "seventeen",
                                                     "eighteen", "nineteen"};
constexpr std::array<std::string_view, 8> tensWords{"twenty", "thirty",  "forty",  "fifty",
                                                    "sixty",  "seventy", "eighty", "ninety"};

constexpr int largestNamed = 999999;

std::optional<int> indexOf(std::span<const std::string_view> names, std::string_view word) {
    const auto found = std::find(names.begin(), names.end(), word);
    if (found == names.end())
        return std::nullopt;
    return static_cast<int>(found - names.begin());
}

std::optional<int> digit(std::string_view word) {
    return word == "oh" ? 0 : indexOf(digitWords, word);
}

bool allDigits(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

void add(std::string& sentence, std::string_view word) {
    if (!sentence.empty())
        sentence += ' ';
    sentence += word;
}

std::string_view at(std::span<const std::string_view> names, int index) {
    return names[static_cast<std::size_t>(index)];
}

// 0 to 999999.
std::string cardinal(int number) {
    if (number < 10)
        return std::string{at(digitWords, number)};
    if (number < 20)
        return std::string{at(teenWords, number - 10)};
    std::string words;
    if (number < 100) {
        words = at(tensWords, number / 10 - 2);
        if (number % 10 != 0)
            add(words, at(digitWords, number % 10));
        return words;
    }
    const int large = number < 1000 ? 100 : 1000;
    words = cardinal(number / large) + (large == 100 ? " hundred" : " thousand");
    const int rest = number % large;
    if (rest == 0)
        return words;
    if (rest < 100)
        add(words, "and");
    add(words, cardinal(rest));
    return words;
}

// "twenty five", "seventeen", "one hundred and ten": a name of 0 to 999. Nothing when words are left over.
std::optional<int> fromCardinal(std::span<const std::string_view> words) {
    if (words.empty())
        return std::nullopt;
    if (words.size() >= 2 && words[1] == "hundred") {
        const auto hundreds = indexOf(digitWords, words[0]);
        if (!hundreds || *hundreds == 0)
            return std::nullopt;
        auto rest = words.subspan(2);
        if (rest.empty())
            return *hundreds * 100;
        if (rest.front() == "and")
            rest = rest.subspan(1);
        const auto below = fromCardinal(rest);
        if (!below || *below >= 100 || *below == 0)
            return std::nullopt;
        return *hundreds * 100 + *below;
    }
    if (words.size() == 1) {
        if (const auto small = indexOf(digitWords, words[0]))
            return small;
        if (const auto teen = indexOf(teenWords, words[0]))
            return *teen + 10;
    }
    const auto tens = indexOf(tensWords, words[0]);
    if (!tens || words.size() > 2)
        return std::nullopt;
    if (words.size() == 1)
        return (*tens + 2) * 10;
    const auto ones = indexOf(digitWords, words[1]);
    if (!ones || *ones == 0)
        return std::nullopt;
    return (*tens + 2) * 10 + *ones;
}

std::optional<std::string> fromDigits(std::span<const std::string_view> words) {
    std::string digits;
    for (const std::string_view word : words) {
        const auto value = digit(word);
        if (!value)
            return std::nullopt;
        digits += static_cast<char>('0' + *value);
    }
    return digits;
}

} // namespace

std::string spokenDigits(std::string_view digits) {
    std::string words;
    for (const char c : digits)
        if (c >= '0' && c <= '9')
            add(words, at(digitWords, c - '0'));
    return words;
}

std::string spokenNumber(std::string_view digits) {
    std::string_view rest = digits;
    std::string words;
    if (!rest.empty() && rest.front() == '-') {
        words = "minus";
        rest.remove_prefix(1);
    }
    const auto mark = rest.find_first_of(".,");
    std::string_view whole = rest.substr(0, mark);
    const std::string_view decimals =
        mark == std::string_view::npos ? std::string_view{} : rest.substr(mark + 1);
    if (!allDigits(whole) || (mark != std::string_view::npos && !allDigits(decimals)))
        return std::string{digits};
    while (whole.size() > 1 && whole.front() == '0')
        whole.remove_prefix(1);
    int number = 0;
    const bool fits = std::from_chars(whole.data(), whole.data() + whole.size(), number).ec == std::errc{} &&
                      number <= largestNamed;
    add(words, fits ? cardinal(number) : spokenDigits(whole));
    if (!decimals.empty()) {
        add(words, "point");
        add(words, spokenDigits(decimals));
    }
    return words;
}

std::optional<std::string> digitsFromWords(std::span<const std::string_view> words) {
    const auto point = std::find(words.begin(), words.end(), "point");
    const auto whole = words.first(static_cast<std::size_t>(point - words.begin()));
    if (whole.empty() || whole.front() == "oh")
        return std::nullopt;
    std::string digits;
    if (const auto named = fromCardinal(whole)) {
        digits = std::to_string(*named);
    } else if (const auto single = fromDigits(whole); single && single->front() != '0') {
        digits = *single;
    } else {
        return std::nullopt;
    }
    if (point == words.end())
        return digits;
    const auto decimals = fromDigits(words.subspan(whole.size() + 1));
    if (!decimals || decimals->empty())
        return std::nullopt;
    return digits + "." + *decimals;
}

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    while (true) {
        const auto start = text.find_first_not_of(' ');
        if (start == std::string_view::npos)
            return words;
        text.remove_prefix(start);
        const auto end = std::min(text.find(' '), text.size());
        words.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
}

std::span<const std::string_view> digitNames() {
    return digitWords;
}

std::span<const std::string_view> teenNames() {
    return teenWords;
}

std::span<const std::string_view> tensNames() {
    return tensWords;
}

} // namespace undercowl::talk
