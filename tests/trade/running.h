// Runs calculations by name as the command line does.
#pragma once

#include "core/trade/page.h"
#include "core/trade/registry.h"
#include "core/verdict/words.h"
#include "tests/reference/csv.h"

#include <catch2/catch.hpp>

#include <cstdio>
#include <map>
#include <string>

namespace undercowl::trade {

using Typed = std::map<std::string, std::string>;

// With enough digits that nothing is lost.
inline std::string exact(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%.15g", value);
    return text;
}

inline Result ran(const std::string& name, const Typed& typed) {
    const Calculation* calculation = findCalculation(name);
    INFO(name);
    REQUIRE(calculation != nullptr);
    const Outcome outcome = run(*calculation, typed, exampleDay());
    if (!outcome)
        FAIL(outcome.error().message());
    return *outcome;
}

inline Problem refused(const std::string& name, const Typed& typed) {
    const Calculation* calculation = findCalculation(name);
    INFO(name);
    REQUIRE(calculation != nullptr);
    const Outcome outcome = run(*calculation, typed, exampleDay());
    REQUIRE_FALSE(outcome);
    return outcome.error();
}

// In the declared unit, or the unit in which it was put.
inline double number(const Result& result, const std::string& key) {
    const Value* value = result.find(key);
    INFO(key);
    REQUIRE(value != nullptr);
    const auto* quantity = std::get_if<units::Quantity>(&value->value);
    REQUIRE(quantity != nullptr);
    return quantity->value;
}

inline std::string shown(const Result& result, const std::string& key) {
    const Value* value = result.find(key);
    INFO(key);
    REQUIRE(value != nullptr);
    return value->text;
}

inline std::string verdictOf(const Result& result) {
    return result.answer ? std::string(verdict::word(*result.answer)) : "none";
}

} // namespace undercowl::trade
