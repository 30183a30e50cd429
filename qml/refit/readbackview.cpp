#include "qml/refit/readbackview.h"

#include "core/journal/say.h"
#include "core/talk/readback.h"
#include "qml/wiring/gatherings.h"
#include "qml/wiring/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

wiring::Answer otherOf(wiring::Answer answer) {
    return answer == wiring::Answer::AsFound ? wiring::Answer::AsItShouldBe : wiring::Answer::AsFound;
}

} // namespace

const wiring::Gathering* ReadBackView::find() const {
    const auto now = snapshot();
    return now == nullptr ? nullptr : job::findGathering(now->job, gatheringId_.toStdString());
}

QString ReadBackView::half() const {
    return text(wiring::code(half_));
}

void ReadBackView::setHalf(const QString& code) {
    const auto half = wiring::halfFromCode(code.toStdString());
    if (!half || *half == half_)
        return;
    half_ = *half;
    begun_ = false;
    index_ = 0;
    mismatch_ = false;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void ReadBackView::show(const Snapshot& /*snapshot*/) {
    items_.clear();
    const auto* known = find();
    if (known == nullptr)
        return;
    items_ = wiring::readBack(*known, half_, wiring::Answer::AsItShouldBe);
    // Where the mechanic chose the other of two answers, that one is read.
    const auto found = wiring::readBack(*known, half_, wiring::Answer::AsFound);
    for (std::size_t i = 0; i < items_.size(); ++i)
        if (const auto choice = chosen_.find(items_[i].key); choice != chosen_.end()) {
            if (items_[i].reads != choice->second)
                items_[i] = found[i];
            items_[i].contradicts.reset();
        }
    if (!std::exchange(begun_, true)) { // after a break it goes on where it stopped
        const auto open = std::ranges::find(items_, false, &wiring::ReadBackItem::refitted);
        index_ = open == items_.end() ? 0 : static_cast<int>(open - items_.begin());
    }
    index_ = std::min(index_, count());
}

const wiring::ReadBackItem* ReadBackView::item() const {
    return index_ >= 0 && index_ < count() ? &items_[static_cast<std::size_t>(index_)] : nullptr;
}

const job::WireCheck* ReadBackView::check(const wiring::PlaceKey& key) const {
    const auto now = snapshot();
    if (now == nullptr)
        return nullptr;
    const auto& checks = now->job.wireChecks;
    const auto at = std::ranges::find_if(checks, [&](const job::WireCheck& check) {
        return check.gathering == gatheringId_.toStdString() && check.place == key;
    });
    return at == checks.end() ? nullptr : &*at;
}

QString ReadBackView::title() const {
    const auto* known = find();
    return known == nullptr ? QString() : text(known->title);
}

QString ReadBackView::base() const {
    return item() == nullptr ? QString() : baseCode(item()->answer.wire.colour);
}

QString ReadBackView::tracer() const {
    return item() == nullptr ? QString() : tracerCode(item()->answer.wire.colour);
}

QString ReadBackView::wireWords() const {
    return item() == nullptr ? QString() : ui::words(item()->answer.wire.colour);
}

QString ReadBackView::place() const {
    return item() == nullptr ? QString() : ui::words(item()->key);
}

QString ReadBackView::wireDetails() const {
    return item() == nullptr ? QString() : ui::details(item()->answer.wire);
}

QString ReadBackView::reads() const {
    return item() == nullptr ? QString() : ui::words(item()->reads);
}

QString ReadBackView::source() const {
    return item() == nullptr ? QString() : text(item()->answer.source);
}

bool ReadBackView::mustChoose() const {
    return item() != nullptr && item()->contradicts.has_value();
}

QString ReadBackView::otherBase() const {
    return mustChoose() ? baseCode(item()->contradicts->colour) : QString();
}

QString ReadBackView::otherTracer() const {
    return mustChoose() ? tracerCode(item()->contradicts->colour) : QString();
}

QString ReadBackView::otherWords() const {
    if (!mustChoose())
        return {};
    const QString more = ui::details(*item()->contradicts);
    return more.isEmpty() ? ui::words(item()->contradicts->colour)
                          : ui::words(item()->contradicts->colour) + QStringLiteral(", ") + more;
}

QString ReadBackView::otherReads() const {
    return mustChoose() ? ui::words(otherOf(item()->reads)) : QString();
}

QString ReadBackView::sentence() const {
    return item() == nullptr ? QString()
                             : text(talk::english(talk::wireSentence(*item(), gatheringId_.toStdString())));
}

QString ReadBackView::colourSentence() const {
    return item() == nullptr
               ? QString()
               : text(talk::english(talk::wireOnly(talk::wireSentence(*item(), gatheringId_.toStdString()))));
}

QString ReadBackView::twin() const {
    if (item() == nullptr || item()->twinOf.empty())
        return item() == nullptr || item()->tag.empty() ? QString() : tr("tag %1").arg(text(item()->tag));
    QStringList numbers;
    for (const int number : item()->twinOf)
        numbers += QString::number(number);
    const QString twins = tr("looks like place %1").arg(listed(numbers));
    return item()->tag.empty() ? tr("%1; not tagged").arg(twins)
                               : tr("%1; tag %2").arg(twins, text(item()->tag));
}

QUrl ReadBackView::photo() const {
    const auto now = snapshot();
    const auto* known = find();
    if (known == nullptr)
        return {};
    const job::Photo* photo = nullptr;
    if (item() != nullptr && item()->answer.mark)
        photo = job::findPhoto(now->job, item()->answer.mark->photo);
    if (photo == nullptr)
        photo = photoOf(now->job, *known);
    return photo == nullptr ? QUrl() : session()->mediaUrl(text(photo->media));
}

QVariantList ReadBackView::marks() const {
    if (item() == nullptr || !item()->answer.mark)
        return {};
    return {QVariantMap{{QStringLiteral("x"), item()->answer.mark->x},
                        {QStringLiteral("y"), item()->answer.mark->y},
                        {QStringLiteral("label"), QString::number(item()->key.number)}}};
}

QPointF ReadBackView::centre() const {
    return item() == nullptr || !item()->answer.mark
               ? QPointF(0.5, 0.5)
               : QPointF(item()->answer.mark->x, item()->answer.mark->y);
}

QString ReadBackView::checked() const {
    const auto* known = item() == nullptr ? nullptr : check(item()->key);
    return known == nullptr ? QString() : text(job::code(known->outcome));
}

int ReadBackView::counted(job::MatchOutcome outcome) const {
    return static_cast<int>(std::ranges::count_if(items_, [&](const wiring::ReadBackItem& item) {
        const auto* known = check(item.key);
        return known != nullptr && known->outcome == outcome;
    }));
}

int ReadBackView::matching() const {
    return counted(job::MatchOutcome::Matches);
}

int ReadBackView::failing() const {
    return counted(job::MatchOutcome::DoesNotMatch);
}

QStringList ReadBackView::otherPlaces() const {
    QStringList all;
    for (const wiring::ReadBackItem& other : items_)
        if (item() != nullptr && other.key != item()->key)
            all += QStringLiteral("%1: %2").arg(ui::words(other.key), ui::words(other.answer.wire.colour));
    return all;
}

void ReadBackView::say(std::vector<journal::Draft> drafts, const QString& undoText, bool goesOn) {
    saying_ = true;
    emit changed();
    session()->say(std::move(drafts), {.undoText = undoText, .form = {}},
                   [self = QPointer(this), goesOn](const Entries& said) {
                       if (self == nullptr)
                           return;
                       self->saying_ = false;
                       if (said && goesOn)
                           ++self->index_;
                       emit self->changed();
                   });
}

void ReadBackView::done() {
    const auto* now = item();
    if (now == nullptr || mustChoose() || saying_)
        return;
    wiring::PlaceAnswer answer = now->answer;
    answer.source.clear(); // seen at the machine, whatever it was checked against
    answer.mark.reset();
    job::WireCheck check;
    check.gathering = gatheringId_.toStdString();
    check.place = now->key;
    check.outcome = job::MatchOutcome::Matches;
    check.against = now->reads;
    mismatch_ = false;
    say({journal::wireChecked(jobId(), check),
         journal::wireAnswered(jobId(), check.gathering, now->key, wiring::Answer::AsRefitted, answer)},
        tr("%1 matches").arg(place()), true);
}

void ReadBackView::doesNotMatch() {
    const auto* now = item();
    if (now == nullptr || mustChoose() || saying_)
        return;
    job::WireCheck check;
    check.gathering = gatheringId_.toStdString();
    check.place = now->key;
    check.outcome = job::MatchOutcome::DoesNotMatch;
    check.against = now->reads;
    std::vector<journal::Draft> drafts{journal::wireChecked(jobId(), check)};
    if (now->refitted) // it was thought to be right before
        drafts.push_back(journal::placeEmpty(jobId(), check.gathering, now->key, wiring::Answer::AsRefitted));
    mismatch_ = true;
    say(std::move(drafts), tr("%1 does not match").arg(place()), false);
}

void ReadBackView::swappedWith(int place) {
    const auto* now = item();
    if (now == nullptr || place < 0)
        return;
    std::vector<wiring::PlaceKey> others;
    for (const wiring::ReadBackItem& other : items_)
        if (other.key != now->key)
            others.push_back(other.key);
    if (static_cast<std::size_t>(place) >= others.size())
        return;
    const wiring::PlaceKey& with = others[static_cast<std::size_t>(place)];
    job::WireCheck check;
    check.gathering = gatheringId_.toStdString();
    check.place = now->key;
    check.outcome = job::MatchOutcome::DoesNotMatch;
    check.against = now->reads;
    check.note = utf8(tr("swapped with %1").arg(ui::words(with)));
    say({journal::wireChecked(jobId(), check)}, tr("%1 swapped with %2").arg(this->place(), ui::words(with)),
        false);
}

void ReadBackView::lookAgain() {
    mismatch_ = false;
    emit changed();
}

void ReadBackView::goOn() {
    mismatch_ = false;
    index_ = std::min(index_ + 1, count());
    emit changed();
}

void ReadBackView::back() {
    mismatch_ = false;
    index_ = std::max(index_ - 1, 0);
    emit changed();
}

void ReadBackView::again() {
    mismatch_ = false;
    index_ = 0;
    emit changed();
}

void ReadBackView::choose(bool other) {
    const auto* now = item();
    if (now == nullptr || !mustChoose())
        return;
    chosen_[now->key] = other ? otherOf(now->reads) : now->reads;
    if (const auto shown = snapshot())
        show(*shown);
    emit changed();
}

} // namespace undercowl::ui
