#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <algorithm>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double now = given.number("now");
    const double fresh = given.number("new");
    const double limit = given.number("limit");
    if (fresh == limit)
        return given.problem("limit", "is the same as new: nothing could wear",
                             "the service limit of the manual");
    // Pads wear down to their limit, bores up to it.
    const bool down = fresh > limit;
    const double worn = down ? fresh - now : now - fresh;
    if (worn < 0)
        return given.problem("now", "is better than new",
                             down ? fmt::format("up to {:g} mm", fresh)
                                  : fmt::format("{:g} mm and more", fresh));
    Result result(declaration);
    const units::Unit km = units::unit(Dimension::Length, "km");
    const double distance = given.quantity("distance").in(km);
    const double left = down ? now - limit : limit - now;
    if (worn > 0) {
        const double remaining = std::max(0.0, left / worn * distance);
        result.say(fmt::format("worn {:.4g} mm in {:.4g} km; {:.4g} mm left: {:.4g} km", worn, distance, left,
                               remaining));
        result.put("remaining", remaining);
    } else {
        result.warn("no wear was measured: what remains cannot be told");
    }
    verdict::Limits limits;
    (down ? limits.low : limits.high) = given.quantity("limit");
    limits.source = {verdict::Trust::Manual, "as given"};
    result.judge(given, given.quantity("now"), limits);
    return result;
}

} // namespace

Calculation wear() {
    Declaration d;
    d.name = "wear";
    d.title = "Wear and what remains";
    d.purpose = "Whether a part is within its service limit and how far it will go at the same rate.";
    d.formula = {"remaining = (now - limit)/(new - now) x distance"};
    d.inputs = {
        quantity("now", "Now", Dimension::Length, "mm", "at the most worn place").range(0, 1000),
        quantity("new", "New", Dimension::Length, "mm", "from the manual or from a new part").range(0, 1000),
        quantity("limit", "Limit", Dimension::Length, "mm", "the manual's service limit").range(0, 1000),
        quantity("distance", "Distance so far", Dimension::Length, "km", "since the part was new")
            .range(0, 1e6),
        uncertainty(Dimension::Length, "mm", "0.05")};
    d.outputs = {quantityOut("remaining", "Remaining", Dimension::Length, "km")};
    d.givesVerdict = true;
    d.sources = {"proportion: wear is taken as even"};
    d.cautions = {
        "wear is seldom even: look again well before",
        "a pad at its backing plate, a cracked disc or a grooved drum is finished whatever the sum says"};
    d.example = {{{"now", "3.4 mm"}, {"new", "5 mm"}, {"limit", "2 mm"}, {"distance", "8000 km"}},
                 {{"remaining", "7000"}, {"verdict", "within"}}};
    return {d, work};
}

} // namespace undercowl::trade
