#include "platform/cli/closing.h"

#include "core/job/proving.h"

#include <fmt/format.h>

#include <iostream>

namespace undercowl::platform {
namespace {

void say(const std::string& line) {
    std::cout << line << '\n';
}

std::string_view stateOf(const job::ToProve& proof) {
    switch (proof.state) {
    case job::ToProve::State::Proved: return "proved";
    case job::ToProve::State::LeftOut: return "left out";
    case job::ToProve::State::Open: break;
    }
    return proof.apart ? "apart" : "open";
}

std::string_view answerOf(const job::RoundCheck& check) {
    return check.answer ? job::code(*check.answer) : "open";
}

} // namespace

tl::expected<OpenedJob, Exit> openJob(const Context& context, const std::string& wanted) {
    auto store = openStore(context);
    if (!store)
        return tl::unexpected(store.error());
    const auto id = store->jobByNumberOrId(wanted);
    if (!id)
        return tl::unexpected(complain(id.error()));
    auto job = store->job(*id);
    if (!job)
        return tl::unexpected(complain(job.error()));
    return OpenedJob{std::move(*store), std::move(*job)};
}

void sayProofs(const job::Job& job) {
    for (const job::ToProve& proof : job::toProve(job))
        say(fmt::format("  {:8} {}{}{}", stateOf(proof), job::english(proof.words),
                        proof.note.empty() ? "" : "; " + proof.note,
                        proof.secondedBy.empty() ? "" : "; second pair of eyes: " + proof.secondedBy));
}

void sayCost(const job::Cost& cost) {
    for (const job::CostRow& row : cost.rows)
        say(fmt::format("  {}{}: {}", row.what.empty() ? "other work" : row.what,
                        row.minutes > 0 ? fmt::format(", {} min", row.minutes) : "",
                        job::money(row.net, cost.currency)));
    say(fmt::format("  without tax {}, tax {}, together {}", job::money(cost.net, cost.currency),
                    job::money(cost.tax, cost.currency), job::money(cost.gross, cost.currency)));
    for (const job::Message& doubt : cost.doubts)
        say("  ! " + job::english(doubt));
}

OrderedJson proofsJson(const job::Job& job) {
    auto all = OrderedJson::array();
    for (const job::ToProve& proof : job::toProve(job))
        all.push_back({{"kind", job::code(proof.kind)},
                       {"what", job::english(proof.words)},
                       {"state", stateOf(proof)},
                       {"note", proof.note},
                       {"second_eyes", proof.secondedBy}});
    return all;
}

OrderedJson costJson(const job::Cost& cost) {
    OrderedJson json{{"currency", cost.currency}, {"rows", OrderedJson::array()}};
    const int places = job::currencyPlaces(cost.currency);
    for (const job::CostRow& row : cost.rows)
        json["rows"].push_back(
            {{"what", row.what}, {"minutes", row.minutes}, {"net", job::written(row.net, places)}});
    json["net"] = job::written(cost.net, places);
    json["tax"] = job::written(cost.tax, places);
    json["gross"] = job::written(cost.gross, places);
    json["minutes"] = cost.minutes;
    json["minutes_expected"] = cost.minutesExpected;
    return json;
}

Exit showRounds(const Context& context, const std::string& wanted) {
    const auto opened = openJob(context, wanted);
    if (!opened)
        return opened.error();
    std::size_t open = 0;
    auto all = OrderedJson::array();
    for (const job::Round& round : opened->job.rounds) {
        if (!context.json)
            say(round.title);
        auto checks = OrderedJson::array();
        for (const job::RoundCheck& check : round.checks) {
            open += check.answer ? 0 : 1;
            if (context.json)
                checks.push_back({{"group", check.group},
                                  {"check", check.text},
                                  {"answer", answerOf(check)},
                                  {"note", check.note},
                                  {"finding", check.finding}});
            else
                say(fmt::format("  {:8} {}{}{}", answerOf(check),
                                check.group.empty() ? "" : check.group + ": ", check.text,
                                check.note.empty() ? "" : "; " + check.note));
        }
        all.push_back({{"key", round.key}, {"title", round.title}, {"checks", checks}});
    }
    if (context.json)
        printJson({{"rounds", all}, {"open", open}});
    else if (opened->job.rounds.empty())
        say("no round was begun");
    return open == 0 ? Exit::Done : Exit::No;
}

Exit showProofs(const Context& context, const std::string& wanted) {
    const auto opened = openJob(context, wanted);
    if (!opened)
        return opened.error();
    const auto open = job::openProofs(opened->job).size();
    if (context.json)
        printJson({{"proofs", proofsJson(opened->job)}, {"open", open}});
    else
        sayProofs(opened->job);
    return open == 0 ? Exit::Done : Exit::No;
}

Exit showCost(const Context& context, const std::string& wanted) {
    const auto opened = openJob(context, wanted);
    if (!opened)
        return opened.error();
    const auto cost = job::costOf(opened->job, opened->store.now());
    if (context.json)
        printJson({{"cost", cost ? costJson(*cost) : OrderedJson(nullptr)}});
    else if (cost)
        sayCost(*cost);
    else
        say("no terms are settled: currency, hour rate and tax are said on the screen 'Cost'");
    return cost ? Exit::Done : Exit::No;
}

} // namespace undercowl::platform
