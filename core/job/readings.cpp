#include "core/job/readings.h"

#include <algorithm>

namespace undercowl::job {

bool measuredAgain(const Job& job, const Reading& reading) {
    const auto at = std::find_if(job.readings.begin(), job.readings.end(),
                                 [&](const Reading& each) { return each.id == reading.id; });
    return at != job.readings.end() && std::any_of(at + 1, job.readings.end(), [&](const Reading& later) {
               return later.about == reading.about && later.what == reading.what;
           });
}

} // namespace undercowl::job
