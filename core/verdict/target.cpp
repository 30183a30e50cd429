#include "core/verdict/target.h"

#include "core/units/format.h"
#include "core/verdict/instrument.h"

#include <cstdlib>

namespace undercowl::verdict {

TargetLimits limitsAround(const units::Quantity& torque, const std::string& where) {
    TargetLimits around;
    around.percent = wrenchDeviation(WrenchType::Setting, 'A', torque.base()).value_or(0);
    const double width = torque.value * around.percent / 100;
    around.low = units::formatSignificant(torque.value - width);
    around.high = units::formatSignificant(torque.value + width);
    const auto side = [&](const std::string& digits) {
        return units::Quantity{std::strtod(digits.c_str(), nullptr), torque.unit};
    };
    around.limits.low = side(around.low);
    around.limits.high = side(around.high);
    around.limits.source = {Trust::ShopRecord, where + ", \u00B1 " +
                                                   units::formatSignificant(around.percent) +
                                                   " % as of a wrench by ISO 6789-1"};
    return around;
}

} // namespace undercowl::verdict
