#include "core/trade/bulbs.h"
#include "core/trade/calculations.h"
#include "core/units/spelling.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace undercowl::trade {
namespace {

using units::Dimension;

constexpr std::array table{
    Bulb{"H4", 60, 55, false, "P43t", true},        Bulb{"HS1", 35, 35, false, "PX43t", true},
    Bulb{"H1", 55, 0, false, "P14.5s", true},       Bulb{"H3", 55, 0, false, "PK22s", true},
    Bulb{"P21W", 21, 0, false, "BA15s", true},      Bulb{"PY21W", 21, 0, false, "BAU15s", true},
    Bulb{"W5W", 5, 0, false, "W2.1x9.5d", true},    Bulb{"R2", 45, 40, false, "P45t", false},
    Bulb{"S1", 25, 25, false, "BA20d", false},      Bulb{"S2", 35, 35, false, "BA20d", false},
    Bulb{"S3", 15, 0, false, "P26s", false},        Bulb{"S4", 15, 15, false, "BAX15d", false},
    Bulb{"HS2", 15, 0, false, "PX13.5s", false},    Bulb{"P21/5W", 21, 5, true, "BAY15d", false},
    Bulb{"PY21/5W", 21, 5, true, "BA15d-3", false}, Bulb{"R5W", 5, 0, false, "BA15s", false},
    Bulb{"R10W", 10, 0, false, "BA15s", false},     Bulb{"RY10W", 10, 0, false, "BAU15s", false},
    Bulb{"T4W", 4, 0, false, "BA9s", false},        Bulb{"H6W", 6, 0, false, "BAX9s", false},
    Bulb{"W3W", 3, 0, false, "W2.1x9.5d", false},   Bulb{"W2.3W", 2.3, 0, false, "W2x4.6d", false},
    Bulb{"C5W", 5, 0, false, "SV8.5", false}};

std::string typeList() {
    std::string list;
    for (const Bulb& bulb : table)
        list.append(list.empty() ? "" : ", ").append(bulb.type);
    return list;
}

// At commas, semicolons and plus signs, but not inside "2,3 W".
std::vector<std::string> items(const std::string& text) {
    std::vector<std::string> list(1);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool decimal = text[i] == ',' && i > 0 && i + 1 < text.size() && text[i - 1] >= '0' &&
                             text[i - 1] <= '9' && text[i + 1] >= '0' && text[i + 1] <= '9';
        if ((text[i] == ',' && !decimal) || text[i] == ';' || text[i] == '+')
            list.emplace_back();
        else
            list.back() += text[i];
    }
    return list;
}

struct Lamp {
    double watts = 0;
    std::string text;
    bool memory = false;
};

// "60/55 W": two filaments. Two that are alike are main and dipped beam, of which one burns; a small one
// beside a large one is the tail lamp beside the stop lamp, and both do.
std::optional<Lamp> twoFilaments(const std::string& item, int count) {
    const auto slash = item.find('/');
    if (slash == std::string::npos)
        return std::nullopt;
    const units::Unit watt = units::unit(Dimension::Power, "W");
    const auto one = units::parseQuantity(item.substr(0, slash), Dimension::Power, watt);
    const auto other = units::parseQuantity(item.substr(slash + 1), Dimension::Power, watt);
    if (!one || !other)
        return std::nullopt;
    const double larger = std::max(one->quantity().base(), other->quantity().base());
    const double smaller = std::min(one->quantity().base(), other->quantity().base());
    if (smaller <= 0 || larger > 1000)
        return std::nullopt;
    const bool both = smaller < larger / 2;
    const double load = count * (both ? larger + smaller : larger);
    return Lamp{load,
                fmt::format("{} x {} = {:g} W, {}", count, item, load,
                            both ? "tail and stop together" : "one filament at a time"),
                false};
}

