#include "core/talk/parse.h"

#include "core/talk/numbers.h"
#include "core/talk/vocabulary.h"
#include "core/units/format.h"
#include "core/units/parse.h"

#include <algorithm>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace undercowl::talk {
namespace {

using Words = std::span<const std::string_view>;

constexpr int largestBag = 999;

tl::unexpected<Refusal> unknown() {
    return tl::unexpected(
        Refusal{Refusal::Kind::Unknown, "that is nothing that can be said here: say it again"});
}

// Whether the phrase stands at the beginning (or the end) of the words.
bool begins(Words words, std::string_view phrase) {
    const auto wanted = wordsOf(phrase);
    return words.size() >= wanted.size() && std::equal(wanted.begin(), wanted.end(), words.begin());
}

bool ends(Words words, std::string_view phrase) {
    const auto wanted = wordsOf(phrase);
    return words.size() >= wanted.size() && std::equal(wanted.rbegin(), wanted.rend(), words.rbegin());
}

std::optional<Command> command(std::string_view text) {
    const auto* const found = std::find_if(allCommands.begin(), allCommands.end(),
                                           [text](Command which) { return name(which) == text; });
    if (found == allCommands.end())
        return std::nullopt;
    return *found;
}

std::optional<Measured> measured(Words words) {
    const auto* const found = std::find_if(allMeasured.begin(), allMeasured.end(),
                                           [&](Measured what) { return begins(words, name(what)); });
    if (found == allMeasured.end())
        return std::nullopt;
    return *found;
}

tl::expected<Intent, Refusal> reading(Measured what, Words words) {
    const Words rest = words.subspan(wordsOf(name(what)).size());
    for (const SpokenUnit& unit : spokenUnits()) {
        const auto fits = [&](bool one) {
            return ends(rest, one ? unitWords(unit.symbol, true) : unit.words);
        };
        if (unit.what != what || !(fits(false) || fits(true)))
            continue;
        const auto digits = digitsFromWords(rest.first(rest.size() - wordsOf(unit.words).size()));
        if (!digits)
            return unknown();
        const auto number = units::parseNumber(*digits);
        if (!number) // hundreds of digits in a row
            return unknown();
        const double value = number->value;
        if (value < unit.low || value > unit.high) {
            const std::string symbol{unit.symbol};
            std::string message{name(what)};
            message.append(" ").append(*digits).append(" ").append(symbol).append(" is not believed (");
            message.append(units::formatExact(unit.low)).append(" to ").append(units::formatExact(unit.high));
            message.append(" ").append(symbol).append("): say it again");
            return tl::unexpected(Refusal{Refusal::Kind::Implausible, std::move(message)});
        }
        return SpokenReading{what, {*digits, std::string{unit.symbol}}};
    }
    return unknown();
}

tl::expected<Intent, Refusal> bag(Words words) {
    const auto digits = digitsFromWords(words.subspan(1));
    if (!digits || digits->find('.') != std::string::npos || digits->size() > 3)
        return unknown();
    const int number = std::stoi(*digits);
    if (number < 1 || number > largestBag)
        return unknown();
    return SpokenBag{number};
}

// Takes the longest colour word off the front.
std::optional<colour::Insulation> takeColour(Words& words) {
    std::optional<colour::Insulation> best;
    std::size_t length = 0;
    const auto consider = [&](std::string_view phrase, colour::Insulation colour) {
        const std::size_t count = wordsOf(phrase).size();
        if (count > length && begins(words, phrase)) {
            best = colour;
            length = count;
        }
    };
    for (const colour::Insulation colour : colour::allInsulations)
        consider(colour::englishWord(colour), colour);
    for (const ColourWord& other : otherColourWords())
        consider(other.word, other.colour);
    words = words.subspan(length);
    return best;
}

// Takes a terminal with its size off the front, if there is one; whatever number words follow its kind are
// its size.
tl::expected<wiring::Terminal, Refusal> takeTerminal(Words& words) {
    wiring::Terminal terminal;
    std::size_t length = 0;
    for (const SpokenTerminal& known : spokenTerminals()) {
        const std::string kind = wiring::text({known.kind, std::nullopt});
        const std::size_t count = wordsOf(kind).size();
        if (count > length && begins(words, kind)) {
            terminal.kind = known.kind;
            length = count;
        }
    }
    words = words.subspan(length);
    if (length == 0)
        return terminal;
    for (std::size_t count = words.size(); count > 0; --count) {
        const auto digits = digitsFromWords(words.first(count));
        if (!digits)
            continue;
        const auto sized = wiring::terminalFromText(wiring::text(terminal) + " " + *digits);
        if (!sized)
            return unknown();
        terminal = *sized;
        words = words.subspan(count);
        break;
    }
    return terminal;
}

tl::expected<Intent, Refusal> wire(Words words) {
    SpokenWire said;
    const auto base = takeColour(words);
    if (!base)
        return unknown();
    said.wire.colour.base = *base;
    if (begins(words, "with")) {
        words = words.subspan(1);
        const auto tracer = takeColour(words);
        if (!tracer || !begins(words, "tracer"))
            return unknown();
        // A stripe in the colour of its ground is no stripe: one of the two was misheard.
        if (*tracer == *base)
            return unknown();
        said.wire.colour.tracer = tracer;
        words = words.subspan(1);
    }
    const auto terminal = takeTerminal(words);
    if (!terminal)
        return tl::unexpected(terminal.error());
    said.wire.terminal = *terminal;
    if (words.empty())
        return said;
    for (const std::string_view function : spokenFunctions()) {
        if (begins(words, function) && words.size() == wordsOf(function).size()) {
            said.wire.function = function;
            return said;
        }
    }
    return unknown();
}

} // namespace

tl::expected<Intent, Refusal> parse(std::string_view text) {
    const std::vector<std::string_view> words = wordsOf(text);
    if (words.empty())
        return unknown();
    if (const auto meant = command(text))
        return *meant;
    if (words.front() == "bag")
        return bag(words);
    if (const auto what = measured(words))
        return reading(*what, words);
    return wire(words);
}

} // namespace undercowl::talk
