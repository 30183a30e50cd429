#include "platform/demo/wiring.h"

#include "platform/demo/data.h"

#include "core/journal/say.h"
#include "core/wiring/twins.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace undercowl::demo {
namespace {

using journal::Draft;
using wiring::Answer;
using wiring::Half;
using wiring::PlaceKey;

Stroke strokeOf(const Json& json, const std::filesystem::path& assets) {
    Stroke stroke;
    stroke.photo = assets / text(json, "photo");
    for (const Json& point : json.at("along"))
        stroke.along.push_back({point.at(0).get<double>(), point.at(1).get<double>()});
    if (json.contains("card")) {
        const Json& card = json.at("card");
        const Json& box = card.at("box");
        stroke.card = sight::Card{
            {box.at(0).get<int>(), box.at(1).get<int>(), box.at(2).get<int>(), box.at(3).get<int>()},
            card.at("reflectance").get<double>()};
    }
    return stroke;
}

std::string at(const std::vector<std::string>& texts, std::size_t index) {
    return index < texts.size() ? texts.at(index) : std::string{};
}

// "place 4 BN or RD, place 7 no wire; glare covers it: tilt the phone"; empty when all are sure.
std::string unsureInWords(const std::vector<sight::WireReading>& wires) {
    constexpr std::size_t most = 3;
    std::vector<std::string> places;
    std::vector<std::string_view> why;
    int number = 0;
    for (const sight::WireReading& reading : wires) {
        ++number;
        if (reading.sure)
            continue;
        std::vector<std::string> words;
        for (const sight::Candidate& candidate : reading.candidates)
            if (words.size() < most)
                words.push_back(colour::code(candidate.wire));
        places.push_back(fmt::format(
            "place {} {}", number, words.empty() ? "no wire" : fmt::format("{}", fmt::join(words, " or "))));
        for (const sight::Doubt doubt : reading.doubts)
            if (const auto said = sight::englishWords(doubt);
                std::find(why.begin(), why.end(), said) == why.end())
                why.push_back(said);
    }
    return fmt::format("{}{}{}", fmt::join(places, ", "), why.empty() ? "" : "; ", fmt::join(why, "; "));
}

// Keeps the photo's file and gives drafts of what is not in the job yet.
class Keeper {
public:
    Keeper(store::Store& store, job::Job job, const IdFor& ids)
        : store_(store), job_(std::move(job)), ids_(ids) {}

    // The id of the photo for that purpose; another file gets another id.
    store::Result<job::Id> photo(const Stroke& stroke, const sight::Photo& seen, job::PhotoPurpose purpose,
                                 const job::Id& about, const std::string& note) {
        const auto bytes = readBytes(stroke.photo);
        if (!bytes)
            return tl::unexpected(bytes.error());
        const auto kept = store_.keepMedia(*bytes, stroke.photo.extension() == ".png" ? "png" : "jpg");
        if (!kept)
            return tl::unexpected(kept.error());
        job::Photo photo;
        photo.id = ids_("photo " + kept->name + std::string{job::code(purpose)});
        photo.media = kept->name;
        photo.purpose = purpose;
        photo.about = about;
        photo.note = note;
        photo.width = seen.width();
        photo.height = seen.height();
        photo.takenAt = store_.now();
        if (job::findPhoto(job_, photo.id) == nullptr)
            drafts.push_back(journal::photoTaken(job_.id, photo));
        return photo.id;
    }

    // Notes the finding, or settles it when 'text' is empty. 'name' is what keeps it apart from others.
    void finding(const std::string& name, job::Severity severity, const std::string& text,
                 const std::string& toDo, const std::string& settled) {
        const job::Id id = ids_(name);
        const auto known = std::find_if(job_.findings.begin(), job_.findings.end(),
                                        [&](const job::Finding& each) { return each.id == id; });
        const bool open = known != job_.findings.end() && !known->settled;
        if (text.empty()) {
            if (open)
                drafts.push_back(journal::findingSettled(job_.id, id, settled));
        } else if (!open || known->text != text) {
            job::Finding finding;
            finding.id = id;
            finding.text = text;
            finding.severity = severity;
            finding.toDo = toDo;
            drafts.push_back(journal::findingNoted(job_.id, finding));
        }
    }

    store::Result<void> say() {
        if (drafts.empty())
            return {};
        auto said = store_.append(drafts);
        return said ? store::Result<void>{} : tl::unexpected(said.error());
    }

