// The inputs of one run, read and checked against their declaration.
#pragma once

#include "core/trade/declaration.h"
#include "core/units/date.h"
#include "core/units/parse.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace undercowl::trade {

// Why there is no result: the input at fault, what was given, and what would be possible.
struct Problem {
    std::string field;
    std::string given; // as typed; empty if nothing was
    std::string reason;
    std::string possible;

    [[nodiscard]] std::string message() const; // one English sentence of all four
};

class Given {
public:
    // TYPED: key to text as typed. Defaults fill what is missing; "today" becomes TODAY. Refused: an unknown
    // key, a missing required input, text that cannot be read, a value outside its range.
    [[nodiscard]] static tl::expected<Given, Problem>
    read(const Declaration& declaration, const std::map<std::string, std::string>& typed, units::Date today);

    // Typed or filled by its default.
    [[nodiscard]] bool has(std::string_view key) const { return values_.contains(std::string(key)); }
    // Typed by the person.
    [[nodiscard]] bool typed(std::string_view key) const;

    // The accessors are for keys that has() and that are of that kind; anything else is a mistake of the
    // programmer and ends the program.
    [[nodiscard]] double number(std::string_view key) const; // in the declared unit
    [[nodiscard]] double in(std::string_view key, units::Dimension dimension, std::string_view unit) const;
    [[nodiscard]] units::Quantity quantity(std::string_view key) const; // in the typed unit
    [[nodiscard]] const units::AsTyped& asTyped(std::string_view key) const;
    [[nodiscard]] const std::string& text(std::string_view key) const; // texts and choices, trimmed
    [[nodiscard]] units::Date date(std::string_view key) const;

    // A Problem about one input: what was given is filled in.
    [[nodiscard]] tl::unexpected<Problem> problem(std::string_view key, std::string reason,
                                                  std::string possible) const;

private:
    struct Value {
        std::string text;
        bool typed = false;
        std::optional<units::AsTyped> quantity;
        units::Unit declared;
        units::Date date{};
    };
    [[nodiscard]] const Value& at(std::string_view key) const;

    std::map<std::string, Value> values_;
};

} // namespace undercowl::trade
