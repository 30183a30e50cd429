// A six-place connector for the wiring tests.
#pragma once

#include "core/wiring/map.h"

namespace undercowl::wiring {

inline PlaceAnswer answered(const char* colour, const char* terminal = "", const char* function = "") {
    PlaceAnswer answer;
    answer.wire.colour = *colour::wireColourFromCode(colour);
    answer.wire.terminal = *terminalFromText(terminal);
    answer.wire.function = function;
    return answer;
}

// Places 2 and 5 are twins.
inline Gathering switchCluster() {
    Gathering gathering;
    gathering.id = "cluster";
    gathering.title = "right switch cluster, 6-place";
    gathering.places = 6;
    gathering.rows = 2;
    const char* colours[] = {"GN/WH", "GY/RD", "BK", "BN", "GY/RD", "YE"};
    for (int number = 1; number <= 6; ++number)
        gathering.at({Half::Loom, number, 1}).answer(Answer::AsFound) = answered(colours[number - 1]);
    return gathering;
}

} // namespace undercowl::wiring
