#include "core/talk/vocabulary.h"

#include "core/units/unit.h"

#include <algorithm>
#include <array>

namespace undercowl::talk {
namespace {

constexpr std::array units{
    SpokenUnit{Measured::Torque, "N.m", "newton metres", 0.5, 400, 3, 2},
    SpokenUnit{Measured::Torque, "lbf.ft", "foot pounds", 0.5, 300, 3, 2},
    SpokenUnit{Measured::FrontTyre, "bar", "bar", 0.3, 6, 1, 2},
    SpokenUnit{Measured::FrontTyre, "psi", "p s i", 4, 90, 2, 1},
    SpokenUnit{Measured::FrontTyre, "kPa", "kilopascals", 30, 600, 3, 1},
    SpokenUnit{Measured::RearTyre, "bar", "bar", 0.3, 6, 1, 2},
    SpokenUnit{Measured::RearTyre, "psi", "p s i", 4, 90, 2, 1},
    SpokenUnit{Measured::RearTyre, "kPa", "kilopascals", 30, 600, 3, 1},
    SpokenUnit{Measured::Battery, "V", "volts", 0, 90, 2, 2},
    SpokenUnit{Measured::Tread, "mm", "millimetres", 0, 20, 2, 2},
};

struct UnitWords {
    std::string_view symbol;
    std::string_view one;
    std::string_view many;
};

// How they are said in a workshop, where that is not the name in the table of units.
constexpr std::array said{
    UnitWords{"N.m", "newton metre", "newton metres"},
    UnitWords{"lbf.ft", "foot pound", "foot pounds"},
    UnitWords{"lbf.in", "inch pound", "inch pounds"},
    UnitWords{"kgf.m", "kilogram metre", "kilogram metres"},
    UnitWords{"bar", "bar", "bar"},
    UnitWords{"psi", "p s i", "p s i"},
    UnitWords{"kPa", "kilopascal", "kilopascals"},
    UnitWords{"%", "per cent", "per cent"},
    UnitWords{"km/h", "kilometre an hour", "kilometres an hour"},
    UnitWords{"mph", "mile an hour", "miles an hour"},
    UnitWords{"rpm", "turn a minute", "turns a minute"},
    UnitWords{"degC", "degree", "degrees"},
    UnitWords{"\u00b0C", "degree", "degrees"},
    UnitWords{"A", "amp", "amps"},
    UnitWords{"mA", "milliamp", "milliamps"},
    UnitWords{"in", "inch", "inches"},
    UnitWords{"ft", "foot", "feet"},
};

const std::vector<SpokenTerminal>& terminals() {
    using Kind = wiring::TerminalKind;
    // Blades by ISO 8092-1 widths; rings and forks by the screw that they take; bullets as they are sold.
    static const std::vector<SpokenTerminal> all{
        {Kind::Blade, {"2.8", "4.8", "6.3", "9.5"}},
        {Kind::Receptacle, {"2.8", "4.8", "6.3", "9.5"}},
        {Kind::Bullet, {"3.5", "4"}},
        {Kind::BulletSocket, {"3.5", "4"}},
        {Kind::Ring, {"4", "5", "6", "8"}},
        {Kind::Fork, {"4", "5", "6"}},
        {Kind::Pin, {}},
        {Kind::Socket, {}},
        {Kind::Splice, {}},
        {Kind::Bare, {}},
    };
    return all;
}

constexpr std::array colourWords{ColourWord{"purple", colour::Insulation::VT}};

constexpr std::array<std::string_view, 29> functions{
    "battery positive",
    "charging coil",
    "dipped beam",
    "earth",
    "flasher unit",
    "fuel gauge",
    "horn",
    "ignition",
    "ignition coil",
    "ignition feed",
    "instrument lamp",
    "kill switch",
    "left indicator",
    "main beam",
    "neutral lamp",
    "number plate lamp",
    "oil pressure",
    "parking lamp",
    "pickup coil",
    "regulator",
    "right indicator",
    "side light",
    "side stand",
    "starter",
    "starter relay",
    "stop lamp",
    "switched positive",
    "tail lamp",
    "temperature",
};

} // namespace

std::span<const SpokenUnit> spokenUnits() {
    return units;
}

const SpokenUnit* findSpokenUnit(Measured what, std::string_view symbol) {
    const auto* found = std::find_if(units.begin(), units.end(), [&](const SpokenUnit& unit) {
        return unit.what == what && unit.symbol == symbol;
    });
    return found == units.end() ? nullptr : found;
}

std::string unitWords(std::string_view symbol, bool one) {
    const auto* found = std::find_if(said.begin(), said.end(),
                                     [&](const UnitWords& words) { return words.symbol == symbol; });
    if (found != said.end())
        return std::string{one ? found->one : found->many};
    const auto known = units::findUnits(symbol);
    if (known.empty())
        return std::string{symbol};
    std::string name = known.front().name();
    if (!one && !name.empty() && name.back() != 's')
        name += 's';
    return name;
}

std::span<const SpokenTerminal> spokenTerminals() {
    return terminals();
}

std::span<const ColourWord> otherColourWords() {
    return colourWords;
}

std::span<const std::string_view> spokenFunctions() {
    return functions;
}

} // namespace undercowl::talk
