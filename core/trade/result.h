// What a calculation answers: values with units, a verdict where there is one, and how it was worked out.
#pragma once

#include "core/trade/given.h"
#include "core/verdict/decide.h"

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace undercowl::trade {

// One row of a list: named whole numbers and quantities, such as bolt 3, stage 1, torque 8 N.m.
struct Step {
    std::vector<std::pair<std::string, std::variant<int, units::Quantity>>> cells;
};

struct Value {
    std::variant<units::Quantity, std::string, bool, std::vector<std::string>, std::vector<int>,
                 std::vector<Step>>
        value;
    std::string text; // as shown to a person, with sensible digits and the unit
};

// A few points that say more as a curve than as numbers, with the band that is expected of them. Values are
// in `unit`; `across` is what the points are spread over (places of a list, days).
struct Plot {
    struct Point {
        double across{};
        double up{};
        std::string label;
    };
    units::Unit unit;
    std::vector<Point> points;
    std::optional<double> low, high;
    // What the points measure, where each is a reading of its own, taken at rest, at idle and at revs; else
    // empty.
    std::string thing;
};

class Result {
public:
    explicit Result(const Declaration& declaration) : declaration_(&declaration) {}

    // In the declared unit of output KEY, shown with SIGNIFICANT digits.
    void put(std::string_view key, double value, int significant = 4);
    void put(std::string_view key, const units::Quantity& quantity, std::string text);
    void put(std::string_view key, std::string text);
    void put(std::string_view key, bool yes, std::string text);
    void put(std::string_view key, std::vector<std::string> list);
    void put(std::string_view key, std::vector<int> list);
    void put(std::string_view key, std::vector<Step> list);
    void say(std::string line) { working.push_back(std::move(line)); }
    void warn(std::string line) { cautions.push_back(std::move(line)); }

    // Judges MEASURED by guard band against limits in its own base dimension and notes working and advice.
    // The input "uncertainty" of GIVEN is taken; where it is a default, a caution says so.
    void judge(const Given& given, const units::Quantity& measured, const verdict::Limits& limits);
    // The same with an expanded uncertainty (k = 2) that the calculation itself knows.
    void judge(const units::Quantity& measured, const verdict::Limits& limits,
               const units::Quantity& expanded);
    // A verdict that rests on no single measurement.
    void decide(verdict::Answer answer);

    [[nodiscard]] const Value* find(std::string_view key) const;

    std::vector<std::pair<std::string, Value>> values;
    std::optional<verdict::Answer> answer;
    std::optional<verdict::Verdict> verdict; // details, where a measurement was judged
    std::string limitSource;                 // of that measurement's limits
    std::vector<std::string> working;
    std::optional<Plot> plot;
    std::vector<std::string> cautions; // beyond those of the declaration

private:
    const Declaration* declaration_;
};

using Outcome = tl::expected<Result, Problem>;

} // namespace undercowl::trade
