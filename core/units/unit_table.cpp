#include "core/units/unit_table.h"

#include <array>

namespace undercowl::units {
namespace {

// Definitions. International yard and pound agreement of 1959: 1 lb = 0.45359237 kg, 1 in = 25.4 mm. Standard
// gravity: third CGPM, 1901. US gallon of 231 cubic inches: NIST SP 811. Imperial gallon: UK Weights and
// Measures Act 1985.
constexpr Rational pound{45359237, 100000000}; // kg
constexpr Rational gravity{980665, 100000};    // m/s2
constexpr Rational inch{254, 10000};           // m
constexpr Rational foot{3048, 10000};          // m
constexpr Rational mile{1609344, 1000};        // m
constexpr Rational poundForce = pound * gravity;
constexpr Rational usGallon = Rational{231} * inch * inch * inch * Rational{1000}; // L
constexpr Rational imperialGallon{454609, 100000};                                 // L
constexpr Rational milli{1, 1000};

constexpr const char* si = "SI Brochure; NIST SP 811 appendix B";
constexpr const char* yardPound = "international yard and pound agreement 1959; NIST SP 811 appendix B";
constexpr const char* cgpm = "standard gravity 9.80665 m/s2 (CGPM 1901)";
constexpr const char* mercury = "conventional manometric units; NIST SP 811 appendix B";
constexpr const char* usVolume = "US gallon 231 cubic inches; NIST SP 811 appendix B";
constexpr const char* ukVolume =
    "UK Weights and Measures Act 1985 (gallon 4.54609 L); NIST SP 811 appendix B";

struct PressureRow {
    const char* symbol;
    const char* name;
    std::vector<std::string> aliases;
    Rational kilopascals;
    const char* source;
};

std::vector<PressureRow> pressureRows() {
    return {
        {"kPa", "kilopascal", {"kilopascal", "kilopascals"}, Rational{1}, si},
        {"Pa", "pascal", {"pascal", "pascals"}, milli, si},
        {"hPa", "hectopascal", {}, Rational{1, 10}, si},
        {"MPa", "megapascal", {}, Rational{1000}, si},
        {"bar", "bar", {"bars"}, Rational{100}, si},
        {"mbar", "millibar", {}, Rational{1, 10}, si},
        {"psi",
         "pound-force per square inch",
         {"lbf/in2", "lb/in2", "lbs/in2"},
         poundForce / (inch * inch) * milli,
         yardPound},
        {"kgf/cm2", "technical atmosphere", {"kg/cm2", "kp/cm2"}, Rational{980665, 10000}, cgpm},
        {"atm", "standard atmosphere", {}, Rational{101325, 1000}, si},
        {"mmHg",
         "conventional millimetre of mercury",
         {},
         Rational{135951, 10} * gravity * milli * milli,
         mercury},
        {"torr", "torr", {}, Rational{101325, 760000}, si},
        {"inHg",
         "conventional inch of mercury (0 C)",
         {},
         Rational{254, 10} * Rational{135951, 10} * gravity * milli * milli,
         mercury},
        {"inH2O", "conventional inch of water (4 C)", {}, Rational{1000} * gravity * inch * milli, mercury},
    };
}

void addPressures(std::deque<UnitEntry>& table) {
    for (const PressureRow& row : pressureRows()) {
        const std::string plain = row.symbol;
        table.push_back({Dimension::PressureDifference,
                         plain,
                         row.name,
                         row.aliases,
                         row.kilopascals,
                         {},
                         Law::Linear,
                         false,
                         row.source});
        // A plain symbol is taken in the sense that the question has; a written "g" or "a" must agree with
        // it.
        for (const bool gauge : {true, false}) {
            std::vector<std::string> aliases = row.aliases;
            aliases.push_back(plain);
            for (const char* mark : gauge ? std::array{"g", "(g)", "gage"} : std::array{"a", "(a)", "abs"})
                aliases.push_back(plain + mark);
            table.push_back({gauge ? Dimension::GaugePressure : Dimension::AbsolutePressure,
                             plain + (gauge ? " gauge" : " absolute"),
                             std::string(row.name) + (gauge ? ", gauge" : ", absolute"),
                             aliases,
                             row.kilopascals,
                             {},
                             Law::Linear,
                             false,
                             row.source});
        }
    }
}

void addMechanical(std::deque<UnitEntry>& t) {
    const auto add = [&t](Dimension d, const char* symbol, const char* name, std::vector<std::string> aliases,
                          Rational factor, const char* source) {
        t.push_back({d, symbol, name, std::move(aliases), factor, {}, Law::Linear, false, source});
    };
    using D = Dimension;
    add(D::Torque, "N.m", "newton metre",
        {"Nm", "newtonmetre", "newtonmetres", "newtonmeter", "newtonmeters"}, Rational{1}, si);
    add(D::Torque, "cN.m", "centinewton metre", {"cNm"}, Rational{1, 100}, si);
    add(D::Torque, "daN.m", "decanewton metre", {"daNm"}, Rational{10}, si);
    add(D::Torque, "kgf.m", "kilogram-force metre",
        {"kgfm", "kgm", "kg.m", "m.kg", "mkg", "m.kgf", "mkgf", "kp.m", "kpm", "mkp"}, gravity, cgpm);
    add(D::Torque, "kgf.cm", "kilogram-force centimetre",
        {"kgfcm", "kgcm", "kg.cm", "cm.kg", "cmkg", "cm.kgf"}, gravity * Rational{1, 100}, cgpm);
    add(D::Torque, "lbf.ft", "pound-force foot",
        {"lbft", "lb.ft", "lbs.ft", "ft.lb", "ftlb", "ft.lbs", "ftlbs", "ft.lbf", "ftlbf", "lbfft",
         "foot.pound", "foot.pounds", "footpound", "footpounds", "pound.feet", "pound.foot"},
        poundForce * foot, yardPound);
    add(D::Torque, "lbf.in", "pound-force inch",
        {"lbin", "lb.in", "lbs.in", "in.lb", "inlb", "in.lbs", "inlbs", "in.lbf", "inlbf", "lbfin",
         "inch.pound", "inch.pounds", "inchpounds"},
        poundForce * inch, yardPound);
    add(D::Torque, "ozf.in", "ounce-force inch", {"ozin", "oz.in", "in.oz", "inoz", "ozfin"},
        poundForce * Rational{1, 16} * inch, yardPound);

    add(D::Energy, "J", "joule", {"joule", "joules"}, Rational{1}, si);
    add(D::Energy, "kJ", "kilojoule", {}, Rational{1000}, si);
    add(D::Energy, "Wh", "watt hour", {"W.h"}, Rational{3600}, si);
    add(D::Energy, "kWh", "kilowatt hour", {"kW.h"}, Rational{3600000}, si);

    add(D::Force, "N", "newton", {"newton", "newtons"}, Rational{1}, si);
    add(D::Force, "kN", "kilonewton", {}, Rational{1000}, si);
    add(D::Force, "kgf", "kilogram-force", {"kp"}, gravity, cgpm);
    add(D::Force, "lbf", "pound-force", {}, poundForce, yardPound);

    add(D::Stress, "MPa", "megapascal", {"N/mm2"}, Rational{1}, si);
    add(D::Stress, "psi", "pound-force per square inch", {"lbf/in2"},
        poundForce / (inch * inch) * milli * milli, yardPound);
    add(D::Stress, "ksi", "kilopound-force per square inch", {}, poundForce / (inch * inch) * milli,
        yardPound);

    add(D::Mass, "kg", "kilogram", {"kilo", "kilos"}, Rational{1}, si);
    add(D::Mass, "g", "gram", {"gram", "grams"}, milli, si);
    add(D::Mass, "lb", "avoirdupois pound", {"lbs"}, pound, yardPound);
    add(D::Mass, "oz", "avoirdupois ounce", {}, pound * Rational{1, 16}, yardPound);

    add(D::Density, "kg/m3", "kilogram per cubic metre", {}, Rational{1}, si);
    add(D::Density, "g/cm3", "gram per cubic centimetre", {"kg/L", "g/mL"}, Rational{1000}, si);

    add(D::Power, "W", "watt", {"watt", "watts"}, Rational{1}, si);
    add(D::Power, "kW", "kilowatt", {}, Rational{1000}, si);
    add(D::Power, "hp", "mechanical horsepower 550 ft.lbf/s", {"bhp", "horsepower"},
        Rational{550} * foot * poundForce, yardPound);
    add(D::Power, "PS", "metric horsepower 75 kgf.m/s", {"cv", "pk"}, Rational{75} * gravity, cgpm);
    add(D::Power, "hp(E)", "electric horsepower", {}, Rational{746}, "NIST SP 811 appendix B");
}

void addGeometry(std::deque<UnitEntry>& t) {
    const auto add = [&t](Dimension d, const char* symbol, const char* name, std::vector<std::string> aliases,
                          Rational factor, const char* source, Law law = Law::Linear) {
        t.push_back({d, symbol, name, std::move(aliases), factor, {}, law, false, source});
    };
    using D = Dimension;
    add(D::Length, "mm", "millimetre", {"millimetre", "millimetres", "millimeter", "millimeters"},
        Rational{1}, si);
    add(D::Length, "um", "micrometre", {"micron", "microns"}, milli, si);
    add(D::Length, "cm", "centimetre", {}, Rational{10}, si);
    add(D::Length, "m", "metre", {"metre", "metres", "meter", "meters"}, Rational{1000}, si);
    add(D::Length, "km", "kilometre", {"kilometre", "kilometres", "kilometer", "kilometers"},
        Rational{1000000}, si);
    add(D::Length, "in", "inch", {"inch", "inches", "\""}, inch / milli, yardPound);
    add(D::Length, "thou", "0.001 inch", {"mil"}, inch, yardPound);
    add(D::Length, "ft", "foot", {"foot", "feet"}, foot / milli, yardPound);
    add(D::Length, "mi", "statute mile", {"mile", "miles"}, mile / milli, yardPound);

    add(D::Area, "mm2", "square millimetre", {"sqmm"}, Rational{1}, si);
    add(D::Area, "cm2", "square centimetre", {"sqcm"}, Rational{100}, si);
    add(D::Area, "in2", "square inch", {"sqin"}, inch * inch / (milli * milli), yardPound);
    add(D::Area, "AWG", "American wire gauge", {}, Rational{1}, "ASTM B258: d = 0.127 mm x 92^((36 - n)/39)",
        Law::Gauge);

    add(D::Volume, "mL", "millilitre", {"millilitre", "millilitres", "milliliter", "milliliters"},
        Rational{1}, si);
    add(D::Volume, "cm3", "cubic centimetre", {}, Rational{1}, si);
    add(D::Volume, "cc", "cubic centimetre", {"ccm"}, Rational{1}, si);
    add(D::Volume, "L", "litre", {"litre", "litres", "liter", "liters", "dm3"}, Rational{1000}, si);
    add(D::Volume, "in3", "cubic inch", {"cuin"}, inch * inch * inch * Rational{1000000}, yardPound);
    add(D::Volume, "US fl oz", "US fluid ounce", {}, usGallon * Rational{1000, 128}, usVolume);
    add(D::Volume, "imp fl oz", "imperial fluid ounce", {"UK fl oz"}, imperialGallon * Rational{1000, 160},
        ukVolume);
    add(D::Volume, "US pt", "US liquid pint", {"US pint", "US pints"}, usGallon * Rational{1000, 8},
        usVolume);
    add(D::Volume, "imp pt", "imperial pint", {"UK pt", "imp pint", "imp pints"},
        imperialGallon * Rational{1000, 8}, ukVolume);
    add(D::Volume, "US gal", "US gallon", {"US gallon", "US gallons"}, usGallon * Rational{1000}, usVolume);
    add(D::Volume, "imp gal", "imperial gallon", {"UK gal", "imp gallon", "imp gallons"},
        imperialGallon * Rational{1000}, ukVolume);

    add(D::Speed, "km/h", "kilometre per hour", {"kmh", "kph", "kmph"}, Rational{1}, si);
    add(D::Speed, "m/s", "metre per second", {}, Rational{36, 10}, si);
    add(D::Speed, "mph", "mile per hour", {"mi/h"}, mile * milli, yardPound);
    add(D::RotationalSpeed, "rpm", "revolution per minute", {"1/min", "r/min", "rev/min", "U/min"},
        Rational{1}, si);

    add(D::Consumption, "L/100km", "litre per 100 kilometres", {}, Rational{1}, si);
    add(D::Consumption, "km/L", "kilometre per litre", {}, Rational{100}, si, Law::Reciprocal);
    add(D::Consumption, "mpg(US)", "miles per US gallon", {"US mpg", "mpg US"},
        Rational{100} * usGallon / (mile * milli), usVolume, Law::Reciprocal);
    add(D::Consumption, "mpg(imp)", "miles per imperial gallon",
        {"imp mpg", "mpg imp", "UK mpg", "mpg UK", "mpg(UK)"},
        Rational{100} * imperialGallon / (mile * milli), ukVolume, Law::Reciprocal);
    add(D::Angle, "deg", "degree", {"degree", "degrees"}, Rational{1}, si);
    t.push_back({D::Angle, "rad", "radian", {"radian", "radians"}, Rational{180}, {}, Law::Linear, true, si});
}

void addRest(std::deque<UnitEntry>& t) {
    const auto add = [&t](Dimension d, const char* symbol, const char* name, std::vector<std::string> aliases,
                          Rational factor, Rational zero = {}, const char* source = si) {
        t.push_back({d, symbol, name, std::move(aliases), factor, zero, Law::Linear, false, source});
    };
    using D = Dimension;
    const char* fahrenheit = "definition of the Fahrenheit scale; NIST SP 811 appendix B";
    add(D::Number, "1", "number", {"", "to1", ":1"}, Rational{1});
    add(D::Number, "percent", "per cent", {"%"}, Rational{1, 100});

    add(D::Temperature, "degC", "degree Celsius", {"C", "celsius"}, Rational{1});
    add(D::Temperature, "degF", "degree Fahrenheit", {"F", "fahrenheit"}, Rational{5, 9}, Rational{32},
        fahrenheit);
    add(D::Temperature, "K", "kelvin", {"kelvin"}, Rational{1}, Rational{27315, 100});
    add(D::TemperatureDifference, "K", "kelvin", {"degC", "C", "kelvin"}, Rational{1});
    add(D::TemperatureDifference, "degF", "degree Fahrenheit of difference", {"F"}, Rational{5, 9}, {},
        fahrenheit);

    add(D::Time, "s", "second", {"sec", "second", "seconds"}, Rational{1});
    add(D::Time, "min", "minute", {"mins", "minute", "minutes"}, Rational{60});
    add(D::Time, "h", "hour", {"hr", "hrs", "hour", "hours"}, Rational{3600});
    add(D::Time, "d", "day", {"day", "days"}, Rational{86400});
    add(D::Time, "week", "week", {"weeks", "wk"}, Rational{604800});
    add(D::Time, "year", "year of 365.25 days", {"years", "yr", "a"}, Rational{31557600});

    add(D::Voltage, "V", "volt", {"volt", "volts"}, Rational{1});
    add(D::Voltage, "mV", "millivolt", {}, milli);
    add(D::Current, "A", "ampere", {"amp", "amps", "ampere", "amperes"}, Rational{1});
    add(D::Current, "mA", "milliampere", {"milliamp", "milliamps"}, milli);
    add(D::Resistance, "ohm", "ohm", {"ohms", "R"}, Rational{1});
    add(D::Resistance, "mohm", "milliohm", {"mOhm", "milliohm", "milliohms"}, milli);
    add(D::Resistance, "kohm", "kiloohm", {"kiloohm", "kilohm"}, Rational{1000});
    add(D::Resistance, "Mohm", "megaohm", {"MOhm", "megohm", "megaohm"}, Rational{1000000});
    add(D::Charge, "Ah", "ampere hour", {"A.h"}, Rational{1});
    add(D::Charge, "mAh", "milliampere hour", {"mA.h"}, milli);
}

} // namespace

std::deque<UnitEntry> makeUnitTable() {
    std::deque<UnitEntry> table;
    addMechanical(table);
    addPressures(table);
    addGeometry(table);
    addRest(table);
    return table;
}

} // namespace undercowl::units
