#include "qml/wiring/carryview.h"

#include "core/journal/say.h"
#include "qml/shell/words.h"
#include "qml/wiring/placekeys.h"
#include "qml/wiring/words.h"

#include <algorithm>

namespace undercowl::ui {

namespace {

// The wire itself: as it was found, where that is known.
const wiring::Wire* wireOf(const wiring::Gathering& gathering, wiring::PlaceKey key) {
    const auto* place = gathering.find(key);
    if (place == nullptr)
        return nullptr;
    for (const auto which :
         {wiring::Answer::AsFound, wiring::Answer::AsItShouldBe, wiring::Answer::AsRefitted})
        if (const auto& answer = place->answer(which))
            return &answer->wire;
    return nullptr;
}

QString signWords(wiring::Sign sign) {
    switch (sign) {
    case wiring::Sign::Lights: return CarryView::tr("it lights when it is switched");
    case wiring::Sign::Sounds: return CarryView::tr("it sounds when it is pressed");
    case wiring::Sign::Works: return CarryView::tr("what it serves works when it is switched");
    case wiring::Sign::Leads:
        return CarryView::tr(
            "Not known what it serves: follow it, then measure to earth and to each lamp. Nothing "
            "is connected before that is known.");
    case wiring::Sign::Carries:
        return CarryView::tr(
            "Live, ignition, charging or starter: battery voltage to earth, ignition off and on. "
            "Measured only, never tried.");
    case wiring::Sign::Earth: return CarryView::tr("Earth: close to no resistance to the bare frame.");
    }
    return {};
}

} // namespace

void CarryView::setGathering(const QString& id) {
    if (id_ == id)
        return;
    id_ = id;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

const wiring::Gathering* CarryView::find(const std::string& id) const {
    const auto now = snapshot();
    return now == nullptr ? nullptr : job::findGathering(now->job, id);
}

QString CarryView::oldGathering() const {
    const auto* fresh = find(id_.toStdString());
    return fresh == nullptr ? QString() : text(fresh->replaces);
}

void CarryView::show(const Snapshot& snapshot) {
    std::vector<Line> carried;
    std::vector<Line> found;
    std::vector<Line> measures;
    std::vector<Line> trials;
    over_ = {};
    toSay_ = 0;
    const auto* fresh = job::findGathering(snapshot.job, id_.toStdString());
    const auto* old = fresh == nullptr ? nullptr : job::findGathering(snapshot.job, fresh->replaces);
    if (old != nullptr) {
        title_ = tr("%1 in place of %2").arg(text(fresh->title), text(old->title));
        over_ = wiring::carryOver(*old, *fresh);
        const auto line = [&](wiring::PlaceKey wire) {
            const auto* known = wireOf(*old, wire);
            return Line{.id = idOf(wire),
                        .title = known == nullptr ? words(wire) : words(known->colour),
                        .mark = known == nullptr ? QString() : text(colour::code(known->colour))};
        };
        for (const wiring::Carried& each : over_.carried) {
            Line wire = line(each.wire);
            wire.detail = tr("%1, now %2").arg(words(each.wire), words(each.place));
            wire.more = tr("serves %1").arg(text(each.by));
            wire.on = fresh->find(each.place) != nullptr &&
                      fresh->find(each.place)->answer(wiring::Answer::AsItShouldBe).has_value();
            toSay_ += wire.on ? 0 : 1;
            carried.push_back(std::move(wire));
        }
        for (const wiring::PlaceKey& place : over_.leaveEmpty)
            found.push_back({.id = idOf(place), .title = tr("Leave empty: %1").arg(words(place))});
        for (const wiring::PlaceKey& wire : over_.withoutPlace)
            found.push_back({.id = QStringLiteral("wire ") + idOf(wire),
                             .title = tr("No place for %1 (%2)").arg(line(wire).title, words(wire)),
                             .detail = tr("Insulate its end and tie it back.")});
        for (const wiring::Trial& each : over_.trials) {
            Line wire = line(each.wire);
            if (!each.serves.empty())
                wire.title += QStringLiteral(", ") + text(each.serves);
            wire.detail = signWords(each.sign);
            wire.more = tr("one after the other: %1").arg(placesOf(wire.id).join(QStringLiteral(", ")));
            (each.measured() ? measures : trials).push_back(std::move(wire));
        }
    }
    carried_.setLines(std::move(carried));
    found_.setLines(std::move(found));
    measures_.setLines(std::move(measures));
    trials_.setLines(std::move(trials));
}

const wiring::Trial* CarryView::trial(const QString& wire) const {
    const auto at = std::ranges::find_if(over_.trials,
                                         [&](const wiring::Trial& each) { return idOf(each.wire) == wire; });
    return at == over_.trials.end() ? nullptr : &*at;
}

QStringList CarryView::placesOf(const QString& wire) const {
    QStringList places;
    if (const auto* tried = trial(wire))
        for (const wiring::PlaceKey& place : tried->at)
            places += words(place);
    return places;
}

journal::Draft CarryView::wireAt(wiring::PlaceKey wire, wiring::PlaceKey place, const std::string& serves,
                                 const QString& source) const {
    wiring::PlaceAnswer answer;
    const auto* old = find(oldGathering().toStdString());
    if (const auto* known = old == nullptr ? nullptr : wireOf(*old, wire))
        answer.wire = *known;
    if (answer.wire.function.empty() && answer.wire.din.empty())
        answer.wire.function = serves;
    answer.wire.terminal = {}; // of the old part
    answer.how = wiring::HowKnown::Picked;
    answer.source = utf8(source);
    return journal::wireAnswered(jobId(), id_.toStdString(), place, wiring::Answer::AsItShouldBe, answer);
}

void CarryView::takeOver() {
    const auto* fresh = find(id_.toStdString());
    if (fresh == nullptr)
        return;
    std::vector<journal::Draft> drafts;
    for (const wiring::Carried& each : over_.carried)
        if (const auto* place = fresh->find(each.place);
            place == nullptr || !place->answer(wiring::Answer::AsItShouldBe))
            drafts.push_back(wireAt(each.wire, each.place, each.by, tr("carried over by what it serves")));
    if (!drafts.empty())
        session()->say(std::move(drafts), {.undoText = tr("Wires carried over"), .form = {}});
}

void CarryView::seenAt(const QString& wire, int index) {
    const auto* tried = trial(wire);
    if (tried == nullptr || tried->measured() || index < 0 || index >= static_cast<int>(tried->at.size()))
        return;
    session()->say({wireAt(tried->wire, tried->at[static_cast<std::size_t>(index)], tried->serves,
                           tr("found by trying"))},
                   {.undoText = tr("Found: %1").arg(placesOf(wire).value(index)), .form = {}});
}

} // namespace undercowl::ui
