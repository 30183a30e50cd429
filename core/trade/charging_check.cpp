#include "core/trade/calculations.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

struct Band {
    double low;
    double high;
    const char* expectation;
};

// Facts of the trade, common practice, no source; for 12 V.
Band usual(const std::string& system) {
    if (system == "single-phase")
        return {13.0, 14.8, "an old single-phase alternator gives about 13.5 V at best"};
    if (system == "three-phase")
        return {14.0, 15.0, "a three-phase alternator gives about 14.5 V"};
    return {13.2, 15.0, "a dynamo with a good regulator gives about 14 V"};
}

std::vector<std::string> noCharge(const std::string& system) {
    std::vector<std::string> causes{"fuse and connectors between regulator and battery",
                                    "earth of regulator and engine"};
    if (system == "dynamo")
        causes.insert(causes.end(),
                      {"brushes and commutator", "cut-out or regulator contacts", "field winding"});
    else
        causes.insert(causes.end(),
                      {"connector between alternator and regulator (heat, green copper)",
                       "alternator winding open or to earth: measure its AC voltage and resistance",
                       "regulator or rectifier"});
    return causes;
}

std::vector<std::string> tooLow(const std::string& system) {
    std::vector<std::string> causes{"voltage drop in leads and earth: measure it with voltage-drop",
                                    "more lamps or larger bulbs than the generator feeds: see lamp-budget",
                                    "battery sulphated or with a bad cell: charge it and repeat"};
    if (system == "three-phase")
        causes.emplace_back("one phase missing: compare the three AC voltages");
    if (system == "dynamo")
        causes.emplace_back("worn brushes, slipping belt or regulator out of adjustment");
    else
        causes.insert(causes.end(),
                      {"alternator winding partly shorted, magnets weak", "regulator or rectifier"});
    return causes;
}

Outcome work(const Declaration& declaration, const Given& given) {
    const std::string& system = given.text("system");
    const double scale = given.text("nominal") == "6" ? 0.5 : 1;
    const double rest = given.number("rest");
    const double revs = given.number("revs");
    if (rest > 16 * scale)
        return given.problem("rest", "is more than a battery at rest shows",
                             fmt::format("up to {:g} V", 16 * scale));
    const Band band = usual(system);
    const bool manual = given.has("limit_low") || given.has("limit_high");
    verdict::Limits limits;
    const units::Unit volt = units::unit(Dimension::Voltage, "V");
    if (manual) {
        if (given.has("limit_low"))
            limits.low = given.quantity("limit_low");
        if (given.has("limit_high"))
            limits.high = given.quantity("limit_high");
        if (limits.low && limits.high && limits.low->base() >= limits.high->base())
            return given.problem("limit_low", "is not below limit_high", "the manual's two figures");
        limits.source = {verdict::Trust::Manual, "as given"};
    } else {
        limits.low = units::Quantity{band.low * scale, volt};
        limits.high = units::Quantity{band.high * scale, volt};
        limits.source = {verdict::Trust::WorkedOutHere, "common practice, no source"};
    }
    Result result(declaration);
    if (!manual)
        result.say(fmt::format("{}{}", band.expectation, scale < 1 ? " at 12 V, half of that at 6 V" : ""));
    result.say(fmt::format("rest {:.4g} V, idle {:.4g} V, revs {:.4g} V: rise {:.3g} V", rest,
                           given.number("idle"), revs, revs - rest));
    result.judge(given, given.quantity("revs"), limits);
    std::vector<std::string> causes;
    // A charging system that lifts the battery by less than this does not charge.
    const double rise = 0.2 * scale;
    const bool low = result.verdict && result.verdict->low && revs < result.verdict->low->in(volt);
    const bool high = result.verdict && result.verdict->high && revs > result.verdict->high->in(volt);
    if (result.answer == verdict::Answer::Within) {
        if (rest < 10.5 * scale) // one of six cells gone
            causes = {"battery: it rests as low as with a dead cell; charge and test it, then measure again"};
        else if (rest < 12.2 * scale)
            result.warn("it charges, but the battery was low at rest: charge and test it");
    } else if (!high && rest < 12.2 * scale) {
        // The system may be sound: an empty battery takes all that it gives.
        causes = {"battery: it was low at rest, and an empty one holds the voltage down; charge and test it, "
                  "then measure again"};
        const auto more = revs - rest < rise ? noCharge(system) : tooLow(system);
        causes.insert(causes.end(), more.begin(), more.end());
    } else if (high) {
        causes = {"regulator, or its earth or sensing lead", "battery with an open cell or loose terminal"};
        if (system == "dynamo")
            causes.emplace_back("regulator contacts stuck");
        result.warn("overcharging boils the battery and blows bulbs: do not ride on");
    } else if (revs - rest < rise) {
        causes = noCharge(system);
    } else if (low || result.answer == verdict::Answer::TooClose) {
        causes = tooLow(system);
    }
    if (given.number("idle") < rest)
        result.warn(
            "at idle the battery still gives: usual for an old alternator with the lamps on, else look "
            "at idle speed and lamps (common practice, no source)");
    if (given.number("idle") > revs + rise)
        result.warn("falls with revs: a connection or the regulator fails as current rises; measure again");
    result.put("causes", causes);
    const auto limit = [&](const std::optional<units::Quantity>& end) {
        return end ? std::optional(end->in(volt)) : std::nullopt;
    };
    result.plot = Plot{volt,
                       {{0, rest, "rest"}, {1, given.number("idle"), "idle"}, {2, revs, "revs"}},
                       limit(limits.low),
                       limit(limits.high),
                       "battery"};
    return result;
}

} // namespace

