#include "platform/cli/job.h"

#include "core/job/cautions.h"
#include "core/job/cost.h"
#include "core/job/leaving.h"
#include "core/wiring/readback.h"
#include "platform/cli/closing.h"
#include "platform/cli/job_json.h"
#include "platform/cli/saycheck.h"
#include "platform/cli/saycost.h"
#include "platform/cli/sayproof.h"

#include <fmt/format.h>

#include <algorithm>
#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

void say(const std::string& line) {
    std::cout << line << '\n';
}

std::string hardwareInWords(const job::Hardware& hardware) {
    std::string words = fmt::format("{} {}", hardware.count, hardware.what);
    if (!hardware.thread.empty())
        words += " " + hardware.thread;
    if (!hardware.length.empty())
        words += " x " + hardware.length;
    if (hardware.torque)
        words += ", " + inWords(*hardware.torque);
    return words;
}

std::string_view headOf(job::Waits waits) {
    switch (waits) {
    case job::Waits::Bench: return "Bench time";
    case job::Waits::Prove: return "To be proved";
    case job::Waits::HandOver: return "Ready to hand over";
    case job::Waits::Owner: return "The owner's answer";
    case job::Waits::Parts: return "Parts";
    case job::Waits::Outside: return "Something else";
    case job::Waits::Nothing: break;
    }
    return "Handed over";
}

Exit list(const Context& context) {
    const auto store = openStore(context);
    if (!store)
        return store.error();
    const auto jobs = store->jobs();
    if (!jobs)
        return complain(jobs.error());
    if (context.json) {
        auto all = OrderedJson::array();
        for (const store::JobLine& line : *jobs)
            all.push_back(toJson(line));
        printJson({{"jobs", all}});
        return Exit::Done;
    }
    // In groups of what they wait for, as on the screen; within a group as they come, last worked on first.
    std::vector<store::JobLine> lines = *jobs;
    std::stable_sort(lines.begin(), lines.end(), [](const store::JobLine& a, const store::JobLine& b) {
        return a.waits.what < b.waits.what;
    });
    const store::JobLine* before = nullptr;
    for (const store::JobLine& line : lines) {
        if (before == nullptr || before->waits.what != line.waits.what)
            say(fmt::format("{}:", headOf(line.waits.what)));
        before = &line;
        say(fmt::format("{}  {}  {}  [{}]", line.number, line.machine, line.owner, job::code(line.moment)));
        say("    " + job::english(line.stopped));
        say("    " + job::english(line.waits.why.key.empty() ? line.next : line.waits.why));
        if (line.openUnsafe > 0)
            say(fmt::format("    ! {} unsafe finding{} open", line.openUnsafe,
                            line.openUnsafe == 1 ? "" : "s"));
        if (line.waiting)
            say("    a task waits");
    }
    return Exit::Done;
}

void showFindings(const job::Job& job) {
    for (const job::Finding& finding : job.findings)
        say(fmt::format("  {} {}: {}{}", finding.settled ? "done  " : "open  ", job::code(finding.severity),
                        finding.text,
                        finding.settled        ? "; " + finding.settledHow
                        : finding.toDo.empty() ? ""
                                               : "; to do: " + finding.toDo));
}

void showSteps(const job::Job& job) {
    for (const job::StripStep& step : job.steps)
        say(fmt::format("  {} {}{}", step.refitted ? "back  " : "apart ", step.title,
                        step.bag.empty() ? "" : ", bag " + step.bag));
}

void showWiring(const job::Job& job) {
    for (const wiring::Gathering& gathering : job.gatherings) {
        say(fmt::format("  {} ({} places, seen from the {})", gathering.title, gathering.places,
                        wiring::code(gathering.seenFrom)));
        for (const wiring::Half half : {wiring::Half::Loom, wiring::Half::Unit})
            for (const wiring::ReadBackItem& item :
                 wiring::readBack(gathering, half, wiring::Answer::AsFound))
                say("    " + wiring::englishSentence(item));
    }
}

