// A reading that was said, put into what is being entered.
#pragma once

#include "core/talk/intent.h"
#include "qml/measure/measuring.h"

namespace undercowl::ui {

// The draft's values with the reading in them, and with it what is measured, unit and limits. What is there
// stays where it is of the same thing; else a proposal for that thing is taken, with its limits; else its
// name alone, and no limits: those of something else would judge it wrongly. 'unit' is the index of the
// draft's unit.
[[nodiscard]] QVariantMap withHeard(const QVariantMap& values, int unit,
                                    const std::vector<Proposal>& proposed, const talk::SpokenReading& heard);

} // namespace undercowl::ui