Calculation chargingCheck() {
    Declaration d;
    d.name = "charging-check";
    d.title = "Does it charge?";
    d.purpose = "Battery voltage at rest, at idle and at revs: whether the charging system works and what to "
                "look at.";
    d.formula = {"revs against the expected band; the rise over rest tells no charge from weak charge"};
    d.inputs = {
        quantity("rest", "At rest", Dimension::Voltage, "V", "engine off, a while after riding").range(0, 20),
        quantity("idle", "At idle", Dimension::Voltage, "V", "engine warm, lamps on").range(0, 30),
        quantity("revs", "At revs", Dimension::Voltage, "V",
                 "at the speed the manual names, often 4000 to 5000 rpm")
            .range(0, 30),
        choice("system", "System",
               {{"single-phase", "single-phase alternator"},
                {"three-phase", "three-phase alternator"},
                {"dynamo", "dynamo"}},
               "two or three wires from the alternator; brushes: a dynamo"),
        choice("nominal", "Nominal voltage", {{"12", "12 V"}, {"6", "6 V"}}, "printed on the battery")
            .withDefault("12"),
        quantity("limit_low", "Lower limit of the manual", Dimension::Voltage, "V", "replaces the usual band")
            .optional()
            .range(0, 20),
        quantity("limit_high", "Upper limit of the manual", Dimension::Voltage, "V",
                 "replaces the usual band")
            .optional()
            .range(0, 20),
        uncertainty(Dimension::Voltage, "V", "0.1")};
    d.outputs = {textOut("causes", "Where to look, likeliest first")};
    d.givesVerdict = true;
    d.sources = {"default bands and order of causes: facts of the trade, common practice, no source",
                 "the manual's limit replaces them"};
    d.cautions = {"the usual band is worked out here: the manual wins",
                  "running engine: exhaust gas, hot parts, loose clothing",
                  "never run an alternator with the battery off: the spike destroys regulator and lamps"};
    d.validity = {"battery charged and connected, warm engine"};
    d.example = {{{"rest", "12.5"}, {"idle", "13.1"}, {"revs", "14.5"}, {"system", "three-phase"}},
                 {{"causes", "none"}, {"verdict", "within"}}};
    return {d, work};
}

} // namespace undercowl::trade
