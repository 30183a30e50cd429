#include "core/wiring/din72552.h"

#include <algorithm>
#include <array>

namespace undercowl::wiring {
namespace {

constexpr std::array designations{
    Designation{"1", "ignition coil or contact breaker, low-tension side"},
    Designation{"2", "short-circuit (kill) terminal of a magneto ignition"},
    Designation{"4", "ignition coil high-tension output"},
    Designation{"15", "switched battery positive (output of the ignition switch)"},
    Designation{"15a", "switched positive after a ballast resistor"},
    Designation{"30", "battery positive direct (unswitched)"},
    Designation{"31", "battery negative or chassis earth direct"},
    Designation{"31b", "switched earth: return to negative through a switch or relay"},
    Designation{"32", "electric motor return line"},
    Designation{"33", "electric motor main connection"},
    Designation{"45", "starter relay output or starter input (main current)"},
    Designation{"49", "flasher unit input"},
    Designation{"49a", "flasher unit output (pulsed) to the indicator switch"},
    Designation{"49b", "flasher output, second circuit"},
    Designation{"L", "left direction indicators"},
    Designation{"R", "right direction indicators"},
    Designation{"50", "starter control (solenoid pull-in)"},
    Designation{"53", "wiper motor positive input"},
    Designation{"54", "stop lamp"},
    Designation{"55", "fog lamp"},
    Designation{"56", "headlamp feed"},
    Designation{"56a", "main (high) beam and its tell-tale"},
    Designation{"56b", "dipped (low) beam"},
    Designation{"57", "side or position lamp on motorcycles and mopeds"},
    Designation{"57a", "parking lamp"},
    Designation{"57L", "parking lamp, left"},
    Designation{"57R", "parking lamp, right"},
    Designation{"58", "tail, side-marker, number-plate and instrument lighting"},
    Designation{"58L", "tail or side lighting, left"},
    Designation{"58R", "tail or side lighting, right"},
    Designation{"59", "magneto-generator alternating-current output or rectifier input"},
    Designation{"59a", "magneto-generator charging-coil output"},
    Designation{"61", "charge warning lamp"},
    Designation{"B+", "generator output, battery positive"},
    Designation{"B-", "generator, battery negative"},
    Designation{"D+", "dynamo or generator positive to regulator"},
    Designation{"D-", "dynamo negative"},
    Designation{"DF", "dynamo field"},
    Designation{"85", "relay coil end (to earth side)"},
    Designation{"86", "relay coil start (feed side)"},
    Designation{"87", "everyday plug-in relay: switched output (normally open)"},
    Designation{"87a", "everyday plug-in relay: normally closed output"},
};

} // namespace

std::span<const Designation> din72552() {
    return designations;
}

std::optional<std::string_view> din72552Meaning(std::string_view number) {
    const auto found = std::find_if(designations.begin(), designations.end(),
                                    [number](const Designation& d) { return d.number == number; });
    if (found == designations.end())
        return std::nullopt;
    return found->meaning;
}

} // namespace undercowl::wiring
