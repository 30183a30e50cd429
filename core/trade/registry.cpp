#include "core/trade/registry.h"

#include "core/trade/calculations.h"

namespace undercowl::trade {

const std::vector<Calculation>& calculations() {
    static const std::vector<Calculation> all{
        airDensity(),    batteryChargeState(), boltPreload(), boltTorque(),
        brakeFluid(),    chargingCheck(),      compression(), compressionRatio(),
        convert(),       flushVolume(),        gearing(),     headlampAim(),
        jetting(),       lampBudget(),         leakDown(),    nextDue(),
        premix(),        resistanceCheck(),    shim(),        speedometer(),
        standingDrain(), tighteningOrder(),    timing(),      torqueAdapter(),
        tread(),         tyreDate(),           tyreMarking(), tyrePressureShift(),
        vin(),           voltageDrop(),        wear(),        wireAndFuse(),
    };
    return all;
}

const Calculation* findCalculation(std::string_view name) {
    for (const Calculation& calculation : calculations())
        if (calculation.declaration.name == name)
            return &calculation;
    return nullptr;
}

Outcome run(const Calculation& calculation, const std::map<std::string, std::string>& typed,
            units::Date today) {
    const auto given = Given::read(calculation.declaration, typed, today);
    if (!given)
        return tl::unexpected(given.error());
    return calculation.work(calculation.declaration, *given);
}

} // namespace undercowl::trade
