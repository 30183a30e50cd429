#include "core/trade/brake_fluids.h"
#include "core/trade/calculations.h"
#include "core/units/spelling.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace undercowl::trade {
namespace {

using units::Dimension;

constexpr std::array grades{
    BrakeFluidGrade{"DOT 3", FluidFamily::Glycol, 205, 140, 401, 284, "colourless to amber"},
    BrakeFluidGrade{"DOT 4", FluidFamily::Glycol, 230, 155, 446, 311, "colourless to amber"},
    BrakeFluidGrade{"DOT 5", FluidFamily::Silicone, 260, 180, 500, 356, "purple"},
    BrakeFluidGrade{"DOT 5.1", FluidFamily::Glycol, 260, 180, 500, 356, "colourless to amber"},
    BrakeFluidGrade{"mineral", FluidFamily::Mineral, 0, 0, 0, 0, "green"},
};

Outcome work(const Declaration& declaration, const Given& given) {
    const std::string possible = "DOT 3, DOT 4, DOT 5, DOT 5.1, mineral";
    const BrakeFluidGrade* present = brakeFluidGrade(given.text("in"));
    const BrakeFluidGrade* fresh = brakeFluidGrade(given.text("new"));
    const bool unknown = units::foldedSpelling(given.text("in")) == "unknown";
    if (present == nullptr && !unknown)
        return given.problem("in", "is not a grade that is known here", possible + ", unknown");
    if (fresh == nullptr)
        return given.problem("new", "is not a grade that is known here", possible);
    Result result(declaration);
    const bool mix = present != nullptr && present->family == fresh->family;
    std::string why =
        "glycol fluids of DOT 3, DOT 4 and DOT 5.1 mix; the result is no better than the lower grade";
    if (unknown)
        why = "not known what is in: do not mix; drain, clean and renew all rubber if in doubt";
    else if (!mix)
        why = fmt::format("{} and {} are different families: they attack each other's rubber and do not mix",
                          present->key, fresh->key);
    else if (fresh->family != FluidFamily::Glycol)
        why = "the same kind of fluid";
    result.put("may_mix", mix, (mix ? "yes: " : "no: ") + why);
    result.say(why);
    if (!mix)
        result.warn("change of family: strip, clean every passage with the right cleaner and renew all "
                    "rubber, then fill with the new fluid alone");
    // What stands in the circuit afterwards: the lower of the two where they mix, the new one alone where
    // they must not.
    const double dry = mix ? std::min(present->dry, fresh->dry) : fresh->dry;
    const double wet = mix ? std::min(present->wet, fresh->wet) : fresh->wet;
    if (dry > 0) {
        result.say(fmt::format("least boiling points of {}: dry {:g}, wet {:g} degC",
                               mix ? "the lower grade" : fresh->key, dry, wet));
        result.put("dry_boiling", dry);
        result.put("wet_boiling", wet);
    } else {
        result.warn("mineral oil has no boiling point in this standard: the maker's sheet gives it");
    }
    return result;
}

} // namespace

std::span<const BrakeFluidGrade> brakeFluidGrades() {
    return grades;
}

const BrakeFluidGrade* brakeFluidGrade(std::string_view key) {
    std::string bare;
    for (const char c : units::foldedSpelling(std::string(key)))
        if (c != ' ' && c != '-' && c != '_')
            bare += c;
    if (bare.starts_with("dot"))
        bare.erase(0, 3);
    std::replace(bare.begin(), bare.end(), ',', '.');
    if (bare.find("mineral") != std::string::npos || bare == "lhm")
        return &grades.back();
    for (const BrakeFluidGrade& grade : grades)
        if (bare == grade.key.substr(grade.key.find(' ') + 1))
            return &grade;
    return nullptr;
}

Calculation brakeFluid() {
    Declaration d;
    d.name = "brake-fluid";
    d.title = "Brake fluid";
    d.purpose = "Whether a new fluid may go onto what is in, and what it bears.";
    d.formula = {"glycol with glycol mixes; silicone, glycol and mineral oil never mix"};
    d.inputs = {text("in", "In the machine", "DOT 3, DOT 4, DOT 5, DOT 5.1, mineral or unknown"),
                text("new", "To be filled in", "DOT 3, DOT 4, DOT 5, DOT 5.1 or mineral")};
    d.outputs = {textOut("may_mix", "May mix"),
                 quantityOut("dry_boiling", "Least dry boiling point", Dimension::Temperature, "degC"),
                 quantityOut("wet_boiling", "Least wet boiling point", Dimension::Temperature, "degC")};
    d.sources = {"49 CFR 571.116 (FMVSS 116) S5.1.1 to S5.1.4 and S5.1.14: boiling points, colours",
                 "which mix: workshop advice, common practice"};
    d.cautions = {
        "the cap and the manual name the grade: use that one",
        "DOT 5 (silicone) and DOT 5.1 (glycol) sound alike and never mix",
        "brake fluid harms paint, skin and eyes; brakes are proved before the machine leaves the shop"};
    d.example = {{{"in", "DOT 3"}, {"new", "DOT 4"}}, {{"dry_boiling", "205"}, {"wet_boiling", "140"}}};
    return {d, work};
}

} // namespace undercowl::trade
