// An instrument from what a person can read off it and its sheet: the same for a form and a command line.
#pragma once

#include "core/verdict/instrument.h"

#include <string>
#include <tl/expected.hpp>

namespace undercowl::verdict {

// All as typed; empty where nothing was. "high" needs its unit, which becomes the instrument's: "100 N.m",
// "4 bar", "20 V". Others may leave it out.
struct InstrumentSheet {
    std::string name;       // as the shop calls it
    std::string kind;       // a code of InstrumentKind
    std::string low;        // least reading; 0 if empty
    std::string high;       // largest reading
    std::string resolution; // one division, or the last digit
    std::string wrench;     // torque wrench by ISO 6789-1: "II A" (type and class); replaces the errors below
    std::string gaugeClass; // pressure gauge by EN 837-1: "1.6", per cent of full scale; replaces them too
    std::string percent;    // limit of error, per cent of the reading
    std::string digits;     // and counts of the last digit
    std::string error;      // and a fixed part, in the instrument's unit
    std::string feel;       // half of what two people would read differently
    std::string source;     // where the limit of error stands: "maker's sheet"
    std::string calibrated; // ISO 8601
    std::string due;
};

// What is wrong with one field of the sheet, with the remedy. 'field' is the member's name.
struct SheetProblem {
    std::string field;
    std::string message;
};

[[nodiscard]] tl::expected<Instrument, SheetProblem> instrumentFrom(const InstrumentSheet& sheet);

// The other way: what the form shows of an instrument that is to be changed. instrumentFrom() makes the same
// instrument of it again.
[[nodiscard]] InstrumentSheet sheetOf(const Instrument& instrument);

// The limit of error in words: "4 % of the reading", "0.5 % of the reading + 2 digits".
[[nodiscard]] std::string errorText(const Instrument& instrument);

} // namespace undercowl::verdict
