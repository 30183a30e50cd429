// What the open job lends to a calculation.
#include "core/units/format.h"
#include "core/units/parse.h"
#include "qml/calc/calcview.h"

namespace undercowl::ui {

std::string CalcView::fromJob(const trade::Input& input) const {
    const auto now = snapshot();
    if (now == nullptr)
        return {};
    const job::Job& job = now->job;
    if ((input.key == "altitude" || input.key == "altitude_to") && job.altitude)
        return job.altitude->digits + ' ' + job.altitude->unit;
    if (input.key != "carried" || !job.riderMass)
        return {};
    double kilograms = 0;
    for (const auto& mass : {job.riderMass, job.luggageMass})
        if (mass) {
            const auto read = units::parseQuantity(mass->digits + ' ' + mass->unit, units::Dimension::Mass);
            if (!read)
                return {};
            kilograms += read->quantity().in(input.declaredUnit());
        }
    return units::formatSignificant(kilograms, 5) + ' ' + input.unit;
}

} // namespace undercowl::ui
