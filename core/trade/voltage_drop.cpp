#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <array>

namespace undercowl::trade {
namespace {

using units::Dimension;

struct Circuit {
    const char* key;
    const char* label;
    double volts; // at 12 V
    const char* source;
};

constexpr const char* cranking = "US Army TM 5-3820-256-24-4 (12 V cranking circuit table)";
constexpr const char* starter = "US Army TM 10-3930-671-24 (starter volt-drop tests)";
constexpr const char* practice = "common practice, no source";
constexpr std::array circuits{
    Circuit{"cable-short", "starter cable under 0.91 m", 0.1, cranking},
    Circuit{"cable-long", "starter cable 0.91 to 1.83 m", 0.2, cranking},
    Circuit{"mechanical-switch", "mechanical starter switch", 0.1, cranking},
    Circuit{"solenoid-switch", "solenoid switch", 0.2, cranking},
    Circuit{"magnetic-switch", "magnetic switch", 0.3, cranking},
    Circuit{"connection", "one connection", 0, cranking},
    Circuit{"starter-positive", "whole positive side of the starter", 0.5, cranking},
    Circuit{"starter-ground", "starter body to battery negative", 0.2, cranking},
    Circuit{"cranking", "cranking circuit, 0.20 V for each 100 A: give the current", 0.2, starter},
    Circuit{"battery-positive-cable", "battery post to starter solenoid", 0.4, starter},
    Circuit{"battery-clamp", "battery post to its clamp", 0, starter},
    Circuit{"starter-control", "starter control circuit, both windings on", 1.0,
            "US Army TM 5-2420-230-24-2"},
    Circuit{"lighting", "lighting feed plus return", 0.5, practice},
    Circuit{"switch", "ignition or kill switch, each contact", 0.2, practice},
    Circuit{"charging", "regulator output to battery positive", 0.2, practice},
    Circuit{"earth", "earth side of any load", 0.1,
            "small-engine equipment service manual, voltage-drop test"},
};

Outcome work(const Declaration& declaration, const Given& given) {
    const Circuit* circuit = circuits.data();
    for (const Circuit& candidate : circuits)
        if (given.text("circuit") == candidate.key)
            circuit = &candidate;
    Result result(declaration);
    const units::Unit volt = units::unit(Dimension::Voltage, "V");
    double limit = circuit->volts;
    verdict::LimitSource source{std::string_view(circuit->source) == practice ? verdict::Trust::WorkedOutHere
                                                                              : verdict::Trust::Standard,
                                circuit->source};
    if (std::string_view(circuit->key) == "cranking") {
        if (!given.has("current"))
            return given.problem("current", "is needed: this limit is 0.20 V for each 100 A",
                                 "the cranking current in A");
        limit = 0.2 * given.number("current") / 100;
    }
    if (given.text("nominal") == "6") {
        limit /= 2;
        result.warn("half the 12 V figure at 6 V: common practice, no source");
    }
    if (given.has("limit")) {
        limit = given.number("limit");
        source = {verdict::Trust::Manual, "as given"};
    }
    result.put("limit", limit);
    if (given.has("current")) {
        const double ohms = given.number("drop") / given.number("current");
        result.say(fmt::format("resistance = {:.4g} V/{:.4g} A = {:.4g} ohm", given.number("drop"),
                               given.number("current"), ohms));
        result.put("resistance", ohms * 1000, 6);
        result.put("power_lost", given.number("drop") * given.number("current"));
    }
    if (limit > 0) {
        verdict::Limits limits;
        limits.high = units::Quantity{limit, volt};
        limits.source = source;
        result.judge(given, given.quantity("drop"), limits);
        return result;
    }
    // A limit of nothing: anything that the meter can tell from zero is too much.
    result.say(fmt::format("any drop that the meter can tell from zero is too much: {}", circuit->source));
    result.decide(given.quantity("drop").base() > given.quantity("uncertainty").base()
                      ? verdict::Answer::Outside
                      : verdict::Answer::Within);
    return result;
}

} // namespace

Calculation voltageDrop() {
    Declaration d;
    d.name = "voltage-drop";
    d.title = "Voltage drop";
    d.purpose = "Whether a lead, switch or earth loses too much.";
    d.formula = {"drop against the limit of that part of the circuit", "R = V/I, P = V I"};
    std::vector<Choice> choices;
    choices.reserve(circuits.size());
    for (const Circuit& circuit : circuits)
        choices.push_back({circuit.key, circuit.label});
    d.inputs = {
        choice("circuit", "Part of the circuit", choices, "between the two probes"),
        quantity("drop", "Drop", Dimension::Voltage, "V", "measured while the load current flows")
            .range(0, 30),
        quantity("current", "Current", Dimension::Current, "A", "that flowed").optional().range(0.001, 1000),
        choice("nominal", "Nominal voltage", {{"12", "12 V"}, {"6", "6 V"}}, "of the machine")
            .withDefault("12"),
        quantity("limit", "Limit of the manual", Dimension::Voltage, "V", "replaces the table")
            .optional()
            .range(0.001, 30),
        uncertainty(Dimension::Voltage, "V", "0.01")};
    d.outputs = {quantityOut("limit", "Limit", Dimension::Voltage, "V"),
                 quantityOut("resistance", "Resistance", Dimension::Resistance, "mohm"),
                 quantityOut("power_lost", "Power lost", Dimension::Power, "W")};
    d.givesVerdict = true;
    d.sources = {cranking, starter, "US Army TM 5-2420-230-24-2", "Ohm's law",
                 "lighting, switch, charging: common practice, no source"};
    d.cautions = {"a drop means something only with the load current flowing",
                  "published limits differ and were made for heavier machines: the manual wins"};
    d.example = {{{"circuit", "starter-ground"}, {"drop", "0.16 V"}, {"current", "80 A"}},
                 {{"limit", "0.2"}, {"resistance", "2"}, {"power_lost", "12.8"}, {"verdict", "within"}}};
    return {d, work};
}

} // namespace undercowl::trade
