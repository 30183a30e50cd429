#include "qml/refit/readbackview.h"

#include "core/journal/say.h"
#include "core/talk/readback.h"
#include "qml/wiring/gatherings.h"
#include "qml/wiring/words.h"

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
    beginAnew();
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
            items_[i].otherEmpty = false;
        }
    if (!std::exchange(begun_, true)) { // after a break it goes on where it stopped
        const auto open = std::ranges::find(items_, false, &wiring::ReadBackItem::refitted);
        goTo(open == items_.end() ? 0 : static_cast<int>(open - items_.begin()));
    }
    if (index() > count())
        goTo(count());
    followUndo();
}

const wiring::ReadBackItem* ReadBackView::item() const {
    return open() ? &items_[static_cast<std::size_t>(index())] : nullptr;
}

QString ReadBackView::title() const {
    const auto* known = find();
    return known == nullptr ? QString() : text(known->title);
}

QString ReadBackView::base() const {
    return item() == nullptr || item()->empty ? QString() : baseCode(item()->answer.wire.colour);
}

QString ReadBackView::tracer() const {
    return item() == nullptr || item()->empty ? QString() : tracerCode(item()->answer.wire.colour);
}

QString ReadBackView::wireWords() const {
    return item() == nullptr ? QString()
           : item()->empty   ? emptyWords()
                             : ui::words(item()->answer.wire.colour);
}

QString ReadBackView::wireDetails() const {
    return item() == nullptr || item()->empty ? QString() : ui::details(item()->answer.wire);
}

QString ReadBackView::reads() const {
    return item() == nullptr ? QString() : ui::words(item()->reads);
}

QString ReadBackView::source() const {
    return item() == nullptr ? QString() : text(item()->answer.source);
}

bool ReadBackView::mustChoose() const {
    return item() != nullptr && item()->stops();
}

QString ReadBackView::otherBase() const {
    return mustChoose() && !item()->otherEmpty ? baseCode(item()->contradicts->colour) : QString();
}

QString ReadBackView::otherTracer() const {
    return mustChoose() && !item()->otherEmpty ? tracerCode(item()->contradicts->colour) : QString();
}

QString ReadBackView::otherWords() const {
    if (!mustChoose())
        return {};
    if (item()->otherEmpty)
        return emptyWords();
    const QString more = ui::details(*item()->contradicts);
    return more.isEmpty() ? ui::words(item()->contradicts->colour)
                          : ui::words(item()->contradicts->colour) + QStringLiteral(", ") + more;
}

QString ReadBackView::otherReads() const {
    return mustChoose() ? ui::words(otherOf(item()->reads)) : QString();
}

QString ReadBackView::spoken() const {
    return item() == nullptr ? QString()
                             : text(talk::english(talk::wireSentence(*item(), gatheringId_.toStdString())));
}

QString ReadBackView::briefSentence() const {
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

std::optional<job::MatchOutcome> ReadBackView::outcome(int index) const {
    const auto now = snapshot();
    if (now == nullptr)
        return std::nullopt;
    const auto& checks = now->job.wireChecks;
    const auto at = std::ranges::find_if(checks, [&](const job::WireCheck& check) {
        return check.gathering == gatheringId_.toStdString() &&
               check.place == items_[static_cast<std::size_t>(index)].key;
    });
    return at == checks.end() ? std::nullopt : std::optional(at->outcome);
}

QString ReadBackView::named(int index) const {
    return ui::words(items_[static_cast<std::size_t>(index)].key);
}

QString ReadBackView::offered(int index) const {
    const auto& one = items_[static_cast<std::size_t>(index)];
    const wiring::Wire& wire = one.answer.wire;
    if (one.empty)
        return QStringLiteral("%1: %2").arg(named(index), emptyWords());
    return QStringLiteral("%1: %2").arg(named(index), ui::words(wire.colour));
}

job::WireCheck ReadBackView::checkOf(const wiring::ReadBackItem& item, job::MatchOutcome outcome) const {
    job::WireCheck check;
    check.gathering = gatheringId_.toStdString();
    check.place = item.key;
    check.outcome = outcome;
    check.against = item.reads;
    return check;
}

std::vector<journal::Draft> ReadBackView::saysMatch() const {
    wiring::PlaceAnswer answer = item()->answer;
    answer.source.clear(); // seen at the machine, whatever it was checked against
    answer.mark.reset();
    const job::WireCheck check = checkOf(*item(), job::MatchOutcome::Matches);
    if (item()->empty)
        return {journal::wireChecked(jobId(), check),
                journal::placeEmpty(jobId(), check.gathering, check.place, wiring::Answer::AsRefitted, true)};
    return {journal::wireChecked(jobId(), check),
            journal::wireAnswered(jobId(), check.gathering, check.place, wiring::Answer::AsRefitted, answer)};
}

std::vector<journal::Draft> ReadBackView::saysMismatch(const std::string& note) const {
    job::WireCheck check = checkOf(*item(), job::MatchOutcome::DoesNotMatch);
    check.note = note;
    std::vector<journal::Draft> drafts{journal::wireChecked(jobId(), check)};
    if (item()->refitted) // it was thought to be right before
        drafts.push_back(
            journal::placeEmpty(jobId(), check.gathering, check.place, wiring::Answer::AsRefitted));
    return drafts;
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
