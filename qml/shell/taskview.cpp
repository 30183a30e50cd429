#include "qml/shell/taskview.h"

#include "core/job/refit.h"
#include "core/job/worktime.h"
#include "core/journal/say.h"
#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

const job::Task* TaskView::found(const Snapshot& snapshot) const {
    return job::findTask(snapshot.job, task_.toStdString());
}

void TaskView::setTask(const QString& task) {
    task_ = task;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void TaskView::show(const Snapshot& snapshot) {
    const job::Job& job = snapshot.job;
    const auto* task = found(snapshot);
    if (task == nullptr)
        return;
    const auto now = session()->now();
    title_ = text(task->title);
    waitingFor_ = text(task->waitingFor);
    state_ = task->waiting               ? QStringLiteral("waiting")
             : job::finished(job, *task) ? QStringLiteral("finished")
                                         : QStringLiteral("open");
    span_.clear();
    running_ = false;
    forgotten_ = false;
    for (const job::WorkSpan& span : job.spans) {
        if (span.task != task->id || (span.stopped && !job::forgotten(span, now)))
            continue;
        span_ = span.id;
        running_ = !span.stopped.has_value();
        forgotten_ = job::forgotten(span, now);
    }
    spent_ = minuteWords(job::minutesSpent(job, task->id, now));
    if (task->minutes)
        spent_ = tr("%1 of %2 estimated").arg(spent_, minuteWords(*task->minutes));
    std::vector<Line> others;
    for (const job::Task& other : job.tasks)
        if (other.id != task->id)
            others.push_back({.id = text(other.id),
                              .title = text(other.title),
                              .detail = job::finished(job, other) ? tr("finished") : tr("open"),
                              .on = std::ranges::find(task->after, other.id) != task->after.end()});
    others_.setLines(std::move(others));
}

void TaskView::say(journal::Draft draft, const QString& undoText) {
    setErrors({});
    session()->say({std::move(draft)}, {.undoText = undoText, .form = {}});
}

void TaskView::startOrStop() {
    if (task_.isEmpty())
        return;
    if (running_)
        say(journal::timeStopped(jobId(), span_), tr("Watch stopped"));
    else
        say(journal::timeStarted(jobId(), session()->newId(), task_.toStdString()), tr("Watch started"));
}

void TaskView::correct(const QString& minutes) {
    const auto typed = wholeMinutes(minutes);
    if (!typed) {
        setErrors({{QStringLiteral("minutes"), tr("Type whole minutes, such as 45.")}});
        return;
    }
    if (!span_.empty())
        say(journal::timeStopped(jobId(), span_, *typed), tr("Time corrected"));
}

void TaskView::hold(undercowl::ui::FormDraft* draft) {
    const QString waitingFor = draft->text(QStringLiteral("waitingFor"));
    if (utf8(waitingFor).empty()) {
        setErrors({{QStringLiteral("waitingFor"), tr("Type what it waits for, such as \"brake shoes\".")}});
        return;
    }
    const auto by = job::holdsFromCode(utf8(draft->text(QStringLiteral("heldBy"))));
    setErrors({});
    session()->say(
        {journal::taskHeld(jobId(), task_.toStdString(), utf8(waitingFor), by.value_or(job::Holds::NotSaid))},
        {.undoText = tr("Task waits"), .form = draft->form()}, [kept = QPointer(draft)](const Entries& said) {
            if (said && kept != nullptr)
                kept->said();
        });
}

void TaskView::resume() {
    say(journal::taskResumed(jobId(), task_.toStdString()), tr("Task resumed"));
}

void TaskView::finish() {
    say(journal::taskFinished(jobId(), task_.toStdString()), tr("Task finished"));
}

void TaskView::comesAfter(const QString& other) {
    const auto now = snapshot();
    const auto* task = now == nullptr ? nullptr : found(*now);
    if (task == nullptr)
        return;
    job::Task changed = *task;
    const std::string id = other.toStdString();
    if (std::erase(changed.after, id) == 0) {
        if (job::closesCircle(now->job, changed.id, id)) {
            const auto* first = job::findTask(now->job, id);
            setErrors({{QStringLiteral("after"), tr("%1 already comes after %2: take that back first.")
                                                     .arg(text(first->title), text(changed.title))}});
            return;
        }
        changed.after.push_back(id);
    }
    say(journal::taskNamed(jobId(), changed), tr("Order of tasks kept"));
}

} // namespace undercowl::ui
