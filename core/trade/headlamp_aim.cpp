#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <numbers>

namespace undercowl::trade {
namespace {

using units::Dimension;

struct AimRule {
    const char* key;
    double low; // per cent, for lamps up to 850 mm
    double high;
    double lowAbove; // for higher ones
    double highAbove;
    const char* source;
    bool advisory;
};

constexpr std::array rules{
    AimRule{"UK", 0.5, 2.0, 1.25, 2.75, "UK MOT inspection manual (quoted in a beam-setter manual)", false},
    AimRule{"R53", 0.5, 2.5, 0.5, 2.5,
            "UNECE R53 as explained in a presentation of its amendments (2006-2007)", true},
    AimRule{"1-percent", 1.0, 1.0, 1.0, 1.0,
            "UNECE R112 cut-off quality annex: cut-off one per cent below horizontal", false},
};

double angleDegrees(double percent) {
    return std::atan(percent / 100) * 180 / std::numbers::pi;
}

Outcome work(const Declaration& declaration, const Given& given) {
    const AimRule* rule = rules.data();
    for (const AimRule& candidate : rules)
        if (given.text("rule") == candidate.key)
            rule = &candidate;
    const bool high = given.number("lamp_height") > 850;
    const double low = high ? rule->lowAbove : rule->low;
    const double most = high ? rule->highAbove : rule->high;
    const double distance = given.in("distance", Dimension::Length, "mm");
    if (most / 100 * distance > given.number("lamp_height"))
        return given.problem(
            "distance", "is so long that the beam would reach the ground first",
            fmt::format("up to {:.3g} m for this lamp height", given.number("lamp_height") / most / 10));
    Result result(declaration);
    const double from = low / 100 * distance;
    const double to = most / 100 * distance;
    result.say(fmt::format("{}: lamp centre {} 850 mm: {:g} to {:g} % down ({:.3f} to {:.3f} deg)",
                           rule->source, high ? "above" : "up to", low, most, angleDegrees(low),
                           angleDegrees(most)));
    result.say(fmt::format("drop = per cent/100 x distance = {:.1f} to {:.1f} mm", from, to));
    if (rule->advisory)
        result.warn("this band was read in a summary only: advisory");
    result.put("drop_min", from, 5);
    result.put("drop_max", to, 5);
    result.put("angle_min", angleDegrees(low));
    result.put("angle_max", angleDegrees(most));
    if (!given.has("drop"))
        return result;
    const double drop = given.number("drop");
    if (low == most) {
        // A line, not a band: within what the tape can tell.
        const double off = drop - from;
        const double can = given.number("uncertainty");
        result.say(fmt::format("{:.1f} mm from the line; the tape tells {:.3g} mm", off, can));
        result.decide(std::fabs(off) <= can ? verdict::Answer::Within : verdict::Answer::Outside);
        result.put("turn", std::string(std::fabs(off) <= can ? "leave" : off < 0 ? "down" : "up"));
        return result;
    }
    verdict::Limits limits;
    const units::Unit mm = units::unit(Dimension::Length, "mm");
    limits.low = units::Quantity{from, mm};
    limits.high = units::Quantity{to, mm};
    limits.source = {verdict::Trust::Standard, rule->source};
    result.judge(given, given.quantity("drop"), limits);
    const bool leave = result.answer == verdict::Answer::Within;
    result.put("turn", std::string(leave ? "leave" : drop < (from + to) / 2 ? "down" : "up"));
    return result;
}

} // namespace

Calculation headlampAim() {
    Declaration d;
    d.name = "headlamp-aim";
    d.title = "Headlamp aim";
    d.purpose = "Where the cut-off of the dipped beam belongs on a wall, and which way to turn the lamp.";
    d.formula = {"drop = per cent/100 x distance", "angle = atan(per cent/100)"};
    d.inputs = {
        quantity("lamp_height", "Height of the lamp", Dimension::Length, "mm",
                 "centre of the lamp above the ground, rider on")
            .range(300, 1500),
        quantity("distance", "Distance to the wall", Dimension::Length, "m", "from the lamp").range(1, 100),
        choice("rule", "Rule",
               {{"UK", "UK inspection"}, {"R53", "UNECE R53"}, {"1-percent", "one per cent line"}},
               "whose limits apply")
            .withDefault("UK"),
        quantity("drop", "Drop measured", Dimension::Length, "mm",
                 "cut-off on the wall below the lamp's centre")
            .optional()
            .range(-2000, 5000),
        uncertainty(Dimension::Length, "mm", "5")};
    d.outputs = {quantityOut("drop_min", "Least drop", Dimension::Length, "mm"),
                 quantityOut("drop_max", "Greatest drop", Dimension::Length, "mm"),
                 textOut("turn", "Turn the beam"),
                 quantityOut("angle_min", "Least angle", Dimension::Angle, "deg"),
                 quantityOut("angle_max", "Greatest angle", Dimension::Angle, "deg")};
    d.givesVerdict = true;
    d.sources = {"UK MOT inspection manual (quoted in a beam-setter manual)",
                 "UNECE R112 (one per cent line); UNECE R53 (advisory)", "drop and angle: geometry"};
    d.cautions = {"the law of the place applies",
                  "level ground, tyres at pressure, rider on, suspension bounced"};
    d.example = {{{"lamp_height", "780 mm"}, {"distance", "5 m"}, {"rule", "UK"}, {"drop", "60 mm"}},
                 {{"drop_min", "25"}, {"drop_max", "100"}, {"turn", "leave"}, {"verdict", "within"}}};
    return {d, work};
}

} // namespace undercowl::trade
