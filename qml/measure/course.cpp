#include "qml/measure/course.h"

#include "core/units/parse.h"
#include "qml/language/catalogue.h"
#include "qml/measure/measuring.h"
#include "qml/shell/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <vector>

namespace undercowl::ui {

namespace {

constexpr double msPerDay = 86'400'000;
constexpr std::size_t mostPoints = 12; // more have no room for their words

const char* stateSource(EngineState state) {
    switch (state) {
    case EngineState::Rest: return QT_TRANSLATE_NOOP("Measuring", "at rest");
    case EngineState::Idle: return QT_TRANSLATE_NOOP("Measuring", "at idle");
    case EngineState::Revs: break;
    }
    return QT_TRANSLATE_NOOP("Measuring", "at revs");
}

QString stateWords(EngineState state) {
    return QCoreApplication::translate("Measuring", stateSource(state));
}

struct StateEnding {
    EngineState state{};
    QString words;
};

// In every language: a shop that changes its language still knows what it measured before.
const std::vector<StateEnding>& stateEndings() {
    static const auto all = [] {
        std::vector<StateEnding> endings;
        for (const QString& code : languageCodes()) {
            const Catalogue catalogue(code);
            for (const EngineState state : engineStates)
                endings.push_back({state, catalogue.translated("Measuring", stateSource(state))});
        }
        return endings;
    }();
    return all;
}

std::optional<units::Quantity> quantityOf(const job::TypedValue& value) {
    const int index = measuredUnitIndex(value.unit);
    const auto number = units::parseNumber(value.digits, units::Comma::Decimal);
    if (index < 0 || !number)
        return std::nullopt;
    return units::Quantity{number->value, measuredUnit(index)};
}

struct Point {
    double across{};
    units::Quantity value;
    QString label;
};

struct Ends {
    std::optional<units::Quantity> low, high;
};

Ends limitsOf(const job::Reading& reading) {
    return {reading.low ? quantityOf(*reading.low) : std::nullopt,
            reading.high ? quantityOf(*reading.high) : std::nullopt};
}

std::optional<trade::Plot> plotOf(const std::vector<Point>& points, const Ends& ends) {
    if (points.size() < 2 || points.size() > mostPoints)
        return std::nullopt;
    trade::Plot plot;
    plot.unit = points.back().value.unit;
    for (const Point& point : points)
        if (const auto same = units::convert(point.value, plot.unit))
            plot.points.push_back({point.across, same->value, utf8(point.label)});
    const auto end = [&](const std::optional<units::Quantity>& limit) -> std::optional<double> {
        const auto same = limit ? units::convert(*limit, plot.unit) : tl::unexpected(units::UnitError{});
        return same ? std::optional(same->value) : std::nullopt;
    };
    plot.low = end(ends.low);
    plot.high = end(ends.high);
    return plot;
}

std::optional<trade::Plot> overStates(const job::Job& job, const StatedThing& about, const CourseNow& now) {
    std::vector<Point> points;
    Ends ends;
    for (const EngineState state : engineStates) {
        std::optional<units::Quantity> value;
        if (state == about.state)
            value = now.value;
        for (auto reading = job.readings.rbegin(); reading != job.readings.rend() && !value; ++reading) {
            const auto stated = statedThing(text(reading->what));
            if (!stated || stated->thing != about.thing || stated->state != state)
                continue;
            value = quantityOf(reading->value);
            if (state == EngineState::Revs)
                ends = limitsOf(*reading);
        }
        if (value)
            points.push_back({static_cast<double>(state), *value, stateWords(state)});
    }
    if (about.state == EngineState::Revs && (now.low || now.high))
        ends = {now.low, now.high};
    return plotOf(points, ends);
}

std::optional<trade::Plot> overDays(const job::Job& job, const QString& what, const CourseNow& now) {
    std::vector<Point> points;
    Ends ends;
    std::optional<job::TimeMs> first;
    const auto add = [&](job::TimeMs at, const units::Quantity& value) {
        first = first.value_or(at);
        points.push_back({static_cast<double>(at - *first) / msPerDay, value, when(at, now.at)});
    };
    for (const job::Reading& reading : job.readings)
        if (const auto value = quantityOf(reading.value); value && text(reading.what) == what) {
            add(reading.said.at, *value);
            ends = limitsOf(reading);
        }
    if (now.value)
        add(now.at, *now.value);
    if (now.low || now.high)
        ends = {now.low, now.high};
    return plotOf(points, ends);
}

} // namespace

QString measuredAt(const QString& thing, EngineState state) {
    return QCoreApplication::translate("Measuring", "%1, %2").arg(thing, stateWords(state));
}

std::optional<StatedThing> statedThing(const QString& what) {
    for (const auto& [state, words] : stateEndings()) {
        if (!what.endsWith(words))
            continue;
        QString thing = what.chopped(words.size()).trimmed();
        if (thing.endsWith(u','))
            thing = thing.chopped(1).trimmed();
        if (!thing.isEmpty())
            return StatedThing{thing, state};
    }
    return std::nullopt;
}

std::optional<trade::Plot> courseOf(const job::Job& job, const QString& what, const CourseNow& now) {
    if (what.isEmpty())
        return std::nullopt;
    const auto stated = statedThing(what);
    if (stated)
        if (auto plot = overStates(job, *stated, now))
            return plot;
    return overDays(job, what, now);
}

QString nextState(const job::Job& job) {
    if (job.readings.empty())
        return {};
    const auto last = statedThing(text(job.readings.back().what));
    return last && last->state != EngineState::Revs
               ? measuredAt(last->thing, engineStates.at(static_cast<std::size_t>(last->state) + 1))
               : QString();
}

} // namespace undercowl::ui
