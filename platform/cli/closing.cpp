#include "platform/cli/closing.h"

#include "core/job/proving.h"
#include "core/job/text.h"

#include <fmt/format.h>

#include <algorithm>
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

tl::expected<void, Exit> append(OpenedJob& opened, const std::vector<journal::Draft>& drafts,
                                const std::string& by) {
    if (auto someone = beSomeone(opened.store, by); !someone)
        return someone;
    if (const auto said = opened.store.append(drafts); !said)
        return tl::unexpected(complain(said.error()));
    return {};
}

tl::expected<std::size_t, Exit> oneOf(const std::vector<std::string>& texts, const std::string& wanted,
                                      std::string_view kind) {
    const bool number = !wanted.empty() && wanted.size() < 6 &&
                        std::ranges::all_of(wanted, [](char c) { return c >= '0' && c <= '9'; });
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (number ? std::to_string(i + 1) == wanted
                   : job::lowered(texts[i]).find(job::lowered(wanted)) != std::string::npos)
            found.push_back(i);
    if (found.size() == 1)
        return found.front();
    std::string all;
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (found.empty() || std::ranges::find(found, i) != found.end())
            all += fmt::format("\n  {:2} {}", i + 1, texts[i]);
    if (texts.empty())
        return tl::unexpected(complain(Exit::WrongUse, fmt::format("there is no {} on this job", kind)));
    return tl::unexpected(
        complain(Exit::WrongUse, fmt::format("\"{}\" names {} {}: give its number, or more of its words:{}",
                                             wanted, found.empty() ? "no" : "more than one", kind, all)));
}

void sayProofs(const job::Job& job) {
    int number = 0;
    for (const job::ToProve& proof : job::toProve(job))
        say(fmt::format("  {:2} {:8} {}{}{}", ++number, stateOf(proof), job::english(proof.words),
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
        all.push_back({{"number", all.size() + 1},
                       {"kind", job::code(proof.kind)},
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
    std::size_t number = 0; // over all rounds: so that it names the check in 'job check'
    for (const job::Round& round : opened->job.rounds) {
        if (!context.json)
            say(round.title);
        auto checks = OrderedJson::array();
        for (const job::RoundCheck& check : round.checks) {
            open += check.answer ? 0 : 1;
            ++number;
            if (context.json)
                checks.push_back({{"number", number},
                                  {"group", check.group},
                                  {"check", check.text},
                                  {"answer", answerOf(check)},
                                  {"note", check.note},
                                  {"finding", check.finding}});
            else
                say(fmt::format("  {:2} {:8} {}{}{}", number, answerOf(check),
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
        say("no terms are settled: say currency, hour rate and tax with 'job terms', or on the screen "
            "'Cost'");
    return cost ? Exit::Done : Exit::No;
}

} // namespace undercowl::platform
