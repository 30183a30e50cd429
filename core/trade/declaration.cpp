#include "core/trade/declaration.h"

namespace undercowl::trade {
namespace {

Input plain(std::string key, std::string label, std::string why, Kind kind) {
    Input input;
    input.key = std::move(key);
    input.label = std::move(label);
    input.why = std::move(why);
    input.kind = kind;
    return input;
}

} // namespace

Input Input::optional() const {
    Input changed = *this;
    changed.required = false;
    return changed;
}

Input Input::withDefault(std::string value) const {
    Input changed = optional();
    changed.byDefault = std::move(value);
    return changed;
}

Input Input::range(double from, double to) const {
    Input changed = *this;
    changed.least = from;
    changed.most = to;
    return changed;
}

Input quantity(std::string key, std::string label, units::Dimension dimension, std::string unit,
               std::string why) {
    Input input = plain(std::move(key), std::move(label), std::move(why), Kind::Quantity);
    input.dimension = dimension;
    input.unit = std::move(unit);
    return input;
}

Input number(std::string key, std::string label, std::string why) {
    return plain(std::move(key), std::move(label), std::move(why), Kind::Quantity);
}

Input text(std::string key, std::string label, std::string why) {
    return plain(std::move(key), std::move(label), std::move(why), Kind::Text);
}

Input date(std::string key, std::string label, std::string why) {
    return plain(std::move(key), std::move(label), std::move(why), Kind::Date);
}

Input choice(std::string key, std::string label, std::vector<Choice> choices, std::string why) {
    Input input = plain(std::move(key), std::move(label), std::move(why), Kind::Choice);
    input.choices = std::move(choices);
    return input;
}

Input uncertainty(units::Dimension dimension, std::string unit, std::string ordinary) {
    Input input =
        quantity("uncertainty", "Uncertainty", dimension, std::move(unit),
                 "expanded uncertainty (k = 2) of the instrument; without it an ordinary one is assumed");
    input.least = std::numeric_limits<double>::min();
    return input.withDefault(std::move(ordinary));
}

Output quantityOut(std::string key, std::string label, units::Dimension dimension, std::string unit) {
    return {std::move(key), std::move(label), true, dimension, std::move(unit)};
}

Output numberOut(std::string key, std::string label) {
    return {std::move(key), std::move(label), true, units::Dimension::Number, "1"};
}

Output textOut(std::string key, std::string label) {
    return {std::move(key), std::move(label), false, units::Dimension::Number, ""};
}

const Input* Declaration::input(std::string_view key) const {
    for (const Input& candidate : inputs)
        if (candidate.key == key)
            return &candidate;
    return nullptr;
}

const Output* Declaration::output(std::string_view key) const {
    for (const Output& candidate : outputs)
        if (candidate.key == key)
            return &candidate;
    return nullptr;
}

} // namespace undercowl::trade
