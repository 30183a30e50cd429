// What every value of a job is made of.
#pragma once

#include <cstdint>
#include <string>

namespace undercowl::job {

using Id = std::string;
using TimeMs = std::int64_t;

// A quantity with the digits and the unit that were typed; core/units converts and judges it.
struct TypedValue {
    std::string digits; // "9.3", with a point
    std::string unit;   // "N.m"

    friend bool operator==(const TypedValue&, const TypedValue&) = default;
};

// Who said it and when; taken from the entry.
struct Said {
    Id entry;
    Id mechanic;
    TimeMs at{};

    friend bool operator==(const Said&, const Said&) = default;
};

// Something was done, with a remark.
struct Noted {
    std::string note;
    Said said;

    friend bool operator==(const Noted&, const Noted&) = default;
};

} // namespace undercowl::job