std::optional<Lamp> readLamp(std::string item) {
    int count = 1;
    item = units::plainBlanks(item);
    std::string folded = units::foldedSpelling(item);
    // "2 x P21W", "2x P21W" or "P21W x2".
    const auto digit = [&](std::size_t i) {
        return i < folded.size() && folded[i] >= '1' && folded[i] <= '9';
    };
    std::size_t skip = 1;
    while (skip < folded.size() && folded[skip] == ' ')
        ++skip;
    if (digit(0) && skip < folded.size() && folded[skip] == 'x') {
        count = folded[0] - '0';
        item = units::plainBlanks(item.substr(skip + 1));
    } else if (const auto cross = folded.find_last_of('x');
               cross != std::string::npos && cross > 0 && folded[cross - 1] == ' ') {
        const std::string after = units::plainBlanks(folded.substr(cross + 1));
        if (after.size() == 1 && after[0] >= '1' && after[0] <= '9') {
            count = after[0] - '0';
            item = units::plainBlanks(item.substr(0, cross));
        }
    }
    folded = units::foldedSpelling(item);
    for (const Bulb& bulb : table) {
        if (units::foldedSpelling(std::string(bulb.type)) != folded)
            continue;
        const double each = bulb.watts + (bulb.both ? bulb.second : 0);
        return Lamp{count * each, fmt::format("{} x {} = {:g} W", count, bulb.type, count * each),
                    !bulb.published};
    }
    if (auto two = twoFilaments(item, count))
        return two;
    const auto watts = units::parseQuantity(item, Dimension::Power, units::unit(Dimension::Power, "W"));
    if (!watts || watts->number.value < 0 || watts->quantity().base() > 1000)
        return std::nullopt;
    const double each = watts->quantity().base();
    return Lamp{count * each, fmt::format("{} x {:g} W = {:g} W", count, each, count * each), false};
}

Outcome work(const Declaration& declaration, const Given& given) {
    Result result(declaration);
    double load = 0;
    bool memory = false;
    for (const std::string& item : items(given.text("lamps"))) {
        const auto lamp = readLamp(item);
        if (!lamp)
            return given.problem(
                "lamps", "\"" + units::plainBlanks(item) + "\" is neither a bulb type nor a power",
                "watts such as 5 W or 35/35 W, or one of " + typeList() + "; \"2 x P21W\" for two");
        load += lamp->watts;
        memory = memory || lamp->memory;
        result.say(lamp->text);
    }
    if (memory)
        result.warn("some of these bulbs' watts are from memory: read them on the bulb");
    const double spare = given.number("generator") - load;
    result.say(fmt::format("spare = {:.4g} W - {:.4g} W = {:.4g} W", given.number("generator"), load, spare));
    result.put("load", load);
    result.put("spare", spare);
    if (spare < 0) {
        result.warn("the battery pays the difference: it goes flat while riding");
        result.decide(verdict::Answer::Outside);
    }
    return result;
}

} // namespace

std::span<const Bulb> bulbs() {
    return table;
}

Calculation lampBudget() {
    Declaration d;
    d.name = "lamp-budget";
    d.title = "Lamps and generator";
    d.purpose = "Whether the generator feeds all that is lit at once.";
    d.formula = {"load = sum of the watts that burn together", "spare = generator - load"};
    d.inputs = {text("lamps", "Lamps",
                     "bulb types or watts that burn together, separated by commas: H4, 2 x P21W, 5 W"),
                quantity("generator", "Generator", Dimension::Power, "W", "rated output at riding speed")
                    .range(1, 2000)};
    d.outputs = {quantityOut("load", "Load", Dimension::Power, "W"),
                 quantityOut("spare", "Spare", Dimension::Power, "W")};
    d.givesVerdict = true;
    d.sources = {"rated watts and caps: UNECE R37; those marked in the working are from memory"};
    d.cautions = {"rated watts at 12 V: at 13.5 V a bulb draws about a sixth more",
                  "H4 (P43t) and HS1 (PX43t) are not alike: do not swap them",
                  "a generator gives its rating only at revs; ignition and charging need their share"};
    d.validity = {"of a headlamp's two filaments the larger counts; tail and stop count together"};
    d.example = {{{"lamps", "HS1, P21W, 2 x W5W"}, {"generator", "90 W"}}, {{"load", "66"}, {"spare", "24"}}};
    return {d, work};
}

} // namespace undercowl::trade
