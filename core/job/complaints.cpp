#include "core/job/complaints.h"

#include "core/job/text.h"

#include <algorithm>

namespace undercowl::job {

std::vector<Complaint> complaints(const Job& job) {
    std::vector<Complaint> all;
    const auto add = [&](const std::string& what, bool owners) {
        const auto same = [&](const Complaint& other) { return folded(other.what) == folded(what); };
        if (folded(what).empty() || std::any_of(all.begin(), all.end(), same))
            return;
        const auto answer =
            std::find_if(job.functionsAfter.begin(), job.functionsAfter.end(),
                         [&](const FunctionCheck& check) { return folded(check.what) == folded(what); });
        all.push_back({what, owners, answer == job.functionsAfter.end() ? nullptr : &*answer});
    };
    add(job.reason, true);
    add(job.worksNot, true);
    for (const FunctionCheck& check : job.functions)
        if (check.answer == FunctionAnswer::DoesNot)
            add(check.what, false);
    return all;
}

} // namespace undercowl::job
