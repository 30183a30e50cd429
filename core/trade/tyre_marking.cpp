#include "core/trade/calculations.h"
#include "core/trade/tyres.h"
#include "core/units/spelling.h"

#include <fmt/format.h>

#include <array>
#include <numbers>
#include <regex>

namespace undercowl::trade {
namespace {

using units::Dimension;

constexpr std::array<int, 51> loads{106, 109, 112, 115, 118, 121, 125, 128, 132, 136, 140, 145, 150,
                                    155, 160, 165, 170, 175, 180, 185, 190, 195, 200, 206, 212, 218,
                                    224, 230, 236, 243, 250, 257, 265, 272, 280, 290, 300, 307, 315,
                                    325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450};

struct Symbol {
    char letter;
    int speed;
};
constexpr std::array symbols{Symbol{'B', 50},  Symbol{'C', 60},  Symbol{'D', 65},  Symbol{'E', 70},
                             Symbol{'F', 80},  Symbol{'G', 90},  Symbol{'J', 100}, Symbol{'K', 110},
                             Symbol{'L', 120}, Symbol{'M', 130}, Symbol{'N', 140}, Symbol{'P', 150},
                             Symbol{'Q', 160}, Symbol{'R', 170}, Symbol{'S', 180}, Symbol{'T', 190},
                             Symbol{'U', 200}, Symbol{'H', 210}, Symbol{'V', 240}, Symbol{'W', 270},
                             Symbol{'Y', 300}};

double decimal(const std::string& text) {
    const auto number = units::parseNumber(text, units::Comma::Decimal);
    return number ? number->value : 0;
}

Outcome work(const Declaration& declaration, const Given& given) {
    const std::string possible = "such as 100/90-10 56J, 120/70 R 12 58P or 3.50-10 59J";
    const std::string& typed = given.text("marking");
    if (typed.size() > 60)
        return given.problem("marking", "is too long for a tyre marking", possible);
    std::string marking = units::foldedSpelling(typed);
    for (char& c : marking)
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    static const std::regex metric(R"(^(\d{2,3})\s*/\s*(\d{2,3})\s*(?:-|Z?R|B|\s)\s*(\d{1,2})\b(.*)$)");
    static const std::regex inches(R"(^(\d{1,2}(?:[.,]\d{1,2})?)\s*(?:-|R|\s)\s*(\d{1,2})\b(.*)$)");
    static const std::regex service(R"(\(?\b(\d{2})\s*([A-Z])\b\)?)");
    std::smatch match;
    double width = 0;
    double aspect = 1;
    std::string rest;
    double rim = 0;
    bool inchWidth = false;
    if (std::regex_match(marking, match, metric)) {
        width = decimal(match[1]);
        aspect = decimal(match[2]) / 100;
        rim = decimal(match[3]);
        rest = match[4];
    } else if (std::regex_match(marking, match, inches)) {
        inchWidth = true;
        width = decimal(match[1]) * 25.4;
        rim = decimal(match[2]);
        rest = match[3];
    } else {
        return given.problem("marking", "is not a marking that is read here", possible);
    }
    if (width < 40 || width > 400 || aspect < 0.3 || aspect > 1.2 || rim < 4 || rim > 26)
        return given.problem("marking", "has a width, aspect or rim beyond motorcycle tyres", possible);
    const double diameter = rim * 25.4 + 2 * width * aspect;
    Result result(declaration);
    result.say(fmt::format("diameter = {:g} in x 25.4 + 2 x {:.4g} mm x {:.4g} = {:.1f} mm", rim, width,
                           aspect, diameter));
    result.put("width", width);
    result.put("rim", rim);
    result.put("diameter", diameter);
    result.put("circumference", diameter * std::numbers::pi);
    if (inchWidth)
        result.warn("an inch marking names no height: it is taken as equal to the width (common practice, no "
                    "source)");
    if (!std::regex_search(rest, match, service)) {
        result.warn("no load index and speed symbol in the marking");
        return result;
    }
    if (const auto load = loadOfIndex(static_cast<int>(decimal(match[1])))) {
        result.put("load", *load);
        if (given.has("carried")) {
            const double carried = given.number("carried");
            result.say(fmt::format("rider and luggage are {:g} kg; a pair of these tyres holds {:g} kg of "
                                   "machine, rider and luggage together",
                                   carried, 2 * *load));
            if (carried >= *load)
                result.warn("rider and luggage alone are as much as one of these tyres holds, and most of it "
                            "rests on the rear: look up the machine's highest load");
        }
    } else
        result.warn("load index " + match[1].str() +
                    " is outside the table of 30 to 80: look it up in the maker's book");
    if (const auto speed = speedOfSymbol(match[2].str().front()))
        result.put("speed", *speed);
    else
        result.warn("speed symbol " + match[2].str() + " has no fixed speed in the table");
    return result;
}

} // namespace

std::optional<double> loadOfIndex(int index) {
    if (index < 30 || index > 80)
        return std::nullopt;
    return loads.at(static_cast<std::size_t>(index - 30));
}

std::optional<double> speedOfSymbol(char symbol) {
    for (const Symbol& entry : symbols)
        if (entry.letter == symbol)
            return entry.speed;
    return std::nullopt;
}

Calculation tyreMarking() {
    Declaration d;
    d.name = "tyre-marking";
    d.title = "Marking of a tyre";
    d.purpose = "Size, load and speed from what is moulded into the wall.";
    d.formula = {"diameter = rim x 25.4 + 2 x width x aspect", "circumference = pi x diameter"};
    d.inputs = {text("marking", "Marking", "such as 100/90-10 56J or 3.50-10 59J"),
                quantity("carried", "Rider and luggage", Dimension::Mass, "kg", "what the machine will carry")
                    .range(0, 1000)
                    .optional()};
    d.outputs = {quantityOut("width", "Width", Dimension::Length, "mm"),
                 quantityOut("rim", "Rim", Dimension::Length, "in"),
                 quantityOut("diameter", "Diameter", Dimension::Length, "mm"),
                 quantityOut("circumference", "Circumference", Dimension::Length, "mm"),
                 quantityOut("load", "Load", Dimension::Mass, "kg"),
                 quantityOut("speed", "Speed", Dimension::Speed, "km/h")};
    d.sources = {"load index: UNECE R75 and ISO 5751-1", "speed symbol: UNECE R75 and R30"};
    d.cautions = {"nominal sizes of an unloaded tyre: a loaded one rolls a few per cent shorter",
                  "the load holds at the tyre's reference pressure",
                  "fit only sizes that the machine's papers allow"};
    d.validity = {"load index 30 to 80, speed symbols with a fixed speed"};
    d.example = {{{"marking", "100/90-10 56J"}},
                 {{"width", "100"},
                  {"rim", "10"},
                  {"diameter", "434"},
                  {"circumference", "1363.45"},
                  {"load", "224"},
                  {"speed", "100"}}};
    return {d, work};
}

} // namespace undercowl::trade
