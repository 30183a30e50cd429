#include "core/trade/json.h"

#include "core/verdict/words.h"

#include <cmath>

namespace undercowl::trade {
namespace {

using Json = nlohmann::ordered_json;

std::string_view word(Kind kind) {
    switch (kind) {
    case Kind::Quantity: return "quantity";
    case Kind::Text: return "text";
    case Kind::Date: return "date";
    case Kind::Choice: break;
    }
    return "choice";
}

Json valueJson(const Value& value) {
    Json json;
    if (const auto* quantity = std::get_if<units::Quantity>(&value.value)) {
        json = toJson(*quantity);
    } else if (const auto* steps = std::get_if<std::vector<Step>>(&value.value)) {
        json["value"] = Json::array();
        for (const Step& step : *steps) {
            Json row;
            for (const auto& [name, cell] : step.cells) {
                if (const int* whole = std::get_if<int>(&cell))
                    row[name] = *whole;
                else
                    row[name] = toJson(std::get<units::Quantity>(cell));
            }
            json["value"].push_back(row);
        }
        json["unit"] = "";
    } else {
        std::visit(
            [&](const auto& plain) {
                using T = std::decay_t<decltype(plain)>;
                if constexpr (!std::is_same_v<T, units::Quantity> && !std::is_same_v<T, std::vector<Step>>)
                    json["value"] = plain;
            },
            value.value);
        json["unit"] = "";
    }
    json["text"] = value.text;
    return json;
}

} // namespace

Json toJson(const units::Quantity& quantity) {
    return {{"value", quantity.value}, {"unit", quantity.unit.symbol()}};
}

void addVerdict(Json& object, const verdict::Verdict& verdict) {
    object["verdict"] = verdict::word(verdict.answer);
    object["probability"] = std::round(verdict.probability * 1e6) / 1e6;
    if (verdict.acceptFrom)
        object["accept_from"] = toJson(*verdict.acceptFrom);
    if (verdict.acceptTo)
        object["accept_to"] = toJson(*verdict.acceptTo);
    object["uncertainty"] = {{"standard", verdict.standard.value},
                             {"expanded", verdict.expanded.value},
                             {"k", 2},
                             {"unit", verdict.expanded.unit.symbol()}};
    object["rule"] = verdict::word(verdict.rule);
}

Json toJson(const Declaration& declaration, const Result& result) {
    Json json;
    json["name"] = declaration.name;
    json["results"] = Json::object();
    for (const auto& [key, value] : result.values)
        json["results"][key] = valueJson(value);
    json["verdict"] = nullptr;
    if (result.verdict)
        addVerdict(json, *result.verdict);
    if (result.answer)
        json["verdict"] = verdict::word(*result.answer);
    json["working"] = result.working;
    json["sources"] = declaration.sources;
    json["cautions"] = result.cautions;
    for (const std::string& caution : declaration.cautions)
        json["cautions"].push_back(caution);
    return json;
}

Json toJson(const Problem& problem) {
    return {{"error",
             {{"field", problem.field},
              {"given", problem.given},
              {"reason", problem.reason},
              {"possible", problem.possible},
              {"message", problem.message()}}}};
}

Json toJson(const Declaration& declaration) {
    Json json;
    json["name"] = declaration.name;
    json["title"] = declaration.title;
    json["purpose"] = declaration.purpose;
    json["formula"] = declaration.formula;
    json["inputs"] = Json::array();
    for (const Input& input : declaration.inputs) {
        Json one{{"key", input.key},
                 {"label", input.label},
                 {"why", input.why},
                 {"kind", word(input.kind)},
                 {"required", input.required}};
        if (!input.byDefault.empty())
            one["default"] = input.byDefault;
        if (input.kind == Kind::Quantity) {
            one["unit"] = input.unit;
            one["units"] = Json::array();
            for (const units::Unit unit : units::unitsOf(input.dimension))
                one["units"].push_back(unit.symbol());
            if (std::isfinite(input.least))
                one["least"] = input.least == std::numeric_limits<double>::min() ? 0 : input.least;
            if (std::isfinite(input.most))
                one["most"] = input.most;
        }
        for (const Choice& choice : input.choices)
            one["choices"].push_back({{"key", choice.key}, {"label", choice.label}});
        json["inputs"].push_back(one);
    }
    json["outputs"] = Json::array();
    for (const Output& output : declaration.outputs)
        json["outputs"].push_back({{"key", output.key}, {"label", output.label}, {"unit", output.unit}});
    json["gives_verdict"] = declaration.givesVerdict;
    json["sources"] = declaration.sources;
    json["cautions"] = declaration.cautions;
    json["validity"] = declaration.validity;
    json["example"] = {{"inputs", Json::object()}, {"expected", Json::object()}};
    for (const auto& [key, typed] : declaration.example.inputs)
        json["example"]["inputs"][key] = typed;
    for (const auto& [key, expected] : declaration.example.expected)
        json["example"]["expected"][key] = expected;
    return json;
}

} // namespace undercowl::trade
