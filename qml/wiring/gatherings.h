// What the wiring screens read from a gathering, in the words of the screen.
#pragma once

#include "core/job/model.h"
#include "core/wiring/tags.h"
#include "core/wiring/twins.h"

#include <QString>

namespace undercowl::ui {

class ShopSession;

// The photo that the gathering's wires are read from: the one that its map names, otherwise the newest about
// it, otherwise the newest of its strip step. Null if there is none; owned by the job.
[[nodiscard]] const job::Photo* photoOf(const job::Job& job, const wiring::Gathering& gathering);

// "2 grey, red tracer: places 2 and 5. Tag them before the connector is unplugged."
[[nodiscard]] QString adviceOn(const wiring::TwinGroup& group);
// "To you places 1 and 4 look alike: green, brown. ..."; empty when only equal colours do.
[[nodiscard]] QString adviceOn(const wiring::TagPlan& plan);
// As the mechanic of this device has set it.
[[nodiscard]] colour::Vision visionIn(const ShopSession& session);

// "connector, 6 places, wire side, latch at the top".
[[nodiscard]] QString describe(const wiring::Gathering& gathering);

// "5 of 6 wires as found"; says when there is none yet.
// What is left of reading its wires back: "place 5 does not match; not read back: place 2"; empty where
// nothing is.
[[nodiscard]] QString wiresLeftWords(const job::Job& job, const wiring::Gathering& gathering);
[[nodiscard]] QString progressOf(const wiring::Gathering& gathering);

// "1, 2 and 5".
[[nodiscard]] QString listed(const QStringList& items);

} // namespace undercowl::ui
