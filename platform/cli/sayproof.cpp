#include "platform/cli/sayproof.h"

#include "core/job/proving.h"
#include "core/job/torque.h"
#include "core/journal/say.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/verdict/words.h"
#include "platform/cli/closing.h"
#include "platform/cli/verdict.h"

#include <fmt/format.h>

#include <algorithm>
#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

struct Wanted {
    std::string job;
    std::string proof;
    std::string how;
    std::string leftOut;
    std::string seenBy;
    std::string read;
    TypedReading reading; // what it is judged by
    std::string by;
};

// With the digits as they were typed. The first value's unit is the unit of those without.
tl::expected<job::TypedValue, Exit> typed(const std::string& text, const std::string& unit = {}) {
    const auto split = units::splitQuantity(text);
    if (!split)
        return tl::unexpected(complain(Exit::WrongUse, text + ": " + split.error().message));
    std::string digits = split->number.text;
    std::ranges::replace(digits, ',', '.');
    return job::TypedValue{digits, split->unitText.empty() ? unit : split->unitText};
}

// Of the step's torques the first one that no reading shows yet.
const job::Hardware* pieceOf(const job::Job& job, const job::ToProve& proof) {
    const job::StripStep* step = job::findStep(job, proof.subject);
    if (step == nullptr || proof.kind != job::ProofKind::Torque)
        return nullptr;
    const auto seen = job::torquesSeen(job, *step);
    const auto open = std::ranges::find_if(
        seen, [](const auto& one) { return one.state != job::TorqueSeen::State::Inside; });
    return open != seen.end() ? open->piece : seen.empty() ? nullptr : seen.front().piece;
}

std::optional<std::string> nameOf(const job::Job& job, const job::ToProve& proof) {
    const job::StripStep* step = job::findStep(job, proof.subject);
    if (step == nullptr)
        return std::nullopt;
    const job::Hardware* piece = pieceOf(job, proof);
    return piece != nullptr ? job::torqueName(*step, *piece) + ", torque" : step->title;
}

tl::expected<job::Reading, Exit> readingOf(const Context& context, OpenedJob& opened,
                                           const job::ToProve& proof, TypedReading given) {
    const auto what = nameOf(opened.job, proof);
    if (!what)
        return tl::unexpected(complain(
            Exit::WrongUse,
            "--reading: wires are proved by reading them back on the screen, or by looking (--how)"));
    // Without limits of its own it is held against the torque that the step demands.
    std::string source = verdict::LimitSource{verdict::Trust::ShopRecord, "as given"}.text();
    if (const job::Hardware* piece = pieceOf(opened.job, proof);
        piece != nullptr && given.low.empty() && given.high.empty()) {
        const auto around = job::torqueLimits(*piece);
        given.low = around.low + " " + piece->torque->unit;
        given.high = around.high + " " + piece->torque->unit;
        given.rule = "simple";
        source = around.limits.source.text();
    }
    const auto judgement = judged(context, given);
    if (!judgement)
        return tl::unexpected(judgement.error());
    job::Reading reading;
    reading.id = opened.store.newId();
    reading.about = proof.subject;
    reading.what = *what;
    const auto value = typed(given.measured.front());
    if (!value)
        return tl::unexpected(value.error());
    reading.value = *value;
    for (auto [text, limit] : {std::pair{&given.low, &reading.low}, std::pair{&given.high, &reading.high}})
        if (!text->empty()) {
            const auto read = typed(*text, value->unit);
            if (!read)
                return tl::unexpected(read.error());
            *limit = *read;
        }
    if (reading.low || reading.high)
        reading.limitSource = source;
    reading.instrument = given.instrument;
    if (judgement->expanded)
        reading.uncertainty = units::format(*judgement->expanded, 2) + " (k = 2)";
    if (judgement->verdict) {
        reading.verdict = verdict::word(judgement->verdict->answer);
        reading.probability = judgement->verdict->probability;
    }
    return reading;
}

// Whether the step's torque is proved once that is read: within limits that do not hold it is not.
bool shows(job::Job job, const job::ToProve& proof, const job::Reading& reading) {
    job.readings.push_back(reading);
    const auto all = job::toProve(job);
    return std::ranges::any_of(all, [&](const job::ToProve& each) {
        return each.subject == proof.subject && each.what == proof.what &&
               each.state == job::ToProve::State::Proved;
    });
}

