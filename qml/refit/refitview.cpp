#include "qml/refit/refitview.h"

#include "core/job/cautions.h"
#include "core/job/lines.h"
#include "core/job/wires.h"
#include "core/journal/say.h"
#include "core/journal/saywork.h"
#include "core/talk/readback.h"
#include "core/wiring/readback.h"
#include "qml/shell/words.h"
#include "qml/strip/stripdraft.h"
#include "qml/wiring/gatherings.h"

#include <QCoreApplication>
#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

QString whatItWaitsFor(const job::Job& job, const job::StripStep& step) {
    const auto* task = job::findTask(job, step.task);
    return task == nullptr || !task->waiting ? QString() : text(task->waitingFor);
}

// How far the wires of a gathering were read back, over both halves.
QString readBackOf(const wiring::Gathering& gathering) {
    std::size_t all = 0;
    std::size_t done = 0;
    for (const auto half : {wiring::Half::Loom, wiring::Half::Unit})
        for (const auto& item : wiring::readBack(gathering, half, wiring::Answer::AsFound)) {
            ++all;
            done += item.refitted ? 1 : 0;
        }
    return RefitView::tr("%1 of %2 wires read back").arg(done).arg(all);
}

// The row of a step that is on again names its wires that do not match or were skipped; before that reading
// back is still to come.
QString withWiresLeft(const job::Job& job, const job::StripStep& step) {
    QStringList all{hardwareText(step)};
    for (const auto* gathering : job::unreadGatherings(job, step))
        if (step.refitted || !job::wiresLeft(job, *gathering).off.empty())
            all += RefitView::tr("%1: %2").arg(text(gathering->title), wiresLeftWords(job, *gathering));
    all.removeAll(QString());
    return all.join(QStringLiteral("; "));
}

// Whole sentences, so that the voice pauses between them.
QString aloud(const std::vector<talk::Sentence>& sentences) {
    QStringList all;
    for (const talk::Sentence& sentence : sentences)
        all += text(talk::english(sentence));
    return all.join(QStringLiteral(". "));
}

} // namespace

void RefitView::show(const Snapshot& snapshot) {
    const auto order = job::refitOrder(snapshot.job);
    const auto next = job::nextRefit(snapshot.job);
    std::vector<Line> lines;
    lines.reserve(order.size());
    for (const job::RefitStep& step : order)
        lines.push_back(
            {.id = text(step.strip->id),
             .title = text(step.strip->title),
             .detail = withWiresLeft(snapshot.job, *step.strip),
             .aside = step.waiting ? whatItWaitsFor(snapshot.job, *step.strip) : QString(),
             .mark = step.waiting ? QStringLiteral("waiting") : QString(),
             .picture = step.photos.empty() ? QUrl() : session()->mediaUrl(text(step.photos.front()->media)),
             .on = step.done});
    steps_.setLines(std::move(lines));
    finished_ = std::ranges::all_of(order, &job::RefitStep::done);
    stalled_ = !finished_ && !next;
    notRight_.clear();
    for (const auto& gathering : snapshot.job.gatherings)
        if (!job::wiresLeft(snapshot.job, gathering).off.empty())
            notRight_ += tr("%1: %2").arg(text(gathering.title), wiresLeftWords(snapshot.job, gathering));
    for (const job::Part& part : snapshot.job.parts)
        if (job::outstanding(part))
            notRight_ += tr("Part not fitted: %1 (%2)").arg(text(part.name), words(part.state));
    lines_ = static_cast<int>(
        std::ranges::count_if(order, [](const job::RefitStep& step) { return job::isLine(*step.strip); }));

    const std::string wanted = !chosen_.isEmpty() ? chosen_.toStdString() : next ? next->strip->id : "";
    const auto at =
        std::ranges::find_if(order, [&](const job::RefitStep& step) { return step.strip->id == wanted; });
    step_ = {};
    std::vector<Line> wires;
    if (at != order.end()) {
        const job::StripStep& strip = *at->strip;
        step_.id = text(strip.id);
        step_.position = QStringLiteral("%1 / %2").arg(at - order.begin() + 1).arg(order.size());
        step_.title = text(strip.title);
        step_.holds = hardwareText(strip);
        step_.note = text(strip.note);
        step_.details = notesOf(strip).join(u'\n');
        step_.waiting = at->waiting;
        step_.waitsFor = whatItWaitsFor(snapshot.job, strip);
        step_.done = at->done;
        step_.line = job::isLine(strip);
        for (const job::Hardware& hardware : strip.hardware)
            if (hardware.torque)
                step_.torques += tr("%1: %2").arg(text(hardware.what) + u' ' + text(hardware.thread),
                                                  numberText(hardware.torque->digits) + QChar(QChar::Nbsp) +
                                                      text(hardware.torque->unit));
        step_.sentence =
            aloud(talk::stepSentences(snapshot.job, strip, static_cast<int>(at - order.begin()) + 1));
        step_.spokenTorques = aloud(talk::torqueSentences(strip));
        for (const std::string& key : strip.cautions)
            step_.cautions += coreWords(job::englishCaution(key));
        if (const auto* photo = clearestPhoto(*at)) {
            step_.photo = session()->mediaUrl(text(photo->media));
            step_.marks = marksOn(strip, photo->id);
            if (!step_.marks.isEmpty())
                for (std::size_t i = 0; i < strip.hardware.size(); ++i)
                    step_.pieces += QStringLiteral("%1  %2").arg(i + 1).arg(hardwareText(strip.hardware[i]));
        }
        QStringList behind;
        for (const job::StripStep* other : at->behind)
            behind += text(other->title);
        for (const job::Task* task : at->needs)
            behind += tr("the task %1").arg(text(task->title));
        step_.behind = behind.join(QStringLiteral(", "));
        for (const auto& gathering : snapshot.job.gatherings)
            if (gathering.step == strip.id)
                wires.push_back({.id = text(gathering.id),
                                 .title = text(gathering.title),
                                 .detail = readBackOf(gathering)});
        for (const auto* gathering : job::unreadGatherings(snapshot.job, strip))
            step_.wiresLeft +=
                tr("%1: %2").arg(text(gathering->title), wiresLeftWords(snapshot.job, *gathering));
    }
    wires_.setLines(std::move(wires));
}

