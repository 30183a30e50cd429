#include "qml/calc/calcreading.h"

#include "core/units/format.h"
#include "core/verdict/words.h"
#include "qml/calc/calcwords.h"
#include "qml/measure/course.h"

#include <utility>

namespace undercowl::ui {

namespace {

// What was judged, as a reading of the job: only measured values with limits have a place in the record.
job::Reading readingOf(const verdict::Verdict& verdict, const std::string& limitSource) {
    const auto typed = [](const units::Quantity& quantity) {
        return job::TypedValue{units::formatSignificant(quantity.value, 5), quantity.unit.symbol()};
    };
    job::Reading reading;
    reading.value = typed(verdict.measured);
    reading.uncertainty = units::format(verdict.expanded, 2) + " (k = 2)";
    if (verdict.low)
        reading.low = typed(*verdict.low);
    if (verdict.high)
        reading.high = typed(*verdict.high);
    reading.limitSource = limitSource;
    reading.verdict = verdict::word(verdict.answer);
    reading.probability = verdict.probability;
    return reading;
}

} // namespace

std::vector<job::Reading> readingsOf(const trade::Result& result, const QString& what) {
    job::Reading judged = readingOf(*result.verdict, result.limitSource);
    judged.what = utf8(what);
    if (!result.plot || result.plot->thing.empty() || result.plot->points.size() != engineStates.size())
        return {std::move(judged)};
    const QString thing = calcWords(result.plot->thing);
    std::vector<job::Reading> all;
    for (std::size_t i = 0; i + 1 < engineStates.size(); ++i) {
        job::Reading reading;
        reading.value = {units::formatSignificant(result.plot->points[i].up, 5), result.plot->unit.symbol()};
        reading.uncertainty = judged.uncertainty;
        reading.what = utf8(measuredAt(thing, engineStates.at(i)));
        all.push_back(std::move(reading));
    }
    judged.what = utf8(measuredAt(thing, engineStates.back()));
    all.push_back(std::move(judged));
    return all;
}

} // namespace undercowl::ui