Exit prove(const Context& context, Wanted wanted) {
    if (!wanted.read.empty())
        wanted.reading.measured = {wanted.read};
    auto opened = openJob(context, wanted.job);
    if (!opened)
        return opened.error();
    const auto all = job::toProve(opened->job);
    std::vector<std::string> texts;
    texts.reserve(all.size());
    for (const job::ToProve& proof : all)
        texts.push_back(job::english(proof.words));
    const auto at = oneOf(texts, wanted.proof, "proof");
    if (!at)
        return at.error();
    const job::ToProve& proof = all[*at];
    if (proof.apart)
        return complain(Exit::No, fmt::format("{}: its part is not on again; refit it first", texts[*at]));
    const bool leftOut = !wanted.leftOut.empty();
    if (!leftOut && wanted.read.empty() && (!wanted.how.empty() || wanted.seenBy.empty())) {
        if (!proof.against.empty())
            return complain(Exit::No,
                            fmt::format("{}: {}; put it right, or say why it is left out (--left-out)",
                                        texts[*at], job::againstText(proof)));
        if (proof.needsHow && wanted.how.empty())
            return complain(Exit::WrongUse,
                            fmt::format("{}: no reading shows the torque; give it (--reading), or "
                                        "say how it was tightened (--how)",
                                        texts[*at]));
    }
    std::vector<journal::Draft> drafts;
    std::string verdict;
    bool proves = true;
    if (!wanted.read.empty()) {
        const auto reading = readingOf(context, *opened, proof, wanted.reading);
        if (!reading)
            return reading.error();
        verdict = reading->verdict;
        proves =
            proof.kind == job::ProofKind::Torque ? shows(opened->job, proof, *reading) : verdict != "outside";
        drafts.push_back(journal::readingTaken(opened->job.id, *reading));
    }
    // A torque is proved by its reading alone; what was read outside its limits proves nothing.
    const bool byReading = !drafts.empty() && proof.kind == job::ProofKind::Torque;
    const bool onlyEyes = !wanted.seenBy.empty() && wanted.how.empty() && drafts.empty() && !leftOut;
    if (proves && !byReading && !onlyEyes) {
        const std::string note = leftOut                                 ? wanted.leftOut
                                 : wanted.how.empty() && !drafts.empty() ? wanted.read
                                                                         : wanted.how;
        drafts.push_back(
            proof.kind == job::ProofKind::Afterwards
                ? journal::refitSeenTo(opened->job.id, proof.subject, proof.what, leftOut, note)
                : journal::proofGiven(opened->job.id, {proof.subject, proof.what, leftOut, note, {}}));
    }
    if (!wanted.seenBy.empty()) {
        if (!proof.secondEyes)
            return complain(
                Exit::WrongUse,
                "--seen-by: a second pair of eyes signs brakes, wheels and steering; this is none");
        drafts.push_back(
            journal::secondEyesGiven(opened->job.id, {proof.subject, proof.what, wanted.seenBy, {}}));
    }
    if (const auto said = append(*opened, drafts, wanted.by); !said)
        return said.error();
    const std::string state = !proves ? "open" : leftOut ? "left out" : onlyEyes ? "signed" : "proved";
    if (context.json)
        printJson({{"number", *at + 1}, {"what", texts[*at]}, {"state", state}, {"verdict", verdict}});
    else
        std::cout << fmt::format("{}: {}{}\n", state, texts[*at], verdict.empty() ? "" : "; " + verdict);
    return proves ? Exit::Done : Exit::No;
}

} // namespace

void addProveCommand(CLI::App& job, Context& context) {
    CLI::App* command =
        addCommand(job, "prove",
                   "Say that something is proved: by looking, by a reading, or left out for a reason; exit 1 "
                   "when the reading is outside",
                   "undercowlctl job prove 2026-031 3 --reading \"104 N.m\" --low 99 --high 109 --instrument "
                   "torque-wrench-100");
    const auto wanted = std::make_shared<Wanted>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    command->add_option("PROOF", wanted->proof, "Its number in 'job proofs', or words of it")->required();
    auto* how = command->add_option("--how", wanted->how, "How it was proved: \"pulled at it\"");
    auto* reading = command->add_option("--reading", wanted->read, "What was read, with its unit");
    command->add_option("--left-out", wanted->leftOut, "Why it was not done: the owner's record says so")
        ->excludes(how)
        ->excludes(reading);
    command->add_option("--seen-by", wanted->seenBy, "Who looked as the second pair of eyes");
    addReadingOptions(*command, wanted->reading);
    command->add_option("--by", wanted->by, "Who says it, where nobody works on this device yet");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return prove(context, *wanted); }; });
}

} // namespace undercowl::platform
