// Instruments as found in many shops, to start from. Their limits of error are from memory of makers' sheets:
// ordinary values, no certificate.
#include "core/verdict/instrument.h"

namespace undercowl::verdict {
namespace {

using units::Dimension;

Instrument ordinary(const char* name, InstrumentKind kind, Dimension dimension, const char* symbol,
                    double low, double high, double resolution, ErrorLimit limit, double feel = 0) {
    Instrument instrument;
    instrument.name = name;
    instrument.kind = kind;
    instrument.unit = units::unit(dimension, symbol);
    instrument.rangeLow = low;
    instrument.rangeHigh = high;
    instrument.resolution = resolution;
    instrument.limit = limit;
    instrument.limitSource = "ordinary instrument, from memory: replace by the maker's sheet";
    instrument.feel = feel;
    return instrument;
}

std::vector<Instrument> make() {
    using K = InstrumentKind;
    std::vector<Instrument> list{
        pressureGauge("tyre-gauge", 1.6, 400, units::unit(Dimension::GaugePressure, "kPa gauge"), 5),
        pressureGauge("compression-gauge", 1.6, 2000, units::unit(Dimension::GaugePressure, "kPa gauge"), 25),
        ordinary("multimeter", K::Multimeter, Dimension::Voltage, "V", 0, 20, 0.01, {0.5, 0, 2, 0}),
        ordinary("multimeter", K::Multimeter, Dimension::Current, "A", 0, 10, 0.01, {1, 0, 3, 0}),
        ordinary("multimeter", K::Multimeter, Dimension::Resistance, "ohm", 0, 20000, 0.1, {0.8, 0, 3, 0}),
        ordinary("caliper", K::Caliper, Dimension::Length, "mm", 0, 150, 0.01, {0, 0, 0, 0.03}),
        ordinary("micrometer", K::Other, Dimension::Length, "mm", 0, 25, 0.001, {0, 0, 0, 0.004}),
        ordinary("depth-gauge", K::Caliper, Dimension::Length, "mm", 0, 25, 0.1, {0, 0, 0, 0.05}),
        ordinary("feeler-gauge", K::FeelerGauge, Dimension::Length, "mm", 0.03, 1, 0.01, {0, 0, 0, 0.005},
                 0.02),
        ordinary("hydrometer", K::Hydrometer, Dimension::Number, "1", 1.1, 1.3, 0.005, {0, 0, 0, 0.005}),
        ordinary("thermometer", K::Thermometer, Dimension::Temperature, "degC", -20, 150, 0.1, {0, 0, 0, 1}),
    };
    struct Wrench {
        const char* name;
        double low;
        double high;
        double division;
    };
    for (const Wrench& wrench :
         {Wrench{"torque-wrench-5", 1, 5, 0.05}, Wrench{"torque-wrench-25", 5, 25, 0.1},
          Wrench{"torque-wrench-100", 20, 100, 0.5}, Wrench{"torque-wrench-200", 40, 200, 1}})
        if (auto made = torqueWrench(wrench.name, WrenchType::Setting, 'A', wrench.low, wrench.high,
                                     units::unit(Dimension::Torque, "N.m"), wrench.division))
            list.push_back(*std::move(made));
    return list;
}

} // namespace

const std::vector<Instrument>& ordinaryInstruments() {
    static const std::vector<Instrument> list = make();
    return list;
}

const Instrument* ordinaryInstrument(std::string_view name, Dimension dimension) {
    for (const Instrument& instrument : ordinaryInstruments())
        if (instrument.name == name && instrument.unit.dimension() == dimension)
            return &instrument;
    return nullptr;
}

} // namespace undercowl::verdict
