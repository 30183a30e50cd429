#include "core/talk/grammar.h"

#include "core/talk/intent.h"
#include "core/talk/numbers.h"
#include "core/talk/speak.h"
#include "core/talk/vocabulary.h"

#include <algorithm>
#include <span>
#include <utility>

namespace undercowl::talk {
namespace {

Expression oneOf(std::span<const std::string_view> words) {
    std::vector<Expression> parts;
    parts.reserve(words.size());
    for (const std::string_view word : words)
        parts.push_back(phrase(word));
    return choice(std::move(parts));
}

Expression notZero() {
    return oneOf(digitNames().subspan(1));
}

// Inside a number a zero may be said "oh".
Expression laterDigit() {
    return choice({oneOf(digitNames()), phrase("oh")});
}

Expression belowHundred() {
    return choice({notZero(), oneOf(teenNames()), sequence({oneOf(tensNames()), optional(notZero())})});
}

// Whole numbers from 1 with at most so many digits (1 to 3): by name, or digit by digit.
Expression whole(int digits) {
    if (digits == 1)
        return notZero();
    std::vector<Expression> ways{belowHundred(), sequence({notZero(), laterDigit()})};
    if (digits == 3) {
        ways.push_back(sequence(
            {notZero(), phrase("hundred"), optional(sequence({optional(phrase("and")), belowHundred()}))}));
        ways.push_back(sequence({notZero(), laterDigit(), laterDigit()}));
    }
    return choice(std::move(ways));
}

Expression number(int digits, int decimals) {
    const Expression tail =
        decimals > 1 ? sequence({oneOf(digitNames()), optional(oneOf(digitNames()))}) : oneOf(digitNames());
    return choice({sequence({whole(digits), optional(sequence({phrase("point"), tail}))}),
                   sequence({phrase("zero point"), tail})});
}

Expression colours() {
    std::vector<Expression> parts;
    parts.reserve(colour::allInsulations.size() + otherColourWords().size());
    for (const colour::Insulation colour : colour::allInsulations)
        parts.push_back(phrase(colour::englishWord(colour)));
    for (const ColourWord& other : otherColourWords())
        parts.push_back(phrase(other.word));
    return choice(std::move(parts));
}

Expression terminals() {
    std::vector<Expression> parts;
    for (const SpokenTerminal& terminal : spokenTerminals()) {
        const Expression kind = phrase(wiring::text({terminal.kind, std::nullopt}));
        std::vector<Expression> sizes;
        sizes.reserve(terminal.sizes.size());
        for (const std::string_view size : terminal.sizes)
            sizes.push_back(phrase(spokenNumber(size)));
        parts.push_back(sizes.empty() ? kind : sequence({kind, optional(choice(std::move(sizes)))}));
    }
    return choice(std::move(parts));
}

} // namespace

Expression commands() {
    std::vector<Expression> parts;
    parts.reserve(allCommands.size());
    for (const Command command : allCommands)
        parts.push_back(phrase(name(command)));
    return choice(std::move(parts));
}

Expression readings() {
    std::vector<Expression> parts;
    for (const Measured what : allMeasured) {
        std::vector<Expression> values;
        for (const SpokenUnit& unit : spokenUnits())
            if (unit.what == what)
                values.push_back(sequence({number(unit.wholeDigits, unit.decimals), phrase(unit.words)}));
        parts.push_back(sequence({phrase(name(what)), choice(std::move(values))}));
    }
    return choice(std::move(parts));
}

Expression bags() {
    return sequence({phrase("bag"), whole(3)});
}

Expression wires() {
    return sequence({colours(), optional(sequence({phrase("with"), colours(), phrase("tracer")})),
                     optional(terminals()), optional(oneOf(spokenFunctions()))});
}

Expression grammar() {
    return choice({commands(), readings(), bags(), wires()});
}

std::string_view wakePhrase() {
    return "turquoise battery";
}

std::string grammarText(const Expression& expression) {
    return "#JSGF V1.0;\ngrammar undercowl;\npublic <said> = " + jsgf(expression) + ";\n";
}

} // namespace undercowl::talk