    [[nodiscard]] const job::Job& job() const { return job_; }
    std::vector<Draft> drafts;

private:
    store::Store& store_;
    job::Job job_;
    const IdFor& ids_;
};

wiring::PhotoMark mark(const job::Id& photo, const sight::Photo& seen, sight::Point at) {
    return {photo, at.x / seen.width(), at.y / seen.height()};
}

// An answer by hand is the mechanic's and stays; one that was read goes with its photo.
bool stays(const wiring::PlaceAnswer& answer) {
    return answer.how != wiring::HowKnown::Read;
}

void answer(Keeper& keeper, const wiring::Gathering& gathering, int number, const sight::WireReading* reading,
            const WiringPlan& plan, const job::Id& photo, const sight::Photo& seen) {
    const PlaceKey key{Half::Loom, number, 1};
    const wiring::Place* place = gathering.find(key);
    const auto known = place != nullptr ? place->answer(Answer::AsFound) : std::nullopt;
    if (known && stays(*known))
        return;
    if (reading == nullptr || !reading->sure) {
        if (known)
            keeper.drafts.push_back(journal::placeEmpty(keeper.job().id, gathering.id, key, Answer::AsFound));
        return;
    }
    const auto index = static_cast<std::size_t>(number - 1);
    wiring::PlaceAnswer said;
    said.wire.colour = reading->candidates.front().wire;
    said.wire.function = at(plan.functions, index);
    said.wire.din = at(plan.din, index);
    said.how = wiring::HowKnown::Read;
    said.probability = reading->candidates.front().probability;
    said.mark = mark(photo, seen, reading->at);
    if (known && known->wire.colour == said.wire.colour && known->mark && known->mark->photo == photo)
        return;
    keeper.drafts.push_back(journal::wireAnswered(keeper.job().id, gathering.id, key, Answer::AsFound, said));
}

std::set<int> changedPlaces(const sight::Comparison& comparison) {
    std::set<int> places;
    for (const sight::Change& change : comparison.changes)
        if (change.kind != sight::ChangeKind::Extra) // counted along the photo after: no place of the map
            places.insert(change.places.begin(), change.places.end());
    return places;
}

std::string changesInWords(const sight::Comparison& comparison) {
    std::vector<std::string> words;
    for (const sight::Change& change : comparison.changes)
        words.push_back(
            fmt::format("{}: place {}", sight::code(change.kind), fmt::join(change.places, " and ")));
    return fmt::format("{}", fmt::join(words, ", "));
}

// The checks that the photo after allows: by place, in order. A twin passes for its likeness, so nothing is
// said of it; nor of a place whose wire was not read for sure.
std::map<int, job::MatchOutcome> outcomes(const wiring::Gathering& gathering,
                                          const sight::Comparison& comparison) {
    std::map<int, job::MatchOutcome> result;
    if (comparison.verdict == sight::CompareVerdict::CannotTell)
        return result;
    std::set<int> alike;
    for (const wiring::TwinGroup& group : wiring::twins(gathering, Half::Loom))
        for (const wiring::Place* place : group.places)
            alike.insert(place->key.number);
    const std::set<int> changed = changedPlaces(comparison);
    for (const wiring::Place* place : wiring::placesOf(gathering, Half::Loom, Answer::AsFound)) {
        const int number = place->key.number;
        if (changed.count(number) > 0)
            result[number] = job::MatchOutcome::DoesNotMatch;
        else if (alike.count(number) == 0)
            result[number] = job::MatchOutcome::Matches;
    }
    return result;
}

} // namespace

store::Result<WiringPlan> wiringOf(const std::filesystem::path& assets) {
    const auto json = readJson(assets / "wiring.json");
    if (!json)
        return tl::unexpected(json.error());
    try {
        const Json& about = json->at("gathering");
        WiringPlan plan;
        plan.title = text(about, "title");
        plan.seenFrom = wiring::sideFromCode(text(about, "seen from")).value_or(wiring::Side::WireSide);
        plan.latch = text(about, "latch");
        plan.functions = about.value("functions", std::vector<std::string>{});
        plan.din = about.value("din", std::vector<std::string>{});
        plan.before = strokeOf(json->at("before"), assets);
        plan.after = strokeOf(json->at("after"), assets);
        return plan;
    } catch (const Json::exception& wrong) {
        return refused(fmt::format("{}: {}", (assets / "wiring.json").string(), wrong.what()));
    }
}

