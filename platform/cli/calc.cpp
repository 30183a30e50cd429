#include "platform/cli/calc.h"

#include "core/trade/json.h"
#include "core/trade/page.h"
#include "core/verdict/words.h"
#include "platform/cli/today.h"

#include <fmt/format.h>

#include <iostream>
#include <memory>
#include <vector>

namespace undercowl::platform {
namespace {

struct Wanted {
    std::string name;
    std::vector<std::string> inputs;
};

std::string names() {
    std::string list;
    for (const trade::Calculation& calculation : trade::calculations())
        list.append(list.empty() ? "" : ", ").append(calculation.declaration.name);
    return list;
}

const trade::Calculation* named(const std::string& name) {
    const trade::Calculation* calculation = trade::findCalculation(name);
    if (calculation == nullptr)
        complain(Exit::WrongUse, fmt::format("there is no calculation \"{}\"; there are: {}", name, names()));
    return calculation;
}

Exit list(const Context& context) {
    auto all = nlohmann::ordered_json::array();
    for (const trade::Calculation& calculation : trade::calculations()) {
        const trade::Declaration& declaration = calculation.declaration;
        if (context.json)
            all.push_back(
                {{"name", declaration.name}, {"title", declaration.title}, {"purpose", declaration.purpose}});
        else
            std::cout << fmt::format("{:21} {}\n", declaration.name, declaration.purpose);
    }
    if (context.json)
        printJson({{"calculations", all}});
    return Exit::Done;
}

Exit show(const Context& context, const Wanted& wanted) {
    const trade::Calculation* calculation = named(wanted.name);
    if (calculation == nullptr)
        return Exit::WrongUse;
    if (context.json)
        printJson(trade::toJson(calculation->declaration));
    else
        std::cout << trade::page(*calculation);
    return Exit::Done;
}

void print(const trade::Declaration& declaration, const trade::Result& result) {
    for (const auto& [key, value] : result.values)
        std::cout << fmt::format("{}: {}\n", key, value.text);
    if (result.answer)
        std::cout << fmt::format("verdict: {}\n", verdict::word(*result.answer));
    const auto block = [](const char* title, const std::vector<std::string>& lines) {
        if (lines.empty())
            return;
        std::cout << '\n' << title << ":\n";
        for (const std::string& line : lines)
            std::cout << "  " << line << '\n';
    };
    block("Working", result.working);
    block("Note", result.cautions);
    block("Cautions", declaration.cautions);
    block("Sources", declaration.sources);
}

Exit run(const Context& context, const Wanted& wanted) {
    const trade::Calculation* calculation = named(wanted.name);
    if (calculation == nullptr)
        return Exit::WrongUse;
    std::map<std::string, std::string> typed;
    for (const std::string& input : wanted.inputs) {
        const auto equals = input.find('=');
        if (equals == std::string::npos || equals == 0)
            return complain(Exit::WrongUse,
                            fmt::format("\"{}\" is not an input: write key=value, such as {}={}", input,
                                        calculation->declaration.example.inputs.front().first,
                                        calculation->declaration.example.inputs.front().second));
        if (!typed.emplace(input.substr(0, equals), input.substr(equals + 1)).second)
            return complain(Exit::WrongUse, fmt::format("{} is given twice", input.substr(0, equals)));
    }
    const trade::Outcome outcome = trade::run(*calculation, typed, today());
    if (!outcome)
        return complain(Exit::WrongUse, outcome.error().message());
    if (context.json)
        printJson(trade::toJson(calculation->declaration, *outcome));
    else
        print(calculation->declaration, *outcome);
    return outcome->answer == verdict::Answer::Outside ? Exit::No : Exit::Done;
}

} // namespace

void addCalcCommand(CLI::App& root, Context& context) {
    CLI::App* calc = addCommand(root, "calc", "The trade's calculations",
                                "undercowlctl calc run premix fuel=\"5 L\" ratio=50");
    calc->require_subcommand(1);
    calc->fallthrough();
    const auto wanted = std::make_shared<Wanted>();

    CLI::App* listed = addCommand(*calc, "list", "Name all calculations", "undercowlctl calc list");
    listed->callback([&context] { context.action = [&context] { return list(context); }; });

    CLI::App* shown = addCommand(*calc, "show", "What a calculation asks, answers and rests on",
                                 "undercowlctl calc show torque-adapter");
    shown->add_option("NAME", wanted->name, "Calculation, see calc list")->required();
    shown->callback(
        [&context, wanted] { context.action = [&context, wanted] { return show(context, *wanted); }; });

    CLI::App* ran = addCommand(
        *calc, "run", "Work it out; exit 1 if the verdict is outside",
        "undercowlctl calc run torque-adapter torque=\"50 N.m\" wrench_length=300 adapter_length=50");
    ran->add_option("NAME", wanted->name, "Calculation, see calc list")->required();
    ran->add_option("INPUTS", wanted->inputs, "key=value; a value may carry any fitting unit");
    ran->callback(
        [&context, wanted] { context.action = [&context, wanted] { return run(context, *wanted); }; });
}

} // namespace undercowl::platform
