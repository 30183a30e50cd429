// What was measured before of the same thing, as points of a small plot: over days, or a voltage at rest, at
// idle and at revs side by side.
#pragma once

#include "core/job/model.h"
#include "core/trade/result.h"
#include "core/units/quantity.h"

#include <QString>

#include <array>
#include <optional>

namespace undercowl::ui {

// The three states of an engine in which one thing is measured one after the other. What was measured ends
// with such words ("battery, at idle"): that is how readings that belong together are known.
enum class EngineState : std::uint8_t { Rest, Idle, Revs };
inline constexpr std::array engineStates{EngineState::Rest, EngineState::Idle, EngineState::Revs};
[[nodiscard]] QString measuredAt(const QString& thing, EngineState state); // "battery, at idle"

struct StatedThing {
    QString thing; // "battery"
    EngineState state{};
};
// Of "battery, at idle" and "battery at idle"; nothing of other words.
[[nodiscard]] std::optional<StatedThing> statedThing(const QString& what);

// The reading that is being entered, as far as there is one.
struct CourseNow {
    job::TimeMs at{};
    std::optional<units::Quantity> value;
    std::optional<units::Quantity> low, high; // limits, where some are given
};

// Nothing where there are fewer than two points, or more than a plot has room for. The unit is that of the
// newest point; the band that of the limits now given, else those kept last (of the three states: those at
// revs).
[[nodiscard]] std::optional<trade::Plot> courseOf(const job::Job& job, const QString& what,
                                                  const CourseNow& now);

// "battery, at idle" when the reading kept last was that at rest and none at idle was kept since; empty
// otherwise.
[[nodiscard]] QString nextState(const job::Job& job);

} // namespace undercowl::ui
