#include "core/trade/bolt_inputs.h"
#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <algorithm>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const auto bolt = readBolt(given);
    if (!bolt)
        return tl::unexpected(bolt.error());
    const bool soft = given.text("thread_in") == "aluminium";
    if (soft && !given.has("torque_limit"))
        return given.problem(
            "thread_in",
            "means that the thread strips before the bolt yields: a reduced limit is needed and is "
            "not guessed",
            "give torque_limit, the figure of the manual for this thread");
    Result result(declaration);
    const double area = nominalStressArea(bolt->thread);
    const double preload = given.number("utilisation") * bolt->grade.proofStress * area;
    double torque = bolt->nutFactor * bolt->thread.diameter / 1000 * preload;
    result.say(fmt::format("stress area As = pi/4 (d - 0.938194 P)^2 = {:.3f} mm2, {:.3g} mm2 in the table",
                           stressArea(bolt->thread), area));
    result.say(fmt::format("preload F = {:.3g} x {:g} MPa x {:.3g} mm2 = {:.0f} N",
                           given.number("utilisation"), bolt->grade.proofStress, area, preload));
    result.say(bolt->friction);
    result.say(fmt::format("torque T = K d F = {:.4f} x {:g} mm x {:.0f} N = {:.4g} N.m", bolt->nutFactor,
                           bolt->thread.diameter, preload, torque));
    if (given.has("torque_limit") && given.number("torque_limit") < torque) {
        torque = given.number("torque_limit");
        result.say(fmt::format("held to the limit given: {:.4g} N.m", torque));
    }
    const double held = torque / (bolt->nutFactor * bolt->thread.diameter / 1000);
    result.put("torque", torque);
    result.put("preload", std::min(preload, held));
    result.put("proof_load", proofLoad(bolt->thread, bolt->grade));
    result.put("stress_area", area);
    if (soft)
        result.warn("thread in aluminium: the limit given rules, whatever the bolt could bear");
    return result;
}

} // namespace

Calculation boltTorque() {
    Declaration d;
    d.name = "bolt-torque";
    d.title = "Torque for a bolt";
    d.purpose = "A torque for a bolt of known thread and class where the manual gives none.";
    d.formula = {"F = utilisation x Sp x As", "T = K d F"};
    d.inputs = boltInputs();
    d.inputs.push_back(number("utilisation", "Share of proof load", "how far the bolt is to be used")
                           .withDefault("0.75")
                           .range(0.05, 1));
    d.inputs.push_back(choice("thread_in", "Thread is in", {{"steel", "steel"}, {"aluminium", "aluminium"}},
                              "what the bolt screws into")
                           .withDefault("steel"));
    d.inputs.push_back(quantity("torque_limit", "Limit of the thread", Dimension::Torque, "N.m",
                                "the manual's figure for a soft thread")
                           .optional()
                           .range(0.1, 500));
    d.outputs = {quantityOut("torque", "Torque", Dimension::Torque, "N.m"),
                 quantityOut("preload", "Preload", Dimension::Force, "N"),
                 quantityOut("proof_load", "Proof load", Dimension::Force, "N"),
                 quantityOut("stress_area", "Stress area", Dimension::Area, "mm2")};
    d.sources = boltSources();
    d.cautions = boltCautions();
    d.validity = {"M3 to M16, property classes 4.6 to 12.9 of ISO 898-1"};
    d.example = {
        {{"thread", "M8"}, {"class", "8.8"}, {"nut_factor", "0.15"}},
        {{"torque", "19.1052"}, {"preload", "15921"}, {"proof_load", "21200"}, {"stress_area", "36.6"}}};
    return {d, work};
}

} // namespace undercowl::trade
