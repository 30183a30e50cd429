#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace undercowl::trade {
namespace {

using units::Dimension;

Outcome work(const Declaration& declaration, const Given& given) {
    const double hours = given.in("days", Dimension::Time, "h");
    const double share = given.number("current") * hours / given.number("capacity") * 100;
    Result result(declaration);
    result.say(fmt::format("charge = {:.4g} A x {:.4g} h = {:.4g} Ah of {:.4g} Ah: {:.4g} %",
                           given.number("current"), hours, given.number("current") * hours,
                           given.number("capacity"), share));
    if (share > 100)
        result.warn(fmt::format("empty after {:.3g} days: a battery cannot lose more than all",
                                given.in("days", Dimension::Time, "d") * 100 / share));
    result.put("charge_lost", std::min(share, 100.0));
    const double days = given.in("limit", Dimension::Number, "percent") / 100 * given.number("capacity") /
                        given.number("current") / 24;
    if (std::isfinite(days)) // no current, no day
        result.put("days_to_limit", days);
    // The meter's error carries over to the charge in the same proportion.
    verdict::Limits limits;
    const units::Unit ampere = units::unit(Dimension::Current, "A");
    limits.high = units::Quantity{
        given.in("limit", Dimension::Number, "percent") / 100 * given.number("capacity") / hours, ampere};
    limits.source = {given.typed("limit") ? verdict::Trust::ShopRecord : verdict::Trust::WorkedOutHere,
                     given.typed("limit") ? "as given" : "common practice, no source"};
    result.judge(given, given.quantity("current"), limits);
    return result;
}

} // namespace

Calculation standingDrain() {
    Declaration d;
    d.name = "standing-drain";
    d.title = "Drain while standing";
    d.purpose = "How much of the battery a standing current takes until the next ride.";
    d.formula = {"charge lost = current x time/capacity"};
    d.inputs = {
        quantity("current", "Current", Dimension::Current, "A", "ignition off, meter in the negative lead")
            .range(0, 100),
        quantity("capacity", "Capacity", Dimension::Charge, "Ah", "printed on the battery").range(0.5, 200),
        quantity("days", "Days standing", Dimension::Time, "d", "until the next ride").range(0.01, 3650),
        quantity("limit", "Loss that is allowed", Dimension::Number, "percent", "of the capacity")
            .withDefault("50")
            .range(1, 100),
        uncertainty(Dimension::Current, "A", "0.0002")};
    d.outputs = {quantityOut("charge_lost", "Charge lost", Dimension::Number, "percent"),
                 quantityOut("days_to_limit", "Days until the limit", Dimension::Time, "d")};
    d.givesVerdict = true;
    d.sources = {"charge is current times time", "half the charge as limit: common practice, no source"};
    d.cautions = {"self-discharge comes on top, more so in the warm and in an old battery",
                  "never press the starter with the meter in the lead: its fuse blows"};
    d.example = {{{"current", "3 mA"}, {"capacity", "6 Ah"}, {"days", "30"}},
                 {{"charge_lost", "36"}, {"verdict", "within"}}};
    return {d, work};
}

} // namespace undercowl::trade
