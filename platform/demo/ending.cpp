#include "platform/demo/ending.h"

#include "core/journal/rounds.h"
#include "core/journal/say.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "platform/demo/story.h"

#include <fmt/format.h>

#include <algorithm>

namespace undercowl::demo {
namespace {

job::Id jobOf(const std::string& number) {
    return Teller::id(number, "");
}

bool asks(const job::Round& round, const std::string& check) {
    return std::any_of(round.checks.begin(), round.checks.end(),
                       [&](const job::RoundCheck& each) { return each.text == check; });
}

} // namespace

store::Result<std::vector<Draft>> toldRound(const std::string& number, const Json& saying) {
    const auto has = saying.at("round").get<std::vector<std::string>>();
    job::Round round = journal::composed(journal::builtInRounds(), has);
    round.id = Teller::id(number, text(saying, "key"));
    const Json found = saying.value("found", Json::object());
    const Json notDone = saying.value("not done", Json::object());
    const auto open = saying.value("to come", std::vector<std::string>{});
    std::vector<std::string> named = open;
    for (const Json* each : {&found, &notDone})
        for (const auto& item : each->items())
            named.push_back(item.key());
    for (const std::string& check : named)
        if (!asks(round, check))
            return refused(fmt::format("shop.json: the round of {} does not ask \"{}\"", number, check));
    std::vector drafts{journal::roundBegun(jobOf(number), round)};
    for (const job::RoundCheck& check : round.checks) {
        if (std::find(open.begin(), open.end(), check.text) != open.end())
            continue;
        if (found.contains(check.text))
            drafts.push_back(journal::checkAnswered(jobOf(number), round.id, check.text,
                                                    job::CheckAnswer::Found, {},
                                                    Teller::id(number, text(found, check.text))));
        else if (notDone.contains(check.text))
            drafts.push_back(journal::checkAnswered(jobOf(number), round.id, check.text,
                                                    job::CheckAnswer::NotDone, text(notDone, check.text)));
        else
            drafts.push_back(
                journal::checkAnswered(jobOf(number), round.id, check.text, job::CheckAnswer::Fine));
    }
    return drafts;
}

store::Result<std::vector<Draft>> toldMap(const std::string& number, const Json& saying) {
    wiring::Gathering gathering;
    gathering.id = Teller::id(number, text(saying, "key"));
    gathering.title = text(saying, "map");
    gathering.kind = wiring::GatheringKind::LooseTerminals;
    const Json& wires = saying.at("wires");
    gathering.places = static_cast<int>(wires.size());
    std::vector drafts{journal::gatheringDescribed(jobOf(number), gathering)};
    for (const Json& each : wires) {
        const auto colour = colour::wireColourFromCode(each.at(0).get<std::string>());
        const auto terminal = wiring::terminalFromText(each.at(1).get<std::string>());
        if (!colour || !terminal)
            return refused(fmt::format("shop.json: {} is no wire: colour, terminal, function", each.dump()));
        wiring::PlaceAnswer answer;
        answer.how = wiring::HowKnown::Typed;
        answer.wire.colour = *colour;
        answer.wire.terminal = *terminal;
        answer.wire.function = each.at(2).get<std::string>();
        drafts.push_back(journal::wireAnswered(jobOf(number), gathering.id,
                                               {wiring::Half::Loom, static_cast<int>(drafts.size()), 1},
                                               wiring::Answer::AsFound, answer));
    }
    return drafts;
}

std::vector<Draft> toldMatches(const std::string& number, const Json& saying) {
    std::vector<Draft> drafts;
    for (int place = 1; place <= saying.at("places").get<int>(); ++place)
        drafts.push_back(journal::wireChecked(jobOf(number), {Teller::id(number, text(saying, "matches")),
                                                              {wiring::Half::Loom, place, 1},
                                                              job::MatchOutcome::Matches,
                                                              wiring::Answer::AsFound,
                                                              text(saying, "how"),
                                                              {}}));
    return drafts;
}

store::Result<std::vector<Draft>> toldSignature(store::Store& store, const std::filesystem::path& assets,
                                                const std::string& number, const Json& saying) {
    const auto bytes = readBytes(assets / "signature.png");
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto kept = store.keepMedia(*bytes, "png");
    if (!kept)
        return tl::unexpected(kept.error());
    return std::vector{journal::ownerSigned(
        jobOf(number), {Teller::id(number, "signature"), text(saying, "sign"), kept->name, {}})};
}

Draft proof(const std::string& number, const Json& saying) {
    return journal::proofGiven(
        jobOf(number),
        {Teller::id(number, text(saying, "prove")), text(saying, "what"), false, text(saying, "how"), {}});
}

Draft seconded(const std::string& number, const Json& saying) {
    return journal::secondEyesGiven(
        jobOf(number),
        {Teller::id(number, text(saying, "seconded")), text(saying, "what"), text(saying, "who"), {}});
}

Draft ridden(const std::string& number, const Json& saying) {
    return journal::roadTested(
        jobOf(number), {Teller::id(number, "ridden"), value(saying, "ridden"), text(saying, "note"), {}});
}

Draft rechecked(const std::string& number, const Json& saying) {
    return journal::recheckSeen(jobOf(number), Teller::id(number, text(saying, "rechecked")),
                                text(saying, "note"));
}

Draft cost(const std::string& number, const Json& saying) {
    job::CostTerms terms{text(saying, "cost"), text(saying, "rate"), text(saying, "tax")};
    const Json lines = saying.value("lines", Json::object());
    for (const auto& line : lines.items())
        terms.lines.push_back({line.key(), line.value().get<std::string>()});
    return journal::costSettled(jobOf(number), terms);
}

Draft worksNow(const std::string& number, const Json& saying) {
    return journal::functionProved(
        jobOf(number), {text(saying, "works now"), job::FunctionAnswer::Works, text(saying, "note"), {}});
}

} // namespace undercowl::demo
