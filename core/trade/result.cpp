#include "core/trade/result.h"

#include "core/units/format.h"
#include "core/verdict/words.h"

#include <cstdlib>

namespace undercowl::trade {
namespace {

template<class List, class Write>
std::string joined(const List& list, Write write) {
    std::string text;
    for (const auto& item : list)
        text.append(text.empty() ? "" : ", ").append(write(item));
    return text.empty() ? "none" : text;
}

std::string stepText(const Step& step) {
    std::string text;
    for (const auto& [name, cell] : step.cells) {
        text.append(text.empty() ? "" : " ").append(name).append(" ");
        if (const int* whole = std::get_if<int>(&cell))
            text += std::to_string(*whole);
        else
            text += units::format(std::get<units::Quantity>(cell));
    }
    return text;
}

} // namespace

void Result::put(std::string_view key, double value, int significant) {
    const Output* output = declaration_->output(key);
    if (output == nullptr || !output->isQuantity)
        std::abort(); // the declaration lacks it
    const units::Quantity quantity{value, units::unit(output->dimension, output->unit)};
    put(key, quantity, units::format(quantity, significant));
}

void Result::put(std::string_view key, const units::Quantity& quantity, std::string text) {
    values.emplace_back(key, Value{quantity, std::move(text)});
}

void Result::put(std::string_view key, std::string text) {
    values.emplace_back(key, Value{text, text});
}

void Result::put(std::string_view key, bool yes, std::string text) {
    values.emplace_back(key, Value{yes, std::move(text)});
}

void Result::put(std::string_view key, std::vector<std::string> list) {
    std::string text = joined(list, [](const std::string& item) { return item; });
    values.emplace_back(key, Value{std::move(list), std::move(text)});
}

void Result::put(std::string_view key, std::vector<int> list) {
    std::string text = joined(list, [](int item) { return std::to_string(item); });
    values.emplace_back(key, Value{std::move(list), std::move(text)});
}

void Result::put(std::string_view key, std::vector<Step> list) {
    std::string text = joined(list, stepText);
    values.emplace_back(key, Value{std::move(list), std::move(text)});
}

void Result::judge(const Given& given, const units::Quantity& measured, const verdict::Limits& limits) {
    if (!given.typed("uncertainty"))
        warn("no uncertainty was given: " + units::format(given.quantity("uncertainty")) +
             " is assumed for an ordinary instrument (common practice, no source)");
    judge(measured, limits, given.quantity("uncertainty"));
}

void Result::judge(const units::Quantity& measured, const verdict::Limits& limits,
                   const units::Quantity& expanded) {
    const auto decided = verdict::decide(measured, limits, expanded);
    if (!decided) {
        warn("no verdict: " + decided.error().message);
        return;
    }
    for (std::string& line : verdict::working(*decided))
        say(std::move(line));
    for (const std::string& advice : verdict::whatWouldSettle(*decided))
        warn("what would settle it: " + advice);
    if (!limits.source.text().empty())
        say("limit: " + limits.source.text());
    limitSource = limits.source.text();
    answer = decided->answer;
    verdict = *decided;
}

void Result::decide(verdict::Answer decided) {
    answer = decided;
    say("verdict: " + std::string(verdict::word(decided)));
}

const Value* Result::find(std::string_view key) const {
    for (const auto& [name, value] : values)
        if (name == key)
            return &value;
    return nullptr;
}

} // namespace undercowl::trade
