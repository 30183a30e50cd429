#include "platform/cli/saycost.h"

#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "platform/cli/closing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <iostream>
#include <memory>

namespace undercowl::platform {
namespace {

std::optional<std::string> currencyOf(std::string typed) {
    if (typed.size() != 3 ||
        !std::ranges::all_of(typed, [](unsigned char c) { return std::isalpha(c) != 0; }))
        return std::nullopt;
    std::ranges::transform(typed, typed.begin(),
                           [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return typed;
}

Exit wrongCurrency(std::string_view option, const std::string& typed) {
    return complain(
        Exit::WrongUse,
        fmt::format("{}: \"{}\" is no currency: write it in three letters, such as EUR", option, typed));
}

Exit settle(const Context& context, OpenedJob& opened, const job::CostTerms& terms, const std::string& by) {
    if (const auto said = append(opened, {journal::costSettled(opened.job.id, terms)}, by); !said)
        return said.error();
    opened.job.costTerms = terms;
    const auto cost = job::costOf(opened.job, opened.store.now());
    if (context.json)
        printJson({{"cost", costJson(*cost)}});
    else
        sayCost(*cost);
    return Exit::Done;
}

struct Terms {
    std::string job;
    std::string currency;
    std::string rate;
    std::string tax;
    std::string by;
};

Exit terms(const Context& context, const Terms& wanted) {
    auto opened = openJob(context, wanted.job);
    if (!opened)
        return opened.error();
    job::CostTerms said = opened->job.costTerms.value_or(job::CostTerms{});
    if (!wanted.currency.empty()) {
        const auto currency = currencyOf(wanted.currency);
        if (!currency)
            return wrongCurrency("--currency", wanted.currency);
        said.currency = *currency;
    }
    if (said.currency.empty())
        return complain(Exit::WrongUse, "--currency: say in what the bill is written, such as EUR");
    for (const auto& [option, typed, field] :
         {std::tuple{"--rate", &wanted.rate, &said.hourRate}, std::tuple{"--tax", &wanted.tax, &said.tax}}) {
        if (typed->empty())
            continue;
        const auto digits = job::withPoint(*typed);
        if (!digits || digits->starts_with('-'))
            return complain(Exit::WrongUse,
                            fmt::format("{}: \"{}\" is no number that a bill is reckoned with: "
                                        "write it as digits, such as 58.50",
                                        option, *typed));
        *field = *digits;
    }
    return settle(context, *opened, said, wanted.by);
}

struct Charge {
    std::string job;
    std::string what;
    std::string sum;
    bool drop{};
    std::string by;
};

Exit charge(const Context& context, const Charge& wanted) {
    auto opened = openJob(context, wanted.job);
    if (!opened)
        return opened.error();
    if (!opened->job.costTerms)
        return complain(Exit::No, "no terms are settled: say them first with 'job terms --currency EUR'");
    job::CostTerms said = *opened->job.costTerms;
    if (wanted.drop) {
        std::vector<std::string> texts;
        for (const job::CostLine& line : said.lines)
            texts.push_back(line.what);
        const auto at = oneOf(texts, wanted.what, "line of the bill");
        if (!at)
            return at.error();
        said.lines.erase(said.lines.begin() + static_cast<std::ptrdiff_t>(*at));
        return settle(context, *opened, said, wanted.by);
    }
    const auto sum = job::withPoint(wanted.sum);
    if (!sum)
        return complain(Exit::WrongUse,
                        fmt::format("SUM: \"{}\" is no sum: write it without tax as digits, such as "
                                    "12.50; --drop takes a line out",
                                    wanted.sum));
    said.lines.push_back({wanted.what, *sum});
    return settle(context, *opened, said, wanted.by);
}

struct Approve {
    std::string job;
    std::string what;
    std::string from;
    std::string how;
    std::string sum;
    bool refused{};
    std::vector<std::string> findings;
    std::string by;
};

tl::expected<std::optional<job::TypedValue>, Exit> sumOf(const Approve& wanted, const job::Job& job) {
    if (wanted.sum.empty())
        return std::nullopt;
    const auto blank = wanted.sum.find(' ');
    const auto digits = job::withPoint(wanted.sum.substr(0, blank));
    if (!digits || digits->starts_with('-'))
        return tl::unexpected(
            complain(Exit::WrongUse,
                     fmt::format("--sum: \"{}\" is no sum: write it such as \"120.50 EUR\"", wanted.sum)));
    std::string unit = blank == std::string::npos ? "" : wanted.sum.substr(blank + 1);
    if (unit.empty() && job.costTerms)
        unit = job.costTerms->currency;
    const auto currency = currencyOf(unit);
    if (!currency)
        return tl::unexpected(wrongCurrency("--sum", unit));
    return job::TypedValue{*digits, *currency};
}

Exit approve(const Context& context, const Approve& wanted) {
    auto opened = openJob(context, wanted.job);
    if (!opened)
        return opened.error();
    job::Approval approval;
    approval.what = wanted.what;
    approval.by = wanted.from;
    approval.how = wanted.how;
    approval.given = !wanted.refused;
    if (approval.by.empty())
        if (const auto owner = opened->store.owner(opened->job.owner))
            approval.by = owner->name;
    if (approval.by.empty())
        return complain(Exit::WrongUse, "--from: say whose word it is; the job has no owner yet");
    const auto sum = sumOf(wanted, opened->job);
    if (!sum)
        return sum.error();
    approval.sum = *sum;
    std::vector<std::string> texts;
    for (const job::Finding& finding : opened->job.findings)
        texts.push_back(finding.text);
    for (const std::string& named : wanted.findings) {
        const auto at = oneOf(texts, named, "finding");
        if (!at)
            return at.error();
        approval.findings.push_back(opened->job.findings[*at].id);
    }
    approval.id = opened->store.newId();
    if (const auto said = append(*opened, {journal::approvalAsked(opened->job.id, approval)}, wanted.by);
        !said)
        return said.error();
    const std::string tells = approval.sum ? approval.sum->digits + " " + approval.sum->unit : std::string{};
    if (context.json)
        printJson({{"approval", approval.id},
                   {"what", approval.what},
                   {"given", approval.given},
                   {"from", approval.by},
                   {"how", approval.how},
                   {"sum", tells}});
    else
        std::cout << fmt::format("{}: {}{}; {}, {}\n", approval.given ? "approved" : "refused", approval.what,
                                 tells.empty() ? "" : ", " + tells, approval.by, approval.how);
    return Exit::Done;
}

} // namespace

void addTermsCommand(CLI::App& job, Context& context) {
    CLI::App* command =
        addCommand(job, "terms", "Say what the bill is reckoned with; what is not given stays",
                   "undercowlctl job terms 2026-031 --currency EUR --rate 54 --tax 19");
    const auto wanted = std::make_shared<Terms>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    command->add_option("--currency", wanted->currency, "Three letters, ISO 4217");
    command->add_option("--rate", wanted->rate, "An hour's work, without tax");
    command->add_option("--tax", wanted->tax, "Per cent");
    command->add_option("--by", wanted->by, "Who says it, where nobody works on this device yet");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return terms(context, *wanted); }; });
}

