#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <algorithm>

namespace undercowl::trade {
namespace {

using units::Dimension;

// Bolts are numbered round the circle or along the row, from 1.
std::vector<int> across(int bolts) {
    std::vector<int> order;
    if (bolts % 2 == 1) {
        // Odd: a star, each next bolt nearly opposite.
        for (int i = 0; i < bolts; ++i)
            order.push_back(i * ((bolts - 1) / 2) % bolts + 1);
        return order;
    }
    // Even: opposite pairs, each next pair as far as it can be from the pairs done.
    std::vector<int> pairs;
    const int half = bolts / 2;
    while (static_cast<int>(pairs.size()) < half) {
        int best = 0;
        int farthest = -1;
        for (int candidate = 0; candidate < half; ++candidate) {
            int nearest = half;
            for (const int done : pairs) {
                const int apart = std::abs(candidate - done);
                nearest = std::min(nearest, std::min(apart, half - apart));
            }
            if (nearest > farthest) {
                farthest = nearest;
                best = candidate;
            }
        }
        pairs.push_back(best);
    }
    for (const int first : pairs) {
        order.push_back(first + 1);
        order.push_back(first + half + 1);
    }
    return order;
}

std::vector<int> outward(int bolts) {
    std::vector<int> order;
    int low = (bolts + 1) / 2;
    int high = low + 1;
    while (low >= 1 || high <= bolts) {
        if (low >= 1)
            order.push_back(low--);
        if (high <= bolts)
            order.push_back(high++);
    }
    return order;
}

Outcome work(const Declaration& declaration, const Given& given) {
    for (const char* key : {"bolts", "stages"})
        if (given.number(key) != static_cast<int>(given.number(key)))
            return given.problem(key, "must be a whole number", "1, 2, 3 and so on");
    const int bolts = static_cast<int>(given.number("bolts"));
    const int stages = static_cast<int>(given.number("stages"));
    const std::string& pattern = given.text("pattern");
    std::vector<int> order;
    if (pattern == "cross") {
        order = across(bolts);
    } else if (pattern == "line") {
        order = outward(bolts);
    } else {
        for (int bolt = 1; bolt <= bolts; ++bolt)
            order.push_back(bolt);
    }
    Result result(declaration);
    const units::Quantity full = given.quantity("torque");
    std::vector<Step> steps;
    for (int stage = 1; stage <= stages; ++stage) {
        const units::Quantity torque{full.value * stage / stages, full.unit};
        result.say(
            fmt::format("stage {} of {}: {:.4g} {}", stage, stages, torque.value, torque.unit.symbol()));
        for (const int bolt : order)
            steps.push_back({{{"bolt", bolt}, {"stage", stage}, {"torque", torque}}});
    }
    result.put("steps", std::move(steps));
    return result;
}

} // namespace

Calculation tighteningOrder() {
    Declaration d;
    d.name = "tightening-order";
    d.title = "Order of tightening";
    d.purpose = "In which order and stages to tighten several bolts of one joint.";
    d.formula = {
        "cross: opposite pairs, each far from the last; line: from the middle outward; circle: round in turn",
        "torque of a stage = torque x stage/stages"};
    d.inputs = {
        number("bolts", "Number of bolts", "of one joint").range(2, 24),
        choice("pattern", "Pattern",
               {{"cross", "across, pair by pair"},
                {"circle", "round the circle"},
                {"line", "row, from the middle"}},
               "how the bolts lie"),
        quantity("torque", "Final torque", Dimension::Torque, "N.m", "from the manual").range(0.1, 2000),
        number("stages", "Stages", "in how many equal steps").withDefault("2").range(1, 5)};
    d.outputs = {textOut("steps", "Steps")};
    d.sources = {"common practice, no source"};
    d.cautions = {"an order printed in the manual or cast beside the bolts wins",
                  "loosen in the opposite order"};
    d.validity = {"bolts are numbered round the circle, or along the row, from 1"};
    d.example = {
        {{"bolts", "4"}, {"pattern", "cross"}, {"torque", "10 N.m"}, {"stages", "1"}},
        {{"steps",
          "bolt 1 stage 1 torque 10 N.m, bolt 3 stage 1 torque 10 N.m, bolt 2 stage 1 torque 10 N.m, "
          "bolt 4 stage 1 torque 10 N.m"}}};
    return {d, work};
}

} // namespace undercowl::trade
