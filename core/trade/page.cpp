#include "core/trade/page.h"

#include "core/units/format.h"
#include "core/verdict/words.h"

#include <fmt/format.h>

#include <cmath>

namespace undercowl::trade {
namespace {

std::string bullets(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines)
        text += "- " + line + "\n";
    return text;
}

std::string section(const std::string& title, const std::vector<std::string>& lines) {
    return lines.empty() ? std::string() : "\n## " + title + "\n\n" + bullets(lines);
}

std::string takes(const Input& input) {
    switch (input.kind) {
    case Kind::Text: return "text";
    case Kind::Date: return "date";
    case Kind::Choice: {
        std::string list;
        for (const Choice& choice : input.choices)
            list.append(list.empty() ? "" : ", ").append(choice.key);
        return list;
    }
    case Kind::Quantity: break;
    }
    std::string text = input.unit == "1" ? "number" : input.unit;
    const bool above = input.least == std::numeric_limits<double>::min();
    if (above)
        text += ", above 0";
    else if (std::isfinite(input.least))
        text += ", from " + units::formatSignificant(input.least, 6);
    if (std::isfinite(input.most))
        text += " to " + units::formatSignificant(input.most, 6);
    return text;
}

std::string inputTable(const Declaration& declaration) {
    std::string table = "\n## Inputs\n\n| key | meaning | takes | default | why or where |\n| --- | --- | "
                        "--- | --- | --- |\n";
    for (const Input& input : declaration.inputs)
        table += fmt::format("| `{}` | {} | {} | {} | {} |\n", input.key, input.label, takes(input),
                             input.byDefault.empty() ? (input.required ? "required" : "optional")
                                                     : input.byDefault,
                             input.why);
    return table;
}

std::string outputTable(const Declaration& declaration) {
    std::string table = "\n## Results\n\n| key | meaning | unit |\n| --- | --- | --- |\n";
    for (const Output& output : declaration.outputs)
        table += fmt::format("| `{}` | {} | {} |\n", output.key, output.label,
                             output.isQuantity ? output.unit : "");
    if (declaration.givesVerdict)
        table += "| `verdict` | within, outside or too close to call | |\n";
    return table;
}

std::string example(const Calculation& calculation) {
    const Declaration& d = calculation.declaration;
    std::string command = "undercowlctl calc run " + d.name;
    std::map<std::string, std::string> inputs;
    for (const auto& [key, value] : d.example.inputs) {
        const bool quote = value.find_first_of(" ,;()") != std::string::npos;
        command += fmt::format(" {}={}{}{}", key, quote ? "\"" : "", value, quote ? "\"" : "");
        inputs[key] = value;
    }
    std::string text = "\n## Worked example\n\n```\n" + command + "\n```\n\n";
    const Outcome outcome = run(calculation, inputs, exampleDay());
    if (!outcome)
        return text + outcome.error().message() + "\n";
    for (const auto& [key, value] : outcome->values)
        text += fmt::format("- `{}`: {}\n", key, value.text);
    if (outcome->answer)
        text += fmt::format("- verdict: {}\n", verdict::word(*outcome->answer));
    text += "\nWorking:\n\n";
    int number = 0;
    for (const std::string& line : outcome->working)
        text += fmt::format("{}. {}\n", ++number, line);
    return text;
}

} // namespace

units::Date exampleDay() {
    return std::chrono::year{2026} / 11 / 25;
}

std::string page(const Calculation& calculation) {
    const Declaration& d = calculation.declaration;
    return fmt::format("# {}: `{}`\n\n{}\n", d.title, d.name, d.purpose) + section("Formula", d.formula) +
           inputTable(d) + outputTable(d) + section("Validity", d.validity) + section("Sources", d.sources) +
           section("Cautions", d.cautions) + example(calculation);
}

std::string indexPage() {
    std::string text = "# Calculations\n\nEach page is made from the calculation's declaration; a test keeps "
                       "them up to date and runs every worked "
                       "example. The machine's own manual wins over every figure here.\n\n| name | what for "
                       "|\n| --- | --- |\n";
    for (const Calculation& calculation : calculations()) {
        const Declaration& d = calculation.declaration;
        text += fmt::format("| [`{}`]({}.md) | {} |\n", d.name, d.name, d.purpose);
    }
    return text;
}

} // namespace undercowl::trade
