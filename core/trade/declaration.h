// What a calculation asks, answers and rests on. The form on the phone, the command line and the
// documentation page are all made from it.
//
// Texts are English. A shell translates them by key: "calc.NAME.title", "calc.NAME.in.KEY" (label),
// "calc.NAME.in.KEY.why", "calc.NAME.out.KEY".
#pragma once

#include "core/units/unit.h"

#include <cstdint>
#include <limits>
#include <string>
#include <utility>
#include <vector>

namespace undercowl::trade {

enum class Kind : std::uint8_t {
    Quantity, // a number with a unit of `dimension`; a plain number has dimension Number
    Text,     // read by the calculation itself: a marking, a code, a list
    Date,     // ISO 8601
    Choice,   // one of `choices`
};

struct Choice {
    std::string key; // what is stored and typed
    std::string label;
};

struct Input {
    std::string key;
    std::string label;
    std::string why; // why it is asked, or where to read it
    Kind kind = Kind::Quantity;
    units::Dimension dimension = units::Dimension::Number;
    std::string unit = "1"; // declared unit: holds where none is typed; range is in it
    bool required = true;
    std::string byDefault; // as typed; "today" for a date; empty: none
    double least = -std::numeric_limits<double>::infinity();
    double most = std::numeric_limits<double>::infinity();
    std::vector<Choice> choices;

    // The same input, changed: for declarations in one expression.
    [[nodiscard]] Input optional() const;
    [[nodiscard]] Input withDefault(std::string value) const;
    [[nodiscard]] Input range(double from, double to) const; // both ends allowed

    [[nodiscard]] units::Unit declaredUnit() const { return units::unit(dimension, unit); }
};

[[nodiscard]] Input quantity(std::string key, std::string label, units::Dimension dimension, std::string unit,
                             std::string why);
[[nodiscard]] Input number(std::string key, std::string label, std::string why);
[[nodiscard]] Input text(std::string key, std::string label, std::string why);
[[nodiscard]] Input date(std::string key, std::string label, std::string why);
[[nodiscard]] Input choice(std::string key, std::string label, std::vector<Choice> choices, std::string why);
// The expanded uncertainty (k = 2) of what was measured. Where it is not given ORDINARY is taken and said so:
// zero is never assumed.
[[nodiscard]] Input uncertainty(units::Dimension dimension, std::string unit, std::string ordinary);

struct Output {
    std::string key;
    std::string label;
    bool isQuantity = false; // else text, yes/no or a list
    units::Dimension dimension = units::Dimension::Number;
    std::string unit;
};

[[nodiscard]] Output quantityOut(std::string key, std::string label, units::Dimension dimension,
                                 std::string unit);
[[nodiscard]] Output numberOut(std::string key, std::string label);
[[nodiscard]] Output textOut(std::string key, std::string label);

// Run by a test; EXPECTED are numbers in the declared unit, or texts.
struct Example {
    std::vector<std::pair<std::string, std::string>> inputs;
    std::vector<std::pair<std::string, std::string>> expected;
};

struct Declaration {
    std::string name; // "torque-adapter"
    std::string title;
    std::string purpose;
    std::vector<std::string> formula;
    std::vector<Input> inputs;
    std::vector<Output> outputs;
    bool givesVerdict = false;
    std::vector<std::string> sources;
    std::vector<std::string> cautions;
    std::vector<std::string> validity; // limits beyond the ranges of the inputs
    Example example;

    [[nodiscard]] const Input* input(std::string_view key) const;
    [[nodiscard]] const Output* output(std::string_view key) const;
};

} // namespace undercowl::trade