void RefitView::choose(const QString& step) {
    chosen_ = step;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void RefitView::move(int by) {
    const auto& lines = steps_.lines();
    const auto at = std::ranges::find(lines, step_.id, &Line::id);
    const auto to = at == lines.end() ? 0 : (at - lines.begin()) + by;
    if (to >= 0 && to < std::ssize(lines))
        choose(lines[static_cast<std::size_t>(to)].id);
}

void RefitView::goOn() {
    move(1);
}

void RefitView::back() {
    move(-1);
}

bool RefitView::chooseBag(int number) {
    const auto now = snapshot();
    if (now == nullptr)
        return false;
    for (const job::RefitStep& step : job::refitOrder(now->job))
        if (step.strip->bag == std::to_string(number) && !step.done) {
            choose(text(step.strip->id));
            return true;
        }
    return false;
}

void RefitView::refit(const QString& note) {
    if (step_.id.isEmpty() || step_.done || saying_)
        return;
    saying_ = true;
    emit changed();
    chosen_.clear();
    session()->say({journal::stepRefitted(jobId(), step_.id.toStdString(), utf8(note))},
                   {.undoText = tr("Refitted: %1").arg(step_.title), .form = {}},
                   [self = QPointer(this)](const Entries& /*said*/) {
                       if (self == nullptr)
                           return;
                       self->saying_ = false;
                       emit self->changed();
                   });
}

void RefitView::takeOff() {
    const auto now = snapshot();
    const auto* step = now == nullptr ? nullptr : job::findStep(now->job, step_.id.toStdString());
    if (step == nullptr || !step->refitted || saying_)
        return;
    chosen_ = step_.id; // it stays on the screen, whatever is next
    saying_ = true;
    emit changed();
    session()->say({journal::withdrawn(jobId(), step->refitted->said.entry)},
                   {.undoText = tr("Not refitted: %1").arg(step_.title), .form = {}},
                   [self = QPointer(this)](const Entries& /*said*/) {
                       if (self == nullptr)
                           return;
                       self->saying_ = false;
                       emit self->changed();
                   });
}

void RefitView::reorder(const QString& step, bool earlier) {
    const auto now = snapshot();
    if (now == nullptr || saying_)
        return;
    const auto wish = job::moved(now->job, step.toStdString(), earlier);
    if (!wish) {
        setErrors({{QStringLiteral("order"), words(wish.error())}});
        return;
    }
    setErrors({});
    saying_ = true;
    session()->say({journal::refitWished(jobId(), *wish)}, {.undoText = tr("Order changed"), .form = {}},
                   [self = QPointer(this)](const Entries& /*said*/) {
                       if (self == nullptr)
                           return;
                       self->saying_ = false;
                       emit self->changed();
                   });
}

void RefitView::resume() {
    const auto now = snapshot();
    const auto* step = now == nullptr ? nullptr : job::findStep(now->job, step_.id.toStdString());
    if (step == nullptr || !step_.waiting)
        return;
    session()->say({journal::taskResumed(jobId(), step->task)}, {.undoText = tr("Task resumed"), .form = {}});
}

} // namespace undercowl::ui
