// What was found, done and left, and what the owner has to heed.
#include "core/handover/sections.h"

#include "core/job/complaints.h"
#include "core/job/needs.h"
#include "core/job/readings.h"
#include "core/job/settling.h"

#include <algorithm>
#include <utility>

namespace undercowl::handover {
namespace {

// An owner wants to know that something is apart, not each screw of it.
constexpr std::size_t mostOpenSteps = 8;

Message severity(job::Severity severity) {
    switch (severity) {
    case job::Severity::Unsafe: return say("record.severity.unsafe");
    case job::Severity::Soon: return say("record.severity.soon");
    case job::Severity::Note: break;
    }
    return say("record.severity.note");
}

Message became(const job::Job& job, const job::Finding& finding) {
    if (finding.settled) {
        std::vector<std::string> parts;
        for (const job::Part* part : job::partsNotFitted(job, finding)) {
            addOnce(parts, part->name);
        }
        if (!parts.empty()) {
            const std::string names = joined(parts, ", ");
            return finding.settledHow.empty()
                       ? say("record.found.settled-without-how", {names})
                       : say("record.found.settled-without", {finding.settledHow, names});
        }
        return finding.settledHow.empty() ? say("record.found.settled")
                                          : say("record.found.settled-how", {finding.settledHow});
    }
    if (finding.refused) {
        return say("record.found.refused", {finding.refused->by});
    }
    return finding.toDo.empty() ? say("record.found.open") : say("record.found.open-do", {finding.toDo});
}

struct Progress {
    std::size_t all{};
    std::size_t back{};
    std::vector<std::string> titles;
    std::vector<std::string> names;
};

Progress progressOf(const Subject& subject, const job::Id& task) {
    Progress progress;
    for (const job::StripStep& step : subject.job.steps) {
        if (step.task != task) {
            continue;
        }
        ++progress.all;
        progress.titles.push_back(step.title);
        addOnce(progress.names, subject.nameOf(step.said.mechanic));
        if (step.refitted) {
            ++progress.back;
            addOnce(progress.names, subject.nameOf(step.refitted->said.mechanic));
        }
    }
    return progress;
}

Message stateOf(const Progress& progress, const job::Task* task) {
    const std::string all = std::to_string(progress.all);
    const std::string back = std::to_string(progress.back);
    if (task != nullptr && task->waiting) {
        return progress.all == 0 ? say("record.done.waits", {task->waitingFor})
                                 : say("record.done.waits-back", {task->waitingFor, back, all});
    }
    if (progress.all == 0) {
        return say("record.done.not-begun");
    }
    return progress.back == progress.all ? say("record.done.all-back", {all})
                                         : say("record.done.some-back", {back, all});
}

bool anyCaution(const job::Job& job, std::string_view key) {
    return std::any_of(job.steps.begin(), job.steps.end(), [key](const job::StripStep& step) {
        return std::find(step.cautions.begin(), step.cautions.end(), key) != step.cautions.end();
    });
}

std::string titleOf(const job::Job& job, const job::Id& gathering) {
    const wiring::Gathering* found = job::findGathering(job, gathering);
    return found == nullptr ? std::string{} : found->title;
}

// What the machine must not do yet, and what was left out: once for each work.
void addBans(const job::Job& job, const auto& heed) {
    std::vector<std::string> named;
    for (const job::Banned& banned : job::bans(job)) {
        const bool start = banned.ban == job::Ban::Start;
        if (banned.apart) {
            heed(say(start ? "record.heed.start" : "record.heed.ride", {banned.step->title}));
            continue;
        }
        for (const std::string& what : banned.missing) {
            const job::SeenTo* seen = job::seenTo(*banned.step, what);
            if (std::find(named.begin(), named.end(), what) != named.end()) {
                continue;
            }
            named.push_back(what);
            heed(seen != nullptr ? say("record.heed.left-out", {what, seen->note})
                                 : say("record.heed.not-done", {what}));
        }
    }
}

// What the owner complained of, and what did not work when it came in.
void addComplaints(const job::Job& job, const auto& left) {
    for (const job::Complaint& complaint : job::complaints(job)) {
        if (complaint.open()) {
            left(say(complaint.owners ? "record.left.complaint" : "record.left.function", {complaint.what}));
        } else if (complaint.answer->answer == job::FunctionAnswer::NotTried) {
            left(say("record.left.as-it-was", {complaint.what, complaint.answer->note}));
        }
    }
    for (const job::FunctionCheck& check : job.functionsAfter) {
        if (check.answer == job::FunctionAnswer::DoesNot) {
            left(check.note.empty() ? say("record.left.works-not", {check.what})
                                    : say("record.left.works-not-note", {check.what, check.note}));
        }
    }
}

} // namespace

Section heedSection(const Subject& subject) {
    const job::Job& job = subject.job;
    Section section{say("record.heed.title"), {}};
    const auto heed = [&section](Message message) {
        section.blocks.emplace_back(Paragraph{std::move(message), Weight::Caution});
    };
    const auto open = std::count_if(job.steps.begin(), job.steps.end(),
                                    [](const job::StripStep& step) { return !step.refitted; });
    if (open > 0) {
        heed(say("record.heed.unfinished", {std::to_string(open), std::to_string(job.steps.size())}));
    }
    for (const job::Finding& finding : job.findings) {
        if (finding.severity == job::Severity::Unsafe && !finding.settled && finding.refused) {
            section.blocks.emplace_back(
                Paragraph{say("record.heed.refused",
                              {finding.text, day(finding.refused->said.at), finding.refused->by}),
                          Weight::Strong});
        } else if (finding.severity == job::Severity::Unsafe && !finding.settled) {
            heed(finding.toDo.empty() ? say("record.heed.unsafe", {finding.text})
                                      : say("record.heed.unsafe-do", {finding.text, finding.toDo}));
        }
    }
    addBans(job, heed);
    for (const job::Reading& reading : job.readings) {
        if (job::measuredAgain(job, reading)) {
            continue;
        }
        if (reading.verdict == "outside") {
            heed(say("record.heed.outside", {reading.what, written(reading.value)}));
        } else if (reading.verdict == "too close to call") {
            heed(say("record.heed.close", {reading.what, written(reading.value)}));
        }
    }
    for (const job::WireCheck& check : job.wireChecks) {
        if (check.outcome == job::MatchOutcome::DoesNotMatch) {
            heed(
                say("record.heed.wire", {titleOf(job, check.gathering), std::to_string(check.place.number)}));
        }
    }
    for (const job::StripStep& step : job.steps) {
        if (step.lineCheck && step.lineCheck->outcome == job::MatchOutcome::DoesNotMatch) {
            heed(say("record.heed.line",
                     {step.lineCheck->note.empty() ? step.title : step.title + ", " + step.lineCheck->note}));
        }
    }
    // Common practice, no source.
    if (anyCaution(job, "brake-proof")) {
        heed(say("record.heed.brake"));
    }
    if (anyCaution(job, "strap-on-lift")) {
        heed(say("record.heed.wheel"));
    }
    if (section.blocks.empty()) {
        section.blocks.emplace_back(Paragraph{say("record.heed.none"), Weight::Plain});
    }
    return section;
}

MaybeSection foundSection(const Subject& subject) {
    if (subject.job.findings.empty()) {
        return {};
    }
    Table table{{say("record.found.how-serious"), say("record.found.what"), say("record.found.became")}, {}};
    std::vector<const job::Finding*> findings;
    for (const job::Finding& finding : subject.job.findings) {
        findings.push_back(&finding);
    }
    std::stable_sort(findings.begin(), findings.end(), [](const job::Finding* a, const job::Finding* b) {
        return a->severity < b->severity; // unsafe first
    });
    for (const job::Finding* finding : findings) {
        table.rows.push_back(
            Row{{severity(finding->severity), finding->text, became(subject.job, *finding)}});
    }
    return Section{say("record.found.title"), {std::move(table)}};
}

MaybeSection doneSection(const Subject& subject) {
    const job::Job& job = subject.job;
    Table table{
        {say("record.done.work"), say("record.done.steps"), say("record.done.state"), say("record.done.by")},
        {}};
    const auto addRow = [&](Text title, const Progress& progress, const job::Task* task) {
        table.rows.push_back(Row{{std::move(title), joined(progress.titles, "; "), stateOf(progress, task),
                                  joined(progress.names, ", ")}});
    };
    for (const job::Task& task : job.tasks) {
        addRow(task.title, progressOf(subject, task.id), &task);
    }
    if (const Progress other = progressOf(subject, {}); other.all > 0) {
        addRow(say("record.done.other"), other, nullptr);
    }
    if (table.rows.empty()) {
        return {};
    }
    return Section{say("record.done.title"), {std::move(table)}};
}

Section leftSection(const Subject& subject) {
    const job::Job& job = subject.job;
    Section section{say("record.left.title"), {}};
    const auto left = [&section](Message message) {
        section.blocks.emplace_back(Paragraph{std::move(message), Weight::Plain});
    };
    std::size_t open = 0;
    for (const job::StripStep& step : job.steps) {
        if (!step.refitted && ++open <= mostOpenSteps) {
            left(step.bag.empty() ? say("record.left.step", {step.title})
                                  : say("record.left.step-bag", {step.title, step.bag}));
        }
    }
    if (open == 0) {
        left(say("record.left.none"));
    } else if (open > mostOpenSteps) {
        left(say("record.left.more", {std::to_string(open - mostOpenSteps)}));
    }
    for (const job::Task& task : job.tasks) {
        if (task.waiting) {
            left(say("record.left.waits", {task.title, task.waitingFor}));
        }
    }
    for (const job::Part& part : job.parts) {
        if (job::outstanding(part)) {
            left(say("record.left.part", {part.name}));
        }
    }
    addComplaints(job, left);
    return section;
}

} // namespace undercowl::handover
