#include "core/trade/given.h"

#include "core/units/format.h"
#include "core/units/spelling.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace undercowl::trade {
namespace {

std::string keysOf(const Declaration& declaration) {
    std::string list;
    for (const Input& input : declaration.inputs)
        list.append(list.empty() ? "" : ", ").append(input.key);
    return list;
}

std::string choicesOf(const Input& input) {
    std::string list;
    for (const Choice& choice : input.choices)
        list.append(list.empty() ? "" : ", ").append(choice.key);
    return list;
}

std::string rangeOf(const Input& input) {
    using units::formatSignificant;
    const units::Unit unit = input.declaredUnit();
    const bool above = input.least == std::numeric_limits<double>::min();
    const std::string least = above ? "above 0" : "from " + formatSignificant(input.least, 6);
    if (!std::isfinite(input.most))
        return units::withSymbol(least, unit) + (above ? "" : " up");
    if (!std::isfinite(input.least))
        return units::withSymbol("up to " + formatSignificant(input.most, 6), unit);
    return units::withSymbol(least + (above ? " up to " : " to ") + formatSignificant(input.most, 6), unit);
}

std::string wanted(const Input& input) {
    switch (input.kind) {
    case Kind::Choice: return "one of " + choicesOf(input);
    case Kind::Date: return "a date such as 2026-11-25";
    case Kind::Text: return input.why;
    case Kind::Quantity: break;
    }
    if (std::isfinite(input.least) || std::isfinite(input.most))
        return rangeOf(input);
    if (input.dimension == units::Dimension::Number)
        return "a number";
    return std::string(englishName(input.dimension)) + " in " + units::symbolsOf(input.dimension);
}

} // namespace

std::string Problem::message() const {
    std::string sentence = field + ": " + reason;
    if (!given.empty() && reason.find("\"" + given + "\"") == std::string::npos)
        sentence += ", given was \"" + given + "\"";
    if (!possible.empty())
        sentence += "; possible: " + possible;
    return sentence;
}

tl::expected<Given, Problem> Given::read(const Declaration& declaration,
                                         const std::map<std::string, std::string>& typed, units::Date today) {
    for (const auto& [key, value] : typed)
        if (declaration.input(key) == nullptr)
            return tl::unexpected(
                Problem{key, value, declaration.name + " has no such input", keysOf(declaration)});
    Given given;
    for (const Input& input : declaration.inputs) {
        const auto entered = typed.find(input.key);
        Value value;
        value.typed = entered != typed.end();
        value.text = units::plainBlanks(value.typed ? entered->second : input.byDefault);
        if (value.text.empty()) {
            if (input.required || value.typed)
                return tl::unexpected(
                    Problem{input.key, "", "is missing (" + input.label + ")", wanted(input)});
            continue;
        }
        const auto refuse = [&](std::string reason) {
            return tl::unexpected(Problem{input.key, value.text, std::move(reason), wanted(input)});
        };
        if (input.kind == Kind::Quantity) {
            value.declared = input.declaredUnit();
            auto quantity = units::parseQuantity(value.text, input.dimension, value.declared);
            if (!quantity)
                return refuse(quantity.error().message);
            const double inDeclared = quantity->quantity().in(value.declared);
            // A bound that was itself converted may be a hair off.
            const double hair = 1e-12 * std::fabs(inDeclared);
            if (!(inDeclared >= input.least - hair && inDeclared <= input.most + hair) ||
                (input.least > 0 && inDeclared <= 0))
                return refuse("is out of range");
            value.quantity = *std::move(quantity);
        } else if (input.kind == Kind::Date) {
            if (value.text == "today")
                value.text = units::formatDate(today);
            const auto date = units::parseDate(value.text);
            if (!date)
                return refuse(date.error().message);
            value.date = *date;
        } else if (input.kind == Kind::Choice) {
            const std::string folded = units::foldedSpelling(value.text);
            const Choice* found = nullptr;
            for (const Choice& choice : input.choices)
                if (units::foldedSpelling(choice.key) == folded)
                    found = &choice;
            if (found == nullptr)
                return refuse("is not one of the choices");
            value.text = found->key;
        }
        given.values_.emplace(input.key, std::move(value));
    }
    return given;
}

const Given::Value& Given::at(std::string_view key) const {
    const auto found = values_.find(std::string(key));
    if (found == values_.end()) {
        std::fprintf(stderr, "input %.*s was not given\n", static_cast<int>(key.size()), key.data());
        std::abort();
    }
    return found->second;
}

bool Given::typed(std::string_view key) const {
    return has(key) && at(key).typed;
}

double Given::number(std::string_view key) const {
    return quantity(key).in(at(key).declared);
}

double Given::in(std::string_view key, units::Dimension dimension, std::string_view unit) const {
    return quantity(key).in(units::unit(dimension, unit));
}

units::Quantity Given::quantity(std::string_view key) const {
    return asTyped(key).quantity();
}

const units::AsTyped& Given::asTyped(std::string_view key) const {
    const Value& value = at(key);
    if (!value.quantity)
        std::abort();
    return *value.quantity;
}

const std::string& Given::text(std::string_view key) const {
    return at(key).text;
}

units::Date Given::date(std::string_view key) const {
    return at(key).date;
}

tl::unexpected<Problem> Given::problem(std::string_view key, std::string reason, std::string possible) const {
    return tl::unexpected(Problem{std::string(key), has(key) ? text(key) : std::string(), std::move(reason),
                                  std::move(possible)});
}

} // namespace undercowl::trade
