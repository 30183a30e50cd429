#include "qml/wiring/gatheringview.h"

#include "core/journal/say.h"
#include "core/wiring/carryover.h"
#include "core/wiring/twins.h"
#include "qml/wiring/gatherings.h"
#include "qml/wiring/placekeys.h"
#include "qml/wiring/words.h"

#include <QCoreApplication>
#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr int mostPlaces = 60;
constexpr int mostRows = 6;

Line lineOf(const wiring::Gathering& gathering, wiring::PlaceKey key) {
    Line line{.id = idOf(key), .title = {}, .aside = words(key)};
    const auto* place = gathering.find(key);
    const auto* found = place == nullptr ? nullptr : &place->answer(wiring::Answer::AsFound);
    const auto* should = place == nullptr ? nullptr : &place->answer(wiring::Answer::AsItShouldBe);
    const auto* shown = found != nullptr && *found ? found : should;
    if (place != nullptr && (shown == nullptr || !*shown) &&
        (place->saidEmpty(wiring::Answer::AsFound) || place->saidEmpty(wiring::Answer::AsItShouldBe))) {
        line.title = emptyWords();
        line.on = place->saidEmpty(wiring::Answer::AsRefitted);
        return line;
    }
    if (shown == nullptr || !*shown) {
        line.title = QCoreApplication::translate("Wiring", "not known yet");
        return line;
    }
    const wiring::Wire& wire = (*shown)->wire;
    line.title = words(wire.colour);
    line.detail = details(wire);
    if (!place->tag.empty())
        line.detail += (line.detail.isEmpty() ? QString() : QStringLiteral(", ")) +
                       QCoreApplication::translate("Wiring", "tag %1").arg(text(place->tag));
    line.mark = text(colour::code(wire.colour));
    line.on = place->answer(wiring::Answer::AsRefitted).has_value();
    if (shown == should)
        line.more = QCoreApplication::translate("Wiring", "as it should be, not as found");
    else if (*should && (*should)->wire.colour != wire.colour)
        line.more = QCoreApplication::translate("Wiring", "should be %1").arg(words((*should)->wire.colour));
    return line;
}

} // namespace

const wiring::Gathering* GatheringView::find() const {
    const auto now = snapshot();
    return now == nullptr ? nullptr : job::findGathering(now->job, id_.toStdString());
}

