// What was measured, which parts it took, and what is due.
#include "core/handover/sections.h"

#include <utility>

namespace undercowl::handover {
namespace {

constexpr job::TimeMs msPerDay = 24LL * 60 * 60 * 1000;

Text instrument(const job::Reading& reading) {
    if (reading.uncertainty.empty()) {
        return reading.instrument;
    }
    if (reading.instrument.empty()) {
        return say("record.measured.within", {reading.uncertainty});
    }
    return say("record.measured.instrument-within", {reading.instrument, reading.uncertainty});
}

// Where it was measured stands beside what, unless the words say it already.
Text what(const Subject& subject, const job::Reading& reading) {
    const job::StripStep* step = job::findStep(subject.job, reading.about);
    if (step == nullptr || step->title.empty() || reading.what.find(step->title) != std::string::npos)
        return reading.what;
    return say("record.measured.at-step", {reading.what, step->title});
}

Text value(const job::Reading& reading) {
    if (reading.repeated.size() < 2)
        return written(reading.value);
    std::string each;
    for (const std::string& digits : reading.repeated)
        each += (each.empty() ? "" : "; ") + digits;
    return say("record.measured.mean",
               {written(reading.value), std::to_string(reading.repeated.size()), std::move(each)});
}

Message limit(const job::Reading& reading) {
    if (reading.low && reading.high) {
        return say("record.measured.from-to", {written(*reading.low), written(*reading.high)});
    }
    if (reading.low) {
        return say("record.measured.at-least", {written(*reading.low)});
    }
    if (reading.high) {
        return say("record.measured.at-most", {written(*reading.high)});
    }
    return say("record.measured.no-limit");
}

Text verdict(const job::Reading& reading) {
    if (reading.verdict == "within") {
        return say("record.verdict.within");
    }
    if (reading.verdict == "outside") {
        return say("record.verdict.outside");
    }
    if (reading.verdict == "too close to call") {
        return say("record.verdict.close");
    }
    return say("record.verdict.none");
}

// A day is told as a date: an owner keeps a calendar, not a count.
Message when(const job::Recheck& recheck) {
    const auto byDay = [&] { return day(recheck.said.at + recheck.afterDays.value_or(0) * msPerDay); };
    if (recheck.after && recheck.afterDays) {
        return say("record.due.after-days", {written(*recheck.after), byDay()});
    }
    if (recheck.after) {
        return say("record.due.after", {written(*recheck.after)});
    }
    return recheck.afterDays ? say("record.due.days", {byDay()}) : say("record.due.some-time");
}

Message partState(job::PartState state) {
    switch (state) {
    case job::PartState::Wanted: return say("record.part.wanted");
    case job::PartState::Asked: return say("record.part.asked");
    case job::PartState::Ordered: return say("record.part.ordered");
    case job::PartState::Here: return say("record.part.here");
    case job::PartState::Wrong: return say("record.part.wrong");
    case job::PartState::NotNeeded: return say("record.part.not-needed");
    case job::PartState::Fitted: break;
    }
    return say("record.part.fitted");
}

} // namespace

MaybeSection measuredSection(const Subject& subject) {
    if (subject.job.readings.empty()) {
        return {};
    }
    Table table{{say("record.measured.what"), say("record.measured.value"), say("record.measured.instrument"),
                 say("record.measured.limit"), say("record.measured.source"), say("record.measured.verdict")},
                {}};
    for (const job::Reading& reading : subject.job.readings) {
        table.rows.push_back(Row{{what(subject, reading), value(reading), instrument(reading), limit(reading),
                                  reading.limitSource, verdict(reading)}});
    }
    return Section{say("record.measured.title"), {std::move(table)}};
}

MaybeSection partsSection(const Subject& subject) {
    if (subject.job.parts.empty()) {
        return {};
    }
    Table table{{say("record.parts.part"), say("record.parts.number"), say("record.parts.state")}, {}};
    for (const job::Part& part : subject.job.parts) {
        const Text name =
            part.note.empty() ? Text{part.name} : Text{say("record.part.note", {part.name, part.note})};
        table.rows.push_back(Row{{name, part.number, partState(part.state)}});
    }
    return Section{say("record.parts.title"), {std::move(table)}};
}

MaybeSection dueSection(const Subject& subject) {
    Table table{{say("record.due.what"), say("record.due.when")}, {}};
    for (const job::Finding& finding : subject.job.findings) {
        if (!finding.settled && finding.severity == job::Severity::Soon) {
            table.rows.push_back(
                Row{{finding.toDo.empty() ? finding.text : finding.toDo, say("record.due.soon")}});
        }
    }
    for (const job::Recheck& recheck : subject.job.rechecks) {
        table.rows.push_back(Row{{recheck.what, when(recheck)}});
    }
    if (table.rows.empty()) {
        return {};
    }
    return Section{say("record.due.title"), {std::move(table)}};
}

} // namespace undercowl::handover
