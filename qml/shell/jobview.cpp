#include "qml/shell/jobview.h"

#include "core/job/needs.h"
#include "core/job/refit.h"
#include "core/job/worktime.h"
#include "core/journal/say.h"
#include "qml/refit/afterwardsview.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr std::size_t mostPhotos = 12;

QString whatItShows(const job::Job& job, const job::Photo& photo) {
    if (!photo.note.empty())
        return text(photo.note);
    const auto note = std::ranges::find(job.memos.rbegin(), job.memos.rend(), photo.id, &job::Memo::about);
    if (note != job.memos.rend() && !note->text.empty())
        return text(note->text);
    if (const auto* step = job::findStep(job, photo.about))
        return text(step->title);
    if (const auto* gathering = job::findGathering(job, photo.about))
        return text(gathering->title);
    const auto finding = std::ranges::find(job.findings, photo.about, &job::Finding::id);
    return finding == job.findings.end() ? words(photo.purpose) : text(finding->text);
}

QString contentOf(const job::StripStep& step) {
    QStringList content;
    for (const auto& hardware : step.hardware) {
        QString piece = QStringLiteral("%1 × %2").arg(QString::number(hardware.count), text(hardware.what));
        if (!hardware.thread.empty())
            piece += u' ' + text(hardware.thread);
        if (!hardware.length.empty())
            piece += QStringLiteral(" × ") + text(hardware.length);
        content << piece;
    }
    return content.join(QStringLiteral(", "));
}

Line taskLine(const job::Job& job, const job::Task& task, job::TimeMs now) {
    Line line{.id = text(task.id), .title = text(task.title), .on = job::finished(job, task)};
    const int minutes = job::minutesSpent(job, task.id, now);
    QStringList detail;
    if (task.waiting) {
        detail += JobView::tr("waits for %1").arg(text(task.waitingFor));
        line.mark = QStringLiteral("waiting");
    }
    for (const job::WorkSpan* span : job::running(job))
        if (span->task == task.id) {
            detail += job::forgotten(*span, now) ? JobView::tr("the watch was forgotten")
                                                 : JobView::tr("the watch runs");
            line.mark = QStringLiteral("running");
        }
    if (minutes > 0)
        detail += minuteWords(minutes);
    QStringList first;
    for (const Id& before : task.after)
        if (const auto* other = job::findTask(job, before); other != nullptr && !job::finished(job, *other))
            first += text(other->title);
    if (!first.isEmpty())
        detail += JobView::tr("first %1").arg(first.join(QStringLiteral(", ")));
    QStringList parts;
    if (!task.done)
        for (const job::Part* part : job::partsToFit(job, task))
            parts += text(part->name);
    if (!parts.isEmpty())
        detail += JobView::tr("not fitted: %1").arg(parts.join(QStringLiteral(", ")));
    line.detail = detail.join(QStringLiteral(" · "));
    return line;
}

} // namespace

void JobView::show(const Snapshot& snapshot) {
    const auto& job = snapshot.job;
    const auto now = session()->now();
    number_ = text(job.number);
    machine_ = machineName(snapshot.machine);
    frameNumber_ = text(snapshot.machine.frameNumber);
    owner_ = text(snapshot.owner.name);
    reason_ = text(job.reason);
    cameBackFrom_ = text(job.cameBackFrom);
    stopped_ = words(snapshot.standing.stopped);
    next_ = words(snapshot.standing.next);
    since_ = when(snapshot.standing.lastAt, now);
    moment_ = text(job::code(snapshot.standing.moment));

    openFindings_ = static_cast<int>(std::ranges::count(job.findings, false, &job::Finding::settled));
    checksToGo_ = 0;
    for (const job::Round& round : job.rounds)
        checksToGo_ += static_cast<int>(
            std::ranges::count(round.checks, std::optional<job::CheckAnswer>{}, &job::RoundCheck::answer));
    const auto danger = std::ranges::find_if(job.findings, [](const job::Finding& finding) {
        return !finding.settled && !finding.refused && finding.severity == job::Severity::Unsafe;
    });
    unsafe_ = danger == job.findings.end() ? QString() : text(danger->text);
    steps_ = static_cast<int>(job.steps.size());

    std::vector<Line> bags;
    stepsToRefit_ = 0;
    for (const auto& step : job.steps) {
        if (step.refitted)
            continue;
        ++stepsToRefit_;
        if (!step.bag.empty())
            bags.push_back({.id = text(step.id),
                            .title = tr("Bag %1").arg(text(step.bag)),
                            .detail = contentOf(step),
                            .more = text(step.title)});
    }
    bags_.setLines(std::move(bags));

    std::vector<Line> photos;
    for (auto photo = job.photos.rbegin(); photo != job.photos.rend() && photos.size() < mostPhotos; ++photo)
        photos.push_back({.id = text(photo->id),
                          .title = whatItShows(job, *photo),
                          .aside = when(photo->said.at, now),
                          .picture = session()->mediaUrl(text(photo->media))});
    photos_.setLines(std::move(photos));

    std::vector<Line> tasks;
    for (const auto& task : job.tasks)
        tasks.push_back(taskLine(job, task, now));
    bans_ = banWords(job);
    afterwards_ = static_cast<int>(job::openAfterwards(job).size());
    tasks_.setLines(std::move(tasks));

    std::vector<Line> parts;
    QStringList came;
    for (const auto& part : job.parts) {
        if (part.state == job::PartState::Here)
            came += text(part.name);
        else if (job::outstanding(part))
            parts.push_back({.id = text(part.id), .title = text(part.name), .aside = words(part.state)});
    }
    came_ = came.join(QStringLiteral(", "));
    parts_.setLines(std::move(parts));
}

void JobView::sayTask(journal::Draft draft, const QString& undoText) {
    session()->say({std::move(draft)}, {.undoText = undoText, .form = {}},
                   [this, self = QPointer(this)](const Entries& said) {
                       if (said && self != nullptr)
                           emit taskSaid();
                   });
}

void JobView::nameTask(const QString& title) {
    const job::Task task{
        .id = session()->newId(), .title = utf8(title), .waiting = false, .waitingFor = {}, .order = 0};
    if (task.title.empty()) {
        setErrors({{QStringLiteral("task"), tr("Type what the task is, such as \"front brake\".")}});
        return;
    }
    setErrors({});
    sayTask(journal::taskNamed(jobId(), task), tr("Task kept"));
}

} // namespace undercowl::ui
