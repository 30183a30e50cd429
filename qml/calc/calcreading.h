// What a calculation judged, as readings of the job.
#pragma once

#include "core/job/model.h"
#include "core/trade/result.h"

#include <QString>

#include <vector>

namespace undercowl::ui {

// The measured value with its limits and verdict, named WHAT; where the calculation's points are readings of
// their own (a voltage at rest, at idle and at revs), one for each, of which the last was judged. Ids are the
// caller's to give. The result must have a verdict.
[[nodiscard]] std::vector<job::Reading> readingsOf(const trade::Result& result, const QString& what);

} // namespace undercowl::ui
