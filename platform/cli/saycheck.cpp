#include "platform/cli/saycheck.h"

#include "core/journal/say.h"
#include "core/journal/saywork.h"
#include "platform/cli/closing.h"
#include "platform/cli/rounds.h"

#include <fmt/format.h>

#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

struct Begun {
    std::string job;
    std::vector<std::string> has;
    std::string by;
};

Exit begin(const Context& context, const Begun& wanted) {
    auto opened = openJob(context, wanted.job);
    if (!opened)
        return opened.error();
    const auto lists = roundListsOf(opened->store);
    if (!lists)
        return lists.error();
    job::Round round = journal::composed(*lists, wanted.has);
    if (round.checks.empty())
        return complain(Exit::No, "the shop's lists hold no check for this machine: see 'rounds list'");
    round.id = opened->store.newId();
    if (const auto said = append(*opened, {journal::roundBegun(opened->job.id, round)}, wanted.by); !said)
        return said.error();
    if (context.json)
        printJson({{"round", round.id}, {"title", round.title}, {"checks", round.checks.size()}});
    else
        std::cout << fmt::format("begun: {}, {} checks\n", round.title, round.checks.size());
    return Exit::Done;
}

struct Ticked {
    std::string job;
    std::string check;
    std::string answer;
    std::string note;
    std::string severity;
    std::string toDo;
    std::optional<int> minutes;
    std::string by;
};

Exit tick(const Context& context, const Ticked& wanted) {
    auto opened = openJob(context, wanted.job);
    if (!opened)
        return opened.error();
    std::vector<std::string> texts;
    std::vector<std::pair<const job::Round*, const job::RoundCheck*>> checks;
    for (const job::Round& round : opened->job.rounds)
        for (const job::RoundCheck& check : round.checks) {
            texts.push_back(check.group.empty() ? check.text : check.group + ": " + check.text);
            checks.emplace_back(&round, &check);
        }
    const auto at = oneOf(texts, wanted.check, "check");
    if (!at)
        return at.error();
    const auto [round, check] = checks[*at];
    const auto answer = wanted.answer == "finding" ? std::optional(job::CheckAnswer::Found)
                                                   : job::checkAnswerFromCode(wanted.answer);
    if (!answer)
        return complain(Exit::WrongUse,
                        fmt::format("\"{}\": say fine, finding or \"not done\"", wanted.answer));
    const bool found = *answer == job::CheckAnswer::Found;
    const auto severity = job::severityFromCode(wanted.severity);
    if (found && (!severity || wanted.note.empty()))
        return complain(Exit::WrongUse,
                        "a finding says what was found with --note \"brake hose cracked\" and how "
                        "serious it is with --severity unsafe, soon or note");
    if (!found && (!wanted.severity.empty() || !wanted.toDo.empty() || wanted.minutes))
        return complain(Exit::WrongUse, "--severity, --to-do and --minutes belong to a finding");
    std::vector<journal::Draft> drafts;
    job::Finding finding;
    if (found) {
        finding.id = opened->store.newId();
        finding.text = wanted.note;
        finding.severity = *severity;
        finding.toDo = wanted.toDo;
        finding.minutes = wanted.minutes;
        drafts.push_back(journal::findingNoted(opened->job.id, finding));
    }
    drafts.push_back(journal::checkAnswered(opened->job.id, round->id, check->text, *answer,
                                            found ? std::string{} : wanted.note, finding.id));
    if (const auto said = append(*opened, drafts, wanted.by); !said)
        return said.error();
    if (context.json)
        printJson({{"number", *at + 1},
                   {"check", check->text},
                   {"answer", job::code(*answer)},
                   {"finding", finding.id}});
    else
        std::cout << fmt::format("{}: {}{}\n", job::code(*answer), texts[*at],
                                 found ? fmt::format("; {}: {}", job::code(finding.severity), finding.text)
                                       : "");
    return Exit::Done;
}

} // namespace

void addRoundCommand(CLI::App& job, Context& context) {
    CLI::App* command = addCommand(job, "round", "Begin a round of checks that fit the machine",
                                   "undercowlctl job round 2026-031 --has two-stroke --has gears");
    const auto wanted = std::make_shared<Begun>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    std::vector<std::string> known;
    for (const std::string_view trait : journal::traits())
        known.emplace_back(trait);
    command->add_option("--has", wanted->has, "What the machine has; may be repeated")
        ->allow_extra_args(false)
        ->check(CLI::IsMember(known));
    command->add_option("--by", wanted->by, "Who says it, where nobody works on this device yet");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return begin(context, *wanted); }; });
}

void addCheckCommand(CLI::App& job, Context& context) {
    CLI::App* command = addCommand(
        job, "check", "Tick a check of a round: fine, finding or not done",
        "undercowlctl job check 2026-031 \"front tyre\" finding --severity unsafe --note \"cracked to "
        "the cords\" --to-do \"new tyre\" --minutes 45");
    const auto wanted = std::make_shared<Ticked>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    command->add_option("CHECK", wanted->check, "Its number in 'job rounds', or words of it")->required();
    command->add_option("ANSWER", wanted->answer, "fine, finding or \"not done\"")->required();
    command->add_option("--note", wanted->note, "What was found; beside the other answers a remark");
    command->add_option("--severity", wanted->severity, "Of the finding: unsafe, soon or note");
    command->add_option("--to-do", wanted->toDo, "What the finding asks for");
    command->add_option("--minutes", wanted->minutes, "How long that will take")
        ->check(CLI::Range(1, 86'400));
    command->add_option("--by", wanted->by, "Who says it, where nobody works on this device yet");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return tick(context, *wanted); }; });
}

} // namespace undercowl::platform