void GatheringView::setGathering(const QString& id) {
    if (id == id_)
        return;
    id_ = id;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

QString GatheringView::stepOf() const {
    const auto* known = find();
    return known == nullptr ? step_ : text(known->step);
}

QString GatheringView::replaces() const {
    const auto* known = find();
    return known == nullptr ? replaces_ : text(known->replaces);
}

void GatheringView::setReplaces(const QString& id) {
    if (replaces_ == id)
        return;
    replaces_ = id;
    emit changed();
}

QString GatheringView::condition() const {
    const auto* known = find();
    if (known == nullptr)
        return {};
    QStringList lines;
    if (!known->condition.empty())
        lines += tr("As found: %1").arg(text(known->condition));
    if (!known->treated.empty())
        lines += tr("Done: %1").arg(text(known->treated));
    return lines.join(u'\n');
}

QString GatheringView::half() const {
    return text(wiring::code(half_));
}

void GatheringView::setHalf(const QString& code) {
    const auto half = wiring::halfFromCode(code.toStdString());
    if (!half || *half == half_)
        return;
    half_ = *half;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

QString GatheringView::title() const {
    const auto* known = find();
    return known == nullptr ? QString() : text(known->title);
}

QString GatheringView::description() const {
    const auto* known = find();
    return known == nullptr ? QString() : ui::describe(*known);
}

QUrl GatheringView::photo() const {
    const auto now = snapshot();
    const auto* known = find();
    const auto* photo = known == nullptr ? nullptr : photoOf(now->job, *known);
    return photo == nullptr ? QUrl() : session()->mediaUrl(text(photo->media));
}

QVariantList GatheringView::first() const {
    const auto now = snapshot();
    const auto* known = find();
    const auto* photo = known == nullptr ? nullptr : photoOf(now->job, *known);
    if (photo == nullptr || !known->first || known->first->photo != photo->id)
        return {};
    return {QVariantMap{{QStringLiteral("x"), known->first->x},
                        {QStringLiteral("y"), known->first->y},
                        {QStringLiteral("label"), QStringLiteral("1")}}};
}

int GatheringView::found() const {
    const auto* known = find();
    return known == nullptr
               ? 0
               : static_cast<int>(wiring::placesOf(*known, half_, wiring::Answer::AsFound).size());
}

void GatheringView::show(const Snapshot& snapshot) {
    std::vector<Line> places;
    std::vector<Line> twins;
    std::vector<Line> tags;
    if (const auto* known = find()) {
        std::vector<wiring::PlaceKey> empty;
        if (const auto* old = job::findGathering(snapshot.job, known->replaces))
            empty = wiring::carryOver(*old, *known).leaveEmpty;
        for (int number = 1; number <= known->places; ++number) {
            places.push_back(lineOf(*known, {half_, number, 1}));
            if (std::ranges::find(empty, wiring::PlaceKey{wiring::Half::Loom, number, 1}) != empty.end())
                places.back().more = QCoreApplication::translate("Wiring", "leave empty");
            if (known->find({half_, number, 2}) != nullptr)
                places.push_back(lineOf(*known, {half_, number, 2}));
        }
        const wiring::TagPlan plan = wiring::fewestTags(*known, half_, visionIn(*session()));
        for (const wiring::TwinGroup& group : wiring::twins(*known, half_)) {
            QStringList ids;
            for (const wiring::Place* place : group.places) {
                ids += idOf(place->key);
                tags.push_back(
                    {.id = idOf(place->key), .title = words(place->key), .detail = text(place->tag)});
            }
            twins.push_back({.id = ids.join(u' '), .title = adviceOn(group), .on = group.settled()});
        }
        // What looks alike to this mechanic only, with the fewest tags that help.
        if (const QString advice = adviceOn(plan); !advice.isEmpty()) {
            QStringList ids;
            for (const wiring::Place* place : plan.toTag)
                ids += idOf(place->key);
            twins.push_back({.id = ids.join(u' '), .title = advice, .on = ids.isEmpty()});
        }
    }
    places_.setLines(std::move(places));
    twins_.setLines(std::move(twins));
    tags_.setLines(std::move(tags));
}

void GatheringView::describe(FormDraft* draft) {
    if (draft == nullptr || snapshot() == nullptr)
        return;
    const auto value = [draft](const char* name) { return draft->text(QLatin1String(name)); };
    const auto* known = find();
    wiring::Gathering gathering = known == nullptr ? wiring::Gathering{} : *known;
    gathering.title = utf8(value("title"));
    gathering.kind = wiring::gatheringKindFromCode(utf8(value("kind"))).value_or(gathering.kind);
    gathering.seenFrom = wiring::sideFromCode(utf8(value("side"))).value_or(gathering.seenFrom);
    gathering.latch = utf8(value("latch"));
    gathering.condition = utf8(value("condition"));
    gathering.treated = utf8(value("treated"));
    QVariantMap errors;
    if (gathering.title.empty())
        errors[QStringLiteral("title")] = tr("Type what it is, such as \"right switch cluster\".");
    bool counted = false;
    gathering.places = value("places").toInt(&counted);
    if (!counted || gathering.places < 1 || gathering.places > mostPlaces)
        errors[QStringLiteral("places")] = tr("Give the number of places, 1 to %1.").arg(mostPlaces);
    gathering.rows = value("rows").isEmpty() ? 1 : value("rows").toInt();
    const bool tooMany = !errors.contains(QStringLiteral("places")) && gathering.rows > gathering.places;
    if (gathering.rows < 1 || gathering.rows > mostRows || tooMany)
        errors[QStringLiteral("rows")] = tr("Give the number of rows, 1 to %1.").arg(mostRows);
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    if (known == nullptr) {
        gathering.id = session()->newId();
        gathering.step = step_.toStdString();
        gathering.replaces = replaces_.toStdString();
    }
    session()->say(
        {journal::gatheringDescribed(jobId(), gathering)},
        {.undoText = tr("%1 kept").arg(text(gathering.title)), .form = draft->property("form").toString()},
        [self = QPointer(this), draft = QPointer(draft), id = text(gathering.id)](const Entries& said) {
            if (!said || self == nullptr)
                return;
            self->setGathering(id);
            if (draft != nullptr)
                draft->said(); // and shows what is known of it now
            emit self->described(id);
        });
}

QVariantMap GatheringView::values() const {
    const auto* known = find();
    if (known == nullptr)
        return {};
    return {{QStringLiteral("title"), text(known->title)},
            {QStringLiteral("kind"), text(wiring::code(known->kind))},
            {QStringLiteral("places"), QString::number(known->places)},
            {QStringLiteral("rows"), QString::number(known->rows)},
            {QStringLiteral("side"), text(wiring::code(known->seenFrom))},
            {QStringLiteral("latch"), text(known->latch)},
            {QStringLiteral("condition"), text(known->condition)},
            {QStringLiteral("treated"), text(known->treated)}};
}

void GatheringView::markFirst(qreal x, qreal y) {
    const auto now = snapshot();
    const auto* known = find();
    const auto* photo = known == nullptr ? nullptr : photoOf(now->job, *known);
    if (photo == nullptr)
        return;
    wiring::Gathering gathering = *known;
    gathering.photo = photo->id;
    gathering.first = wiring::PhotoMark{photo->id, x, y};
    session()->say({journal::gatheringDescribed(jobId(), gathering)},
                   {.undoText = tr("Place 1 marked"), .form = {}});
}

void GatheringView::tag(const QString& place, const QString& tag) {
    const auto key = keyOf(place, half_);
    const auto* known = find();
    if (!key || known == nullptr)
        return;
    const auto* held = known->find(*key);
    if (held != nullptr && held->tag == utf8(tag))
        return;
    session()->say(
        {journal::wireTagged(jobId(), known->id, *key, utf8(tag))},
        {.undoText = tag.isEmpty() ? tr("Tag taken off") : tr("Tag %1").arg(tag.trimmed()), .form = {}});
}

void GatheringView::tagTwins(const QString& twins) {
    const auto* known = find();
    if (known == nullptr)
        return;
    // Each letter once in the whole gathering, so that a tag alone names its wire.
    QStringList used;
    for (const wiring::Place& place : known->held)
        used += text(place.tag);
    std::vector<journal::Draft> drafts;
    QStringList tags;
    for (const QString& id : twins.split(u' ')) {
        const auto key = keyOf(id, half_);
        const auto* place = key ? known->find(*key) : nullptr;
        if (place == nullptr || !place->tag.empty())
            continue;
        QString letter;
        for (char16_t c = u'A'; c <= u'Z' && (letter.isEmpty() || used.contains(letter)); ++c)
            letter = QChar(c);
        used += letter;
        tags += letter;
        drafts.push_back(journal::wireTagged(jobId(), known->id, *key, letter.toStdString()));
    }
    if (!drafts.empty())
        session()->say(std::move(drafts), {.undoText = tr("Tagged %1").arg(listed(tags)), .form = {}});
}

void GatheringList::show(const Snapshot& snapshot) {
    std::vector<Line> lines;
    for (const wiring::Gathering& gathering : snapshot.job.gatherings) {
        if (!step_.isEmpty() && gathering.step != step_.toStdString())
            continue;
        QStringList more{progressOf(gathering)};
        // Once reading back has begun, or the step is on again, what is left of it is named.
        const auto* step = job::findStep(snapshot.job, gathering.step);
        if ((step != nullptr && step->refitted) ||
            std::ranges::count(snapshot.job.wireChecks, gathering.id, &job::WireCheck::gathering) > 0)
            more += wiresLeftWords(snapshot.job, gathering);
        more.removeAll(QString());
        lines.push_back({.id = text(gathering.id),
                         .title = text(gathering.title),
                         .detail = describe(gathering),
                         .more = more.join(QStringLiteral("; "))});
    }
    lines_.setLines(std::move(lines));
}

} // namespace undercowl::ui
