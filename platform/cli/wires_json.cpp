#include "platform/cli/wires_json.h"

#include <algorithm>
#include <cmath>

namespace undercowl::platform {
namespace {

using nlohmann::json;

constexpr std::size_t mostAlternatives = 5;

double rounded(double value, double digits) {
    const double factor = std::pow(10.0, digits);
    return std::round(value * factor) / factor;
}

json pointToJson(const sight::Point& p) {
    return json::array({rounded(p.x, 1), rounded(p.y, 1)});
}

// What tap and sweep have in common.
json answerToJson(const sight::WireReading& reading) {
    json object;
    object["wire"] = reading.found() ? toJson(reading.candidates.front().wire) : json(nullptr);
    object["probability"] = reading.found() ? rounded(reading.candidates.front().probability, 4) : 0.0;
    object["sure"] = reading.sure;
    json& alternatives = object["alternatives"] = json::array();
    for (std::size_t i = 1; i < std::min(reading.candidates.size(), mostAlternatives + 1); ++i) {
        json other = toJson(reading.candidates[i].wire);
        other["probability"] = rounded(reading.candidates[i].probability, 4);
        alternatives.push_back(std::move(other));
    }
    json& reasons = object["reasons"] = json::array();
    for (const sight::Doubt doubt : reading.doubts)
        reasons.push_back(sight::englishWords(doubt));
    object["width_px"] = rounded(reading.widthPx, 1);
    return object;
}

json rowToJson(const std::vector<sight::WireReading>& row) {
    json list = json::array();
    for (const sight::WireReading& reading : row)
        list.push_back(crossingToJson(reading));
    return list;
}

} // namespace

json toJson(const colour::WireColour& wire) {
    json object;
    object["base"] = colour::code(wire.base);
    object["tracer"] = wire.tracer ? json(colour::code(*wire.tracer)) : json(nullptr);
    return object;
}

json toJson(const sight::Proposal& proposal) {
    json object;
    object["complete"] = proposal.complete();
    json& wires = object["wires"] = json::array();
    for (std::size_t i = 0; i < proposal.wires.size(); ++i) {
        wires.push_back(tapToJson(proposal.wires[i]));
        wires.back()["perhaps"] = proposal.perhaps[i] ? json(*proposal.perhaps[i] + 1) : json(nullptr);
    }
    json& places = object["unfollowed"] = json::array();
    for (const sight::Point& p : proposal.unfollowed)
        places.push_back(pointToJson(p));
    return object;
}

json tapToJson(const sight::WireReading& reading) {
    json object = answerToJson(reading);
    object["at"] = pointToJson(reading.at);
    json& path = object["path"] = json::array();
    for (const sight::Point& p : reading.path)
        path.push_back(pointToJson(p));
    return object;
}

json crossingToJson(const sight::WireReading& reading) {
    json object = answerToJson(reading);
    object["crossing"] = pointToJson(reading.at);
    return object;
}

json toJson(const sight::Comparison& comparison) {
    json object;
    object["verdict"] = sight::code(comparison.verdict);
    json& changes = object["changes"] = json::array();
    for (const sight::Change& change : comparison.changes)
        changes.push_back({{"kind", sight::code(change.kind)}, {"places", change.places}});
    object["before"] = rowToJson(comparison.before);
    object["after"] = rowToJson(comparison.after);
    return object;
}

std::string toText(const sight::WireReading& reading) {
    if (!reading.found())
        return reading.doubts.empty() ? "no wire found"
                                      : std::string(sight::englishWords(reading.doubts.front()));
    const auto& first = reading.candidates.front().wire;
    if (reading.sure)
        return colour::code(first) + "  " + colour::englishWords(first);
    std::string text = "not sure: " + colour::code(first);
    if (reading.candidates.size() > 1)
        text += " or " + colour::code(reading.candidates[1].wire);
    for (const sight::Doubt doubt : reading.doubts)
        text.append("; ").append(sight::englishWords(doubt));
    return text;
}

} // namespace undercowl::platform
