#include "tests/sight/truth.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <limits>

namespace undercowl::tests {

namespace {

using nlohmann::json;

colour::Insulation insulation(const json& code) {
    const auto read = colour::insulationFromCode(code.get<std::string>());
    REQUIRE(read);
    return *read;
}

sight::Polyline polyline(const json& points) {
    sight::Polyline line;
    for (const json& point : points)
        line.push_back({point.at(0), point.at(1)});
    return line;
}

TrueWire wireOf(const json& said) {
    TrueWire wire{.id = said.at("id"),
                  .colour = {insulation(said.at("base")), {}},
                  .tracerVisible = said.at("tracer_visible"),
                  .diameterPx = said.at("diameter_px"),
                  .centreLine = polyline(said.at("visible_polyline")),
                  .taps = {}};
    if (!said.at("tracer").is_null())
        wire.colour.tracer = insulation(said.at("tracer"));
    const sight::Polyline taps = polyline(said.at("suggested_taps"));
    REQUIRE(said.at("tap_tracer_fraction").size() == taps.size());
    for (std::size_t i = 0; i < taps.size(); ++i)
        wire.taps.push_back({taps[i], said.at("tap_tracer_fraction").at(i)});
    return wire;
}

TrueSweep sweepOf(const json& said, const std::vector<TrueWire>& wires) {
    TrueSweep sweep{polyline(said.at("polyline")), {}};
    for (const int id : said.at("wires")) {
        const auto wire =
            std::find_if(wires.begin(), wires.end(), [&](const TrueWire& w) { return w.id == id; });
        REQUIRE(wire != wires.end());
        sweep.wires.push_back(&*wire);
    }
    return sweep;
}

} // namespace

double distance(const sight::Polyline& line, sight::Point from) {
    double least = std::numeric_limits<double>::max();
    for (const sight::Point& p : line)
        least = std::min(least, std::hypot(p.x - from.x, p.y - from.y));
    return least;
}

std::vector<TruePhoto> truthOf(const std::filesystem::path& folder) {
    std::ifstream in{folder / "truth.json"};
    REQUIRE(in);
    std::vector<TruePhoto> photos;
    for (const json& said : json::parse(in)) {
        TruePhoto& photo = photos.emplace_back();
        photo.file = folder / said.at("file").get<std::string>();
        photo.width = said.at("width");
        photo.height = said.at("height");
        const json& card = said.at("reference_card");
        if (!card.is_null())
            photo.card =
                sight::Card{{card.at("x"), card.at("y"), card.at("w"), card.at("h")}, card.at("reflectance")};
        for (const json& wire : said.at("wires"))
            photo.wires.push_back(wireOf(wire));
        for (const json& sweep : said.at("sweeps"))
            photo.sweeps.push_back(sweepOf(sweep, photo.wires));
    }
    return photos;
}

} // namespace undercowl::tests
