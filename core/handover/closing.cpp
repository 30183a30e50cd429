// The end of the owner's record: what was proved, before and after, what it cost, who signed.
#include "core/handover/sections.h"
#include "core/job/complaints.h"
#include "core/job/cost.h"
#include "core/job/proving.h"

#include <algorithm>

namespace undercowl::handover {
namespace {

constexpr std::size_t mostPairs = 3; // photos before and after

Message functionAnswer(const job::FunctionCheck* check) {
    if (check == nullptr)
        return say("record.function.not-asked");
    const bool noted = !check->note.empty();
    const auto answer = [&](std::string_view plain, std::string_view withNote) {
        return noted ? say(withNote, {check->note}) : say(plain);
    };
    switch (check->answer) {
    case job::FunctionAnswer::Works: return answer("record.function.works", "record.function.works-note");
    case job::FunctionAnswer::DoesNot:
        return answer("record.function.does-not", "record.function.does-not-note");
    case job::FunctionAnswer::NotTried: break;
    }
    return answer("record.function.not-tried", "record.function.not-tried-note");
}

const job::FunctionCheck* checkOf(const std::vector<job::FunctionCheck>& checks, const std::string& what) {
    const auto found = std::find_if(checks.begin(), checks.end(),
                                    [&](const job::FunctionCheck& check) { return check.what == what; });
    return found == checks.end() ? nullptr : &*found;
}

// What worked before beside what works now; what was only tried once as well.
std::optional<Table> functions(const job::Job& job) {
    std::vector<std::string> names;
    std::vector<std::string> owners; // complaints that have an answer; leftSection() tells the others
    for (const job::Complaint& complaint : job::complaints(job)) {
        if (complaint.owners && complaint.answer != nullptr) {
            addOnce(names, complaint.answer->what);
            addOnce(owners, complaint.answer->what);
        }
    }
    for (const auto* list : {&job.functions, &job.functionsAfter})
        for (const job::FunctionCheck& check : *list)
            addOnce(names, check.what);
    if (names.empty())
        return std::nullopt;
    Table table{{say("record.function.what"), say("record.function.before"), say("record.function.now")}, {}};
    for (const std::string& name : names) {
        const job::FunctionCheck* before = checkOf(job.functions, name);
        const bool complained = std::find(owners.begin(), owners.end(), name) != owners.end();
        table.rows.push_back(
            Row{{name,
                 complained && before == nullptr ? say("record.function.complained") : functionAnswer(before),
                 functionAnswer(checkOf(job.functionsAfter, name))}});
    }
    return table;
}

Message stateOf(const job::ToProve& proof) {
    switch (proof.state) {
    case job::ToProve::State::Proved:
        return proof.note.empty() ? say("record.proof.done") : say("record.proof.done-how", {proof.note});
    case job::ToProve::State::LeftOut: return say("record.proof.left-out", {proof.note});
    case job::ToProve::State::Open: break;
    }
    if (proof.apart)
        return say("record.proof.apart");
    return proof.against.empty() ? say("record.proof.open")
                                 : say("record.proof.against", {job::againstText(proof)});
}

const job::Photo* photoOf(const job::Job& job, const job::Id& about, bool after) {
    const job::Photo* found = nullptr;
    for (const job::Photo& photo : job.photos) {
        const bool refit = photo.purpose == job::PhotoPurpose::Refit;
        if (photo.about == about && refit == after && (found == nullptr || after))
            found = &photo; // the first before, the last after
    }
    return found;
}

} // namespace

MaybeSection provedSection(const Subject& subject) {
    const job::Job& job = subject.job;
    Section section{say("record.proof.title"), {}};
    Table table{{say("record.proof.what"), say("record.proof.state"), say("record.proof.eyes")}, {}};
    for (const job::ToProve& proof : job::toProve(job))
        table.rows.push_back(Row{{proof.words, stateOf(proof), proof.secondedBy}});
    if (!table.rows.empty())
        section.blocks.emplace_back(std::move(table));
    if (auto tried = functions(job))
        section.blocks.emplace_back(std::move(*tried));
    for (const job::RoadTest& test : job.roadTests) {
        const std::string distance = test.distance ? written(*test.distance) : std::string{};
        section.blocks.emplace_back(Paragraph{distance.empty()    ? say("record.road.note", {test.note})
                                              : test.note.empty() ? say("record.road.distance", {distance})
                                                                  : say("record.road", {distance, test.note}),
                                              Weight::Plain});
    }
    return section.blocks.empty() ? MaybeSection{} : MaybeSection{std::move(section)};
}

MaybeSection beforeAfterSection(const Subject& subject) {
    Pictures pictures;
    std::vector<std::string> seen;
    for (const job::Photo& photo : subject.job.photos) {
        if (photo.purpose != job::PhotoPurpose::Refit || photo.about.empty() ||
            std::find(seen.begin(), seen.end(), photo.about) != seen.end())
            continue;
        const job::Photo* before = photoOf(subject.job, photo.about, false);
        const job::Photo* after = photoOf(subject.job, photo.about, true);
        if (before == nullptr || after == nullptr || seen.size() == mostPairs)
            continue;
        seen.push_back(photo.about);
        pictures.pictures.push_back({before->media, say("record.photo.before", {day(before->takenAt)})});
        pictures.pictures.push_back({after->media, say("record.photo.after", {day(after->takenAt)})});
    }
    if (pictures.pictures.empty())
        return {};
    return Section{say("record.photo.before-after"), {std::move(pictures)}};
}

MaybeSection costSection(const Subject& subject) {
    const job::Job& job = subject.job;
    const job::TimeMs end = job.handedOver        ? job.handedOver->said.at
                            : job.history.empty() ? job.opened.at
                                                  : job.history.back().at;
    const auto cost = job::costOf(job, end);
    if (!cost)
        return {};
    Section section{say("record.cost.title"), {}};
    Table table{{say("record.cost.what"), say("record.cost.minutes"), say("record.cost.sum")}, {}};
    for (const job::CostRow& row : cost->rows)
        table.rows.push_back(Row{{row.what.empty() ? Text{say("record.cost.other-work")} : Text{row.what},
                                  row.minutes > 0 ? std::to_string(row.minutes) : std::string{},
                                  job::money(row.net, cost->currency)}});
    table.rows.push_back(Row{{say("record.cost.net"), std::string{}, job::money(cost->net, cost->currency)}});
    if (!cost->taxPercent.empty())
        table.rows.push_back(Row{{say("record.cost.tax", {cost->taxPercent}), std::string{},
                                  job::money(cost->tax, cost->currency)}});
    table.rows.push_back(
        Row{{say("record.cost.gross"), std::string{}, job::money(cost->gross, cost->currency)}});
    section.blocks.emplace_back(std::move(table));
    std::vector<std::string> approved;
    for (const job::TypedValue& sum : cost->approved)
        approved.push_back(written(sum));
    if (!approved.empty())
        section.blocks.emplace_back(
            Paragraph{say("record.cost.approved", {joined(approved, " + ")}), Weight::Plain});
    if (cost->minutesExpected > 0)
        section.blocks.emplace_back(
            Paragraph{say("record.cost.expected",
                          {std::to_string(cost->minutesExpected), std::to_string(cost->minutes)}),
                      Weight::Plain});
    for (const job::Message& doubt : cost->doubts)
        section.blocks.emplace_back(Paragraph{doubt, Weight::Plain});
    return section;
}

MaybeSection signedSection(const Subject& subject) {
    const job::Job& job = subject.job;
    Section section{say("record.signed.title"), {}};
    if (job.handedOver && !job.handedOver->oldParts.empty())
        section.blocks.emplace_back(
            Paragraph{say("record.signed.old-parts", {job.handedOver->oldParts}), Weight::Plain});
    if (job.handedOver && !job.handedOver->waste.empty())
        section.blocks.emplace_back(
            Paragraph{say("record.signed.waste", {job.handedOver->waste}), Weight::Plain});
    if (job.signature)
        section.blocks.emplace_back(
            Pictures{{{job.signature->media,
                       say("record.signed.by", {job.signature->name, day(job.signature->said.at)})}}});
    return section.blocks.empty() ? MaybeSection{} : MaybeSection{std::move(section)};
}

} // namespace undercowl::handover
