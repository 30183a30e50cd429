#include "core/talk/speak.h"

#include "core/talk/numbers.h"
#include "core/talk/vocabulary.h"
#include "core/units/unit.h"

#include <algorithm>

namespace undercowl::talk {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

std::string sentence(Command command) {
    return std::string{name(command)};
}

std::string sentence(const SpokenReading& reading) {
    return std::string{name(reading.what)} + " " + spoken(reading.value);
}

std::string sentence(SpokenBag bag) {
    return "bag " + spokenNumber(std::to_string(bag.number));
}

std::string sentence(const SpokenWire& said) {
    std::string words = englishWords(said.wire.colour);
    if (const std::string terminal = spoken(said.wire.terminal); !terminal.empty())
        words += " " + terminal;
    if (!said.wire.function.empty())
        words += " " + said.wire.function;
    return words;
}

// "16" of "16mm", "5" of "5.": digits with a mark between them.
std::size_t numberLength(std::string_view text) {
    std::size_t length = 0;
    while (length < text.size() &&
           (isDigit(text[length]) || ((text[length] == '.' || text[length] == ',') &&
                                      length + 1 < text.size() && isDigit(text[length + 1]) && length > 0)))
        ++length;
    return length;
}

} // namespace

std::string spoken(const Intent& intent) {
    return std::visit([](const auto& meant) { return sentence(meant); }, intent);
}

std::string spoken(const job::TypedValue& value) {
    std::string words = spokenNumber(value.digits);
    if (!value.unit.empty())
        words += " " + unitWords(value.unit, value.digits == "1");
    return words;
}

std::string spoken(const wiring::Terminal& terminal) {
    // wiring::text gives the kind and then the size, which alone has digits.
    return spokenText(wiring::text(terminal));
}

std::string spokenText(std::string_view text) {
    std::string words;
    std::string number; // said just before: a unit that follows is said as one or many of it
    for (std::string_view word : wordsOf(text)) {
        if (!number.empty() && !units::findUnits(word).empty()) {
            words += " " + unitWords(word, number == "1");
            number.clear();
            continue;
        }
        number.clear();
        if (!words.empty())
            words += ' ';
        if (word == "x") {
            words += "by";
            continue;
        }
        const auto first =
            static_cast<std::size_t>(std::find_if(word.begin(), word.end(), isDigit) - word.begin());
        const std::size_t length = numberLength(word.substr(first));
        if (length == 0) {
            words += word;
            continue;
        }
        const std::string_view before = word.substr(0, first);
        std::string_view after = word.substr(first + length);
        if (after.starts_with('-')) // "6-place"
            after.remove_prefix(1);
        number = word.substr(first, length);
        words += before;
        if (!before.empty())
            words += ' ';
        words += spokenNumber(number);
        if (!after.empty()) {
            const bool unit = !units::findUnits(after).empty();
            words += ' ';
            words += unit ? unitWords(after, number == "1") : std::string{after};
            number.clear();
        }
    }
    return words;
}

} // namespace undercowl::talk