void addChargeCommand(CLI::App& job, Context& context) {
    CLI::App* command = addCommand(job, "charge", "Add a line to the bill, or take one out",
                                   "undercowlctl job charge 2026-031 \"tyre fitted outside\" 12.50");
    const auto wanted = std::make_shared<Charge>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    command->add_option("WHAT", wanted->what, "What it is for")->required();
    auto* sum = command->add_option("SUM", wanted->sum, "Without tax, in the currency of the terms");
    command->add_flag("--drop", wanted->drop, "Take the line with these words, or this number, out")
        ->excludes(sum);
    command->add_option("--by", wanted->by, "Who says it, where nobody works on this device yet");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return charge(context, *wanted); }; });
}

void addApproveCommand(CLI::App& job, Context& context) {
    CLI::App* command = addCommand(
        job, "approve",
        "Record the owner's word on work and its sum, at the beginning or when more was found",
        "undercowlctl job approve 2026-031 \"front brake, tyres\" --sum \"120.50 EUR\" --how called");
    const auto wanted = std::make_shared<Approve>();
    command->add_option("JOB", wanted->job, "Number or id of the job")->required();
    command->add_option("WHAT", wanted->what, "What it covers")->required();
    command->add_option("--from", wanted->from, "Who said so; the owner unless given");
    command->add_option("--how", wanted->how, "How it was said")
        ->required()
        ->check(CLI::IsMember({"called", "wrote", "stood here"}));
    command->add_option("--sum", wanted->sum, "Up to which sum, with its currency");
    command
        ->add_option("--finding", wanted->findings, "Finding that it covers, by words of it; may be repeated")
        ->allow_extra_args(false);
    command->add_flag("--refused", wanted->refused, "Asked, and not wanted");
    command->add_option("--by", wanted->by, "Who says it, where nobody works on this device yet");
    command->callback(
        [&context, wanted] { context.action = [&context, wanted] { return approve(context, *wanted); }; });
}

} // namespace undercowl::platform
