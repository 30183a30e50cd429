#include "core/job/quantity.h"

#include "core/job/text.h"

#include <algorithm>
#include <array>
#include <string>

namespace undercowl::job {
namespace {

using units::Dimension;

struct Told {
    Dimension dimension;
    std::string_view stem; // lowered; found anywhere, since German joins words
};

// What names the quantity itself.
constexpr std::array named{
    Told{Dimension::Torque, "torque"},
    Told{Dimension::Torque, "drehmoment"},
    Told{Dimension::Torque, "anzugsmoment"},
    Told{Dimension::Torque, "coppia"},
    Told{Dimension::Torque, "couple"},
    Told{Dimension::Torque, "apriete"},
    Told{Dimension::GaugePressure, "pressure"},
    Told{Dimension::GaugePressure, "compression"},
    Told{Dimension::GaugePressure, "druck"},
    Told{Dimension::GaugePressure, "kompression"},
    Told{Dimension::GaugePressure, "pression"},
    Told{Dimension::GaugePressure, "compressione"},
    Told{Dimension::GaugePressure, "presi"},
    Told{Dimension::GaugePressure, "compresi"},
    Told{Dimension::Length, "tread"},
    Told{Dimension::Length, "depth"},
    Told{Dimension::Length, "thickness"},
    Told{Dimension::Length, "clearance"},
    Told{Dimension::Length, "gap"},
    Told{Dimension::Length, "free play"},
    Told{Dimension::Length, "diameter"},
    Told{Dimension::Length, "lining"},
    Told{Dimension::Length, "profil"},
    Told{Dimension::Length, "tiefe"},
    Told{Dimension::Length, "dicke"},
    Told{Dimension::Length, "ventilspiel"},
    Told{Dimension::Length, "abstand"},
    Told{Dimension::Length, "durchmesser"},
    Told{Dimension::Length, "battistrada"},
    Told{Dimension::Length, "spessore"},
    Told{Dimension::Length, "gioco"},
    Told{Dimension::Length, "profondit"},
    Told{Dimension::Length, "diametro"},
    Told{Dimension::Length, "sculpture"},
    Told{Dimension::Length, "paisseur"},
    Told{Dimension::Length, "profondeur"},
    Told{Dimension::Length, "diam\u00e8tre"},
    Told{Dimension::Length, "dibujo"},
    Told{Dimension::Length, "espesor"},
    Told{Dimension::Length, "holgura"},
    Told{Dimension::Length, "profundidad"},
    Told{Dimension::Length, "di\u00e1metro"},
    Told{Dimension::Voltage, "volt"},
    Told{Dimension::Voltage, "spannung"},
    Told{Dimension::Voltage, "tension"},
    Told{Dimension::Voltage, "tensi\u00f3n"},
    Told{Dimension::Current, "current"},
    Told{Dimension::Current, "strom"},
    Told{Dimension::Current, "corrente"},
    Told{Dimension::Current, "courant"},
    Told{Dimension::Current, "corriente"},
    Told{Dimension::Resistance, "resist"},
    Told{Dimension::Resistance, "widerstand"},
    Told{Dimension::Resistance, "r\u00e9sistance"},
    Told{Dimension::Temperature, "temperatur"},
    Told{Dimension::Temperature, "temp\u00e9rature"},
    Told{Dimension::RotationalSpeed, "rpm"},
    Told{Dimension::RotationalSpeed, "idle speed"},
    Told{Dimension::RotationalSpeed, "drehzahl"},
    Told{Dimension::RotationalSpeed, "regime"},
    Told{Dimension::RotationalSpeed, "r\u00e9gime"},
    Told{Dimension::RotationalSpeed, "revoluciones"},
};

// What is measured in one quantity as a rule, where nothing names it.
constexpr std::array usual{
    Told{Dimension::Voltage, "battery"},      Told{Dimension::Voltage, "charging"},
    Told{Dimension::Voltage, "batterie"},     Told{Dimension::Voltage, "batteria"},
    Told{Dimension::Voltage, "bater\u00eda"}, Told{Dimension::GaugePressure, "tyre"},
};

// Parts that are under tension or pressed together themselves: "chain tension" is no voltage, the length of a
// compression spring no pressure. In German words are joined ("Kettenspannung").
constexpr std::array<std::string_view, 20> tensed{
    "chain",  "kette",    "catena", "cha\u00eene", "cadena",  "belt",         "riemen",
    "cinghi", "courroie", "correa", "spoke",       "speiche", "raggi",        "rayon",
    "spring", "feder",    "molla",  "ressort",     "muelle",  "cable tension"};

template<std::size_t N>
std::optional<Dimension> told(const std::string& words, const std::array<Told, N>& all) {
    std::optional<Dimension> found;
    for (const Told& each : all) {
        if (words.find(each.stem) == std::string::npos)
            continue;
        if (found && *found != each.dimension)
            return std::nullopt;
        found = each.dimension;
    }
    return found;
}

} // namespace

std::optional<units::Dimension> dimensionMeant(std::string_view what) {
    const std::string words = inTradeWords(what);
    // "charging at 5000 rpm" is no speed: beside a number it tells when something was measured.
    std::string without = words;
    for (std::size_t at = without.find("0 rpm"); at != std::string::npos; at = without.find("0 rpm"))
        without.erase(at, 5);
    const auto quantity = told(without, named);
    const bool electricOrPressed = quantity == Dimension::Voltage || quantity == Dimension::GaugePressure;
    if (electricOrPressed && std::ranges::any_of(tensed, [&](std::string_view part) {
            return without.find(part) != std::string::npos;
        }))
        return std::nullopt;
    return quantity ? quantity : told(without, usual);
}

} // namespace undercowl::job
