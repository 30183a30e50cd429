#include "platform/demo/judge.h"

#include "core/units/parse.h"
#include "core/verdict/decide.h"
#include "core/verdict/words.h"

#include <fmt/format.h>

#include <optional>

namespace undercowl::demo {
namespace {

std::optional<units::Dimension> dimensionNamed(std::string_view name) {
    for (int i = 0; i < units::dimensionCount; ++i)
        if (const auto dimension = static_cast<units::Dimension>(i); units::englishName(dimension) == name)
            return dimension;
    return {};
}

tl::expected<units::Quantity, std::string> quantity(std::string_view field, const std::string& text,
                                                    units::Dimension dimension) {
    const auto parsed = units::parseQuantity(text, dimension);
    if (!parsed)
        return tl::unexpected(fmt::format("{}: {}", field, parsed.error().message));
    return parsed->quantity();
}

} // namespace

tl::expected<void, std::string> judge(job::Reading& reading, std::string_view kind) {
    const auto dimension = dimensionNamed(kind);
    if (!dimension)
        return tl::unexpected(fmt::format("kind: {} is nothing that can be measured", kind));
    const auto written = [](const job::TypedValue& value) { return value.digits + " " + value.unit; };
    const auto measured = quantity("value", written(reading.value), *dimension);
    if (!measured)
        return tl::unexpected(measured.error());
    const std::string half = reading.uncertainty.substr(0, reading.uncertainty.find(" ("));
    const auto expanded = quantity("uncertainty", half, units::intervalOf(*dimension));
    if (!expanded)
        return tl::unexpected(expanded.error());
    verdict::Limits limits;
    if (reading.low) {
        const auto low = quantity("low", written(*reading.low), *dimension);
        if (!low)
            return tl::unexpected(low.error());
        limits.low = *low;
    }
    if (reading.high) {
        const auto high = quantity("high", written(*reading.high), *dimension);
        if (!high)
            return tl::unexpected(high.error());
        limits.high = *high;
    }
    if (!limits.low && !limits.high)
        return {}; // kept without a verdict
    const auto decided = verdict::decide(*measured, limits, *expanded);
    if (!decided)
        return tl::unexpected(decided.error().message);
    reading.verdict = verdict::word(decided->answer);
    reading.probability = decided->probability;
    return {};
}

} // namespace undercowl::demo
