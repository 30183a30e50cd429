// Hoses, vents and cables: where they run, and what reading them back on refit gave.
#include "core/handover/sections.h"

#include "core/job/lines.h"

#include <utility>

namespace undercowl::handover {
namespace {

Message readBack(const job::StripStep& step) {
    if (!step.lineCheck) {
        return say("record.wiring.not-checked");
    }
    return say(step.lineCheck->outcome == job::MatchOutcome::Matches ? "record.wiring.matches"
                                                                     : "record.wiring.matches-not");
}

} // namespace

MaybeSection linesSection(const Subject& subject) {
    Table table{{say("record.lines.line"), say("record.lines.runs"), say("record.lines.ends"),
                 say("record.wiring.refit")},
                {}};
    for (const job::StripStep& step : subject.job.steps) {
        // A hose that nobody described and nobody read back is told by its step already.
        if (job::isLine(step) && (step.lineCheck || !step.routing.empty() || !step.ends.empty())) {
            table.rows.push_back(Row{{step.title, step.routing, step.ends, readBack(step)}});
        }
    }
    if (table.rows.empty()) {
        return {};
    }
    return Section{say("record.lines.title"), {std::move(table)}};
}

} // namespace undercowl::handover
