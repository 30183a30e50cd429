#include "qml/measure/band.h"

#include "core/units/format.h"
#include "qml/shell/words.h"

#include <algorithm>
#include <cmath>

namespace undercowl::ui {

void Band::set(const std::optional<verdict::Verdict>& verdict) {
    shown_ = verdict.has_value();
    low_ = high_ = acceptFrom_ = acceptTo_ = -1;
    lowText_.clear();
    highText_.clear();
    if (!verdict) {
        emit changed();
        return;
    }
    const double value = verdict->measured.base();
    const double half = verdict->expanded.base();
    // Everything has its place, with some air at the ends.
    double from = value - half;
    double to = value + half;
    for (const auto& end : {verdict->low, verdict->high})
        if (end) {
            from = std::min(from, end->base());
            to = std::max(to, end->base());
        }
    const double air = (to - from) * 0.12;
    const auto place = [&](double at) {
        return std::clamp((at - from + air) / (to - from + 2 * air), 0.0, 1.0);
    };
    const auto placeOf = [&](const std::optional<units::Quantity>& end) {
        return end ? place(end->base()) : -1;
    };
    low_ = placeOf(verdict->low);
    high_ = placeOf(verdict->high);
    acceptFrom_ = placeOf(verdict->acceptFrom);
    acceptTo_ = placeOf(verdict->acceptTo);
    value_ = place(value);
    half_ = half / (to - from + 2 * air);
    if (verdict->low)
        lowText_ = numberText(units::format(*verdict->low));
    if (verdict->high)
        highText_ = numberText(units::format(*verdict->high));
    valueText_ = tr("%1 \u00b1 %2")
                     .arg(numberText(units::format(verdict->measured)),
                          numberText(units::format(verdict->expanded, 2)));
    emit changed();
}

} // namespace undercowl::ui
