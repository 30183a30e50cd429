// A second implementation: GNU units (Debian package "units") must agree over random values for every unit
// that it knows.
#include "core/units/format.h"
#include "core/units/quantity.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdio>
#include <map>
#include <memory>
#include <random>
#include <sstream>
#include <string>
#include <vector>

using namespace undercowl::units;

namespace {

// Our symbol to the other program's expression. Left out: gauge pressures (no such notion there) and wire
// gauges (the other program's are of another kind: diameters).
std::string gnuName(Unit unit) {
    static const std::map<std::string, std::string> names{{"1", "1"},
                                                          {"percent", "percent"},
                                                          {"N.m", "N m"},
                                                          {"cN.m", "cN m"},
                                                          {"daN.m", "daN m"},
                                                          {"kgf.m", "kgf m"},
                                                          {"kgf.cm", "kgf cm"},
                                                          {"lbf.ft", "lbf ft"},
                                                          {"lbf.in", "lbf inch"},
                                                          {"ozf.in", "ounce force inch"},
                                                          {"in", "inch"},
                                                          {"thou", "mil"},
                                                          {"mi", "mile"},
                                                          {"um", "micrometer"},
                                                          {"ohm", "ohm"},
                                                          {"mohm", "milliohm"},
                                                          {"kohm", "kiloohm"},
                                                          {"Mohm", "megaohm"},
                                                          {"Ah", "A hour"},
                                                          {"mAh", "mA hour"},
                                                          {"Wh", "W hour"},
                                                          {"kWh", "kW hour"},
                                                          {"kgf/cm2", "kgf/cm^2"},
                                                          {"mmHg", "mmHg"},
                                                          {"inHg", "inHg"},
                                                          {"inH2O", "inH2O"},
                                                          {"torr", "torr"},
                                                          {"atm", "atm"},
                                                          {"ksi", "kpsi"},
                                                          {"cc", "cc"},
                                                          {"in3", "in^3"},
                                                          {"cm3", "cm^3"},
                                                          {"mm2", "mm^2"},
                                                          {"cm2", "cm^2"},
                                                          {"in2", "in^2"},
                                                          {"US fl oz", "usfloz"},
                                                          {"imp fl oz", "brfloz"},
                                                          {"US pt", "uspint"},
                                                          {"imp pt", "brpint"},
                                                          {"US gal", "usgallon"},
                                                          {"imp gal", "brgallon"},
                                                          {"L", "liter"},
                                                          {"mL", "milliliter"},
                                                          {"km/h", "km/hour"},
                                                          {"kg/m3", "kg/m^3"},
                                                          {"g/cm3", "g/cm^3"},
                                                          {"PS", "metrichorsepower"},
                                                          {"hp(E)", "electrichorsepower"},
                                                          {"rpm", "rpm"},
                                                          {"deg", "degree"},
                                                          {"rad", "radian"},
                                                          {"h", "hour"},
                                                          {"d", "day"},
                                                          {"week", "week"},
                                                          {"year", "365.25 day"},
                                                          {"min", "minute"}};
    const auto known = names.find(unit.symbol());
    return known == names.end() ? unit.symbol() : known->second;
}

// One run of the program for all questions: each line is "from<newline>to", each answer one line.
std::vector<std::string> askGnu(const std::vector<std::pair<std::string, std::string>>& questions) {
    char name[] = "/tmp/undercowl-units-XXXXXX";
    const int handle = mkstemp(name);
    REQUIRE(handle >= 0);
    {
        const std::unique_ptr<FILE, int (*)(FILE*)> file(fdopen(handle, "w"), &std::fclose);
        for (const auto& [from, to] : questions)
            std::fprintf(file.get(), "%s\n%s\n", from.c_str(), to.c_str());
    }
    const std::string command = std::string("units --quiet --terse --one-line -o %.15g < ") + name + " 2>&1";
    std::string output;
    {
        const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), &pclose);
        REQUIRE(pipe);
        char part[4096];
        while (std::fgets(part, sizeof part, pipe.get()) != nullptr)
            output += part;
    }
    std::remove(name);
    std::vector<std::string> lines;
    std::istringstream stream(output);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

} // namespace

TEST_CASE("GNU units gives the same conversions") {
    std::mt19937 random(20240229);
    std::uniform_real_distribution<double> exponent(-3, 4);
    std::vector<std::pair<std::string, std::string>> questions;
    std::vector<double> ours;
    const auto ask = [&](Unit from, Unit to, double value, const std::string& gnuFrom,
                         const std::string& gnuTo) {
        questions.emplace_back(gnuFrom, gnuTo);
        ours.push_back(Quantity{value, from}.in(to));
    };
    for (int index = 0; index < dimensionCount; ++index) {
        const auto dimension = static_cast<Dimension>(index);
        if (dimension == Dimension::GaugePressure || dimension == Dimension::AbsolutePressure)
            continue;
        for (const Unit from : unitsOf(dimension))
            for (const Unit to : unitsOf(dimension)) {
                if (from == to || from.symbol() == "AWG" || to.symbol() == "AWG")
                    continue;
                const double value = std::pow(10.0, exponent(random));
                const std::string number = formatExact(value);
                if (dimension == Dimension::Temperature) {
                    const auto temperature = [](Unit u, const std::string& argument) {
                        if (u.symbol() == "K")
                            return argument.empty() ? std::string("K") : argument + " K";
                        const std::string name = u.symbol() == "degC" ? "tempC" : "tempF";
                        return argument.empty() ? name
                                                : std::string(name).append("(").append(argument).append(")");
                    };
                    ask(from, to, value, temperature(from, number), temperature(to, ""));
                } else if (dimension == Dimension::Consumption) {
                    // Reciprocal to each other: the other program is asked for litres of the same distance.
                    if (to.symbol() != "L/100km" || !from.symbol().starts_with("mpg"))
                        continue;
                    const std::string gallon = from.symbol() == "mpg(US)" ? "usgallon" : "brgallon";
                    ask(from, to, value,
                        std::string("100 km / (").append(number).append(" mile/").append(gallon).append(")"),
                        "liter");
                } else {
                    ask(from, to, value, number + " " + gnuName(from), gnuName(to));
                }
            }
    }
    REQUIRE(questions.size() > 300);
    const auto answers = askGnu(questions);
    INFO("the Debian package \"units\" must be installed for this check");
    REQUIRE(answers.size() == questions.size());
    for (std::size_t i = 0; i < answers.size(); ++i) {
        INFO(questions[i].first << " -> " << questions[i].second << ": " << answers[i]);
        double theirs = 0;
        std::istringstream stream(answers[i]);
        REQUIRE(stream >> theirs);
        CHECK(ours[i] == Approx(theirs).epsilon(1e-12));
    }
}
