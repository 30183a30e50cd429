#include "qml/measure/curve.h"

#include "core/units/format.h"
#include "qml/calc/calcwords.h"

#include <algorithm>

namespace undercowl::ui {

void Curve::set(const std::optional<trade::Plot>& plot) {
    across_.clear();
    up_.clear();
    labels_.clear();
    low_ = high_ = -1;
    lowText_.clear();
    highText_.clear();
    if (!plot || plot->points.size() < 2) {
        emit changed();
        return;
    }
    double left = plot->points.front().across;
    double right = left;
    double bottom = plot->points.front().up;
    double top = bottom;
    for (const trade::Plot::Point& point : plot->points) {
        left = std::min(left, point.across);
        right = std::max(right, point.across);
        bottom = std::min(bottom, point.up);
        top = std::max(top, point.up);
    }
    for (const auto& end : {plot->low, plot->high})
        if (end) {
            bottom = std::min(bottom, *end);
            top = std::max(top, *end);
        }
    const double air = top > bottom ? (top - bottom) * 0.1 : 1;
    const auto height = [&](double value) { return (value - bottom + air) / (top - bottom + 2 * air); };
    const auto told = [&](double value) { return numberText(units::format({value, plot->unit}, 4)); };
    for (const trade::Plot::Point& point : plot->points) {
        across_ += right > left ? (point.across - left) / (right - left) : 0.5;
        up_ += height(point.up);
        labels_ += calcWords(point.label) + QStringLiteral("\n") + told(point.up);
    }
    if (plot->low) {
        low_ = height(*plot->low);
        lowText_ = told(*plot->low);
    }
    if (plot->high) {
        high_ = height(*plot->high);
        highText_ = told(*plot->high);
    }
    emit changed();
}

} // namespace undercowl::ui