store::Result<Sighted> sighted(const Stroke& stroke) {
    auto photo = sight::Photo::read(stroke.photo);
    if (!photo)
        return refused(photo.error().message);
    sight::ReadOptions options;
    options.card = stroke.card;
    sight::Reader reader{*photo, options};
    auto wires = reader.sweep(stroke.along);
    if (!wires)
        return refused(fmt::format("{}: {}", stroke.photo.string(), wires.error()));
    return Sighted{*photo, std::move(*wires)};
}

store::Result<void> keepMap(store::Store& store, const job::Id& job, const job::Id& step,
                            const WiringPlan& plan, const Sighted& before, const IdFor& ids) {
    if (before.wires.empty())
        return refused(fmt::format("{}: no wire was found along the stroke: draw it across the wires",
                                   plan.before.photo.string()));
    auto known = store.job(job);
    if (!known)
        return tl::unexpected(known.error());
    Keeper keeper{store, std::move(*known), ids};
    const job::Id gatheringId = ids("gathering");
    const auto photo =
        keeper.photo(plan.before, before.photo, job::PhotoPurpose::Wiring, gatheringId, plan.title);
    if (!photo)
        return tl::unexpected(photo.error());
    if (const auto ofStep =
            keeper.photo(plan.before, before.photo, job::PhotoPurpose::Strip, step, "before unplugging");
        !ofStep)
        return tl::unexpected(ofStep.error());

    const wiring::Gathering* there = job::findGathering(keeper.job(), gatheringId);
    wiring::Gathering gathering = there != nullptr ? *there : wiring::Gathering{};
    const int count = static_cast<int>(before.wires.size());
    const int most = std::max(count, gathering.places);
    if (there == nullptr || gathering.photo != *photo || gathering.places != count) {
        gathering.id = gatheringId;
        gathering.title = plan.title;
        gathering.places = count;
        gathering.seenFrom = plan.seenFrom;
        gathering.latch = plan.latch;
        gathering.first = mark(*photo, before.photo, before.wires.front().at);
        gathering.photo = *photo;
        gathering.step = step;
        keeper.drafts.push_back(journal::gatheringDescribed(job, gathering));
    }
    for (int number = 1; number <= most; ++number) {
        const sight::WireReading* reading =
            number <= count ? &before.wires.at(static_cast<std::size_t>(number - 1)) : nullptr;
        answer(keeper, gathering, number, reading, plan, *photo, before.photo);
    }
    const std::string unsure = unsureInWords(before.wires);
    keeper.finding("unsure wires", job::Severity::Soon,
                   unsure.empty() ? unsure : fmt::format("{}, not sure of: {}", plan.title, unsure),
                   "look at these wires and enter them by hand", "all wires read from another photo");
    return keeper.say();
}

store::Result<void> keepChecks(store::Store& store, const job::Id& job, const job::Id& gatheringId,
                               const WiringPlan& plan, const Sighted& after,
                               const sight::Comparison& comparison, const IdFor& ids) {
    auto known = store.job(job);
    if (!known)
        return tl::unexpected(known.error());
    Keeper keeper{store, std::move(*known), ids};
    const wiring::Gathering* gathering = job::findGathering(keeper.job(), gatheringId);
    if (gathering == nullptr)
        return refused(
            fmt::format("the job has no wiring map of {}: read the photo before first", plan.title));
    const auto photo =
        keeper.photo(plan.after, after.photo, job::PhotoPurpose::Refit, gathering->step, "plugged in again");
    if (!photo)
        return tl::unexpected(photo.error());
    const std::string note = "by the photo after refitting";
    const auto wanted = outcomes(*gathering, comparison);
    std::set<int> there;
    for (const job::WireCheck& check : keeper.job().wireChecks) {
        if (check.gathering != gatheringId || check.note != note)
            continue;
        const auto found = wanted.find(check.place.number);
        if (found != wanted.end() && found->second == check.outcome)
            there.insert(check.place.number);
        else
            keeper.drafts.push_back(journal::withdrawn(job, check.said.entry));
    }
    for (const auto& [number, outcome] : wanted)
        if (there.count(number) == 0)
            keeper.drafts.push_back(journal::wireChecked(
                job, {gatheringId, {Half::Loom, number, 1}, outcome, Answer::AsFound, note, {}}));
    const bool changed = comparison.verdict == sight::CompareVerdict::Changed;
    keeper.finding("changed wiring", job::Severity::Unsafe,
                   changed ? fmt::format("{}: wiring changed between the photos: {}", plan.title,
                                         changesInWords(comparison))
                           : std::string{},
                   "put the wires back as the map says and photograph it again",
                   "photographed again: nothing changed");
    return keeper.say();
}

} // namespace undercowl::demo
