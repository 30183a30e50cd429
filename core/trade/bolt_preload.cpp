#include "core/trade/bolt_inputs.h"
#include "core/trade/calculations.h"

#include <fmt/format.h>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const auto bolt = readBolt(given);
    if (!bolt)
        return tl::unexpected(bolt.error());
    const double metres = bolt->nutFactor * bolt->thread.diameter / 1000;
    const double preload = given.number("torque") / metres;
    const double proof = proofLoad(bolt->thread, bolt->grade);
    if (preload > proof)
        return given.problem("torque",
                             fmt::format("would stretch this bolt past its proof load of {:.0f} N", proof),
                             fmt::format("up to {:.3g} N.m with this friction", proof * metres));
    Result result(declaration);
    result.say(bolt->friction);
    result.say(fmt::format("preload F = T/(K d) = {:.4g} N.m/({:.4f} x {:g} mm) = {:.0f} N",
                           given.number("torque"), bolt->nutFactor, bolt->thread.diameter, preload));
    result.say(fmt::format("proof load {:.0f} N: share {:.3f}", proof, preload / proof));
    result.put("preload", preload);
    result.put("share_of_proof", preload / proof);
    result.put("proof_load", proof);
    return result;
}

} // namespace

Calculation boltPreload() {
    Declaration d;
    d.name = "bolt-preload";
    d.title = "Preload from a torque";
    d.purpose = "What a torque does to a bolt: how near to its proof load.";
    d.formula = {"F = T/(K d)", "share = F/proof load"};
    d.inputs = boltInputs();
    d.inputs.insert(d.inputs.begin() + 2, quantity("torque", "Torque", Dimension::Torque, "N.m",
                                                   "the torque that is or was applied")
                                              .range(0.05, 1000));
    d.outputs = {quantityOut("preload", "Preload", Dimension::Force, "N"),
                 numberOut("share_of_proof", "Share of proof load"),
                 quantityOut("proof_load", "Proof load", Dimension::Force, "N")};
    d.sources = boltSources();
    d.cautions = boltCautions();
    d.validity = {"refused where the torque would pass the bolt's proof load"};
    d.example = {{{"thread", "M8"}, {"class", "8.8"}, {"torque", "22 N.m"}, {"nut_factor", "0.18"}},
                 {{"preload", "15277.78"}, {"share_of_proof", "0.72065"}}};
    return {d, work};
}

} // namespace undercowl::trade