Exit show(const Context& context, const std::string& wanted) {
    const auto opened = openJob(context, wanted);
    if (!opened)
        return opened.error();
    const job::Job& job = opened->job;
    const auto machine = opened->store.machine(job.machine).value_or(job::Machine{});
    const auto owner = opened->store.owner(job.owner).value_or(job::Owner{});
    if (context.json) {
        OrderedJson json = toJson(job, machine, owner);
        json["against_leaving"] = OrderedJson::array();
        for (const job::Against& against : job::againstLeaving(job))
            json["against_leaving"].push_back({{"stops", against.weighs == job::Weighs::Stops},
                                               {"weighs", job::code(against.weighs)},
                                               {"why", job::english(against.why)}});
        json["to_prove"] = proofsJson(job);
        const auto cost = job::costOf(job, opened->store.now());
        json["cost"] = cost ? costJson(*cost) : OrderedJson(nullptr);
        printJson(json);
        return Exit::Done;
    }
    const job::Standing standing = job::standing(job);
    say(fmt::format("{}  {} {}{}  {}", job.number, machine.make, machine.model,
                    machine.year ? fmt::format(", {}", *machine.year) : "", owner.name));
    say(fmt::format("  frame {}{}", machine.frameNumber, job.odometer ? ", " + inWords(*job.odometer) : ""));
    say("  " + job.reason);
    say("  " + job::english(standing.stopped));
    say("  " + job::english(standing.next));
    const auto part = [](const char* title, bool any) {
        if (any)
            say(title);
    };
    part("Findings", !job.findings.empty());
    showFindings(job);
    part("Steps", !job.steps.empty());
    showSteps(job);
    part("Wiring", !job.gatherings.empty());
    showWiring(job);
    part("Readings", !job.readings.empty());
    for (const job::Reading& reading : job.readings)
        say(fmt::format("  {}: {}{}", reading.what, inWords(reading.value),
                        reading.verdict.empty() ? "" : ", " + reading.verdict));
    part("Parts", !job.parts.empty());
    for (const job::Part& each : job.parts)
        say(fmt::format("  {} {}: {}", each.name, each.number, job::code(each.state)));
    part("To prove", !job.steps.empty() || !job.gatherings.empty());
    sayProofs(job);
    const auto cost = job::costOf(job, opened->store.now());
    part("Cost", cost.has_value());
    if (cost)
        sayCost(*cost);
    const auto against = job::againstLeaving(job);
    part("Before it leaves", !against.empty());
    for (const job::Against& each : against)
        say(fmt::format("  {}  {}", job::code(each.weighs), job::english(each.why)));
    return Exit::Done;
}

Exit next(const Context& context, const std::string& wanted) {
    const auto opened = openJob(context, wanted);
    if (!opened)
        return opened.error();
    const job::Job& job = opened->job;
    const job::Standing standing = job::standing(job);
    const bool open = standing.moment != job::Moment::Done;
    const job::StripStep* step = job::findStep(job, standing.stepId);
    if (context.json) {
        OrderedJson answer = toJson(standing);
        answer["step"] = step != nullptr ? toJson(*step) : OrderedJson(nullptr);
        printJson(answer);
        return open ? Exit::Done : Exit::No;
    }
    say(job::english(standing.stopped));
    say(job::english(standing.next));
    if (step != nullptr) {
        for (const std::string& caution : step->cautions)
            say(fmt::format("  ! {}", job::englishCaution(caution)));
        for (const job::Hardware& hardware : step->hardware)
            say("  " + hardwareInWords(hardware));
        if (!step->note.empty())
            say("  " + step->note);
    }
    return open ? Exit::Done : Exit::No;
}

} // namespace

void addJobCommand(CLI::App& root, Context& context) {
    CLI::App* group = addCommand(root, "job", "Jobs: which there are, one of them, what is next on it",
                                 "undercowlctl job next 2026-031");
    group->require_subcommand(1);
    addCommand(*group, "list", "All jobs, by what each waits for, last worked on first",
               "undercowlctl job list")
        ->callback([&context] { context.action = [&context] { return list(context); }; });
    const auto add = [&](const char* name, const char* description,
                         Exit (*act)(const Context&, const std::string&)) {
        CLI::App* command =
            addCommand(*group, name, description, fmt::format("undercowlctl job {} 2026-031 --json", name));
        const auto wanted = std::make_shared<std::string>();
        command->add_option("JOB", *wanted, "Number or id of the job")->required();
        command->callback([&context, wanted, act] {
            context.action = [&context, wanted, act] { return act(context, *wanted); };
        });
    };
    add("show", "Everything known of one job", show);
    add("rounds", "The rounds that were begun, check by check; exit 1 when one is without an answer",
        showRounds);
    add("proofs", "What must be proved before it leaves; exit 1 when something is open", showProofs);
    add("cost", "What it costs: time, parts, tax; exit 1 when no terms are settled", showCost);
    addRoundCommand(*group, context);
    addCheckCommand(*group, context);
    addProveCommand(*group, context);
    addTermsCommand(*group, context);
    addChargeCommand(*group, context);
    addApproveCommand(*group, context);
    add("next", "Where a job stopped and what is next; exit 1 when nothing is", next);
}

} // namespace undercowl::platform
