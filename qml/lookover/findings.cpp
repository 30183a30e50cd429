#include "qml/lookover/findings.h"

#include "core/job/settling.h"
#include "core/journal/say.h"
#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

Line lineOf(const ShopSession& session, const job::Job& job, const job::Finding& finding) {
    Line line;
    line.id = text(finding.id);
    line.title = text(finding.text);
    line.detail = text(finding.settled ? finding.settledHow : finding.toDo);
    line.mark = text(job::code(finding.severity));
    line.aside = when(finding.said.at, session.now());
    line.on = finding.settled;
    if (finding.refused && !finding.settled)
        line.more = Findings::tr("%1 does not want it put right (%2)")
                        .arg(text(finding.refused->by), when(finding.refused->said.at, session.now()));
    const bool planned = std::ranges::find(job.tasks, finding.id, &job::Task::finding) != job.tasks.end();
    if (planned && !finding.settled)
        line.detail +=
            (line.detail.isEmpty() ? QString() : QStringLiteral(" · ")) + Findings::tr("is a task");
    for (const job::Memo& memo : job.memos)
        if (memo.about == finding.id && !memo.text.empty())
            line.detail += (line.detail.isEmpty() ? QString() : QStringLiteral("\n")) + text(memo.text);
    if (const auto photos = job::photosAbout(job, finding.id); !photos.empty())
        line.picture = session.mediaUrl(text(photos.front()->media));
    return line;
}

const job::Finding* byId(const job::Job& job, const std::string& id) {
    const auto found = std::ranges::find(job.findings, id, &job::Finding::id);
    return found == job.findings.end() ? nullptr : &*found;
}

} // namespace

void Findings::show(const Snapshot& snapshot) {
    auto findings = snapshot.job.findings;
    std::ranges::stable_sort(findings, {}, &job::Finding::severity);
    std::vector<Line> open;
    std::vector<Line> settled;
    for (const auto& finding : findings)
        (finding.settled ? settled : open).push_back(lineOf(*session(), snapshot.job, finding));
    open_.setLines(std::move(open));
    settled_.setLines(std::move(settled));
}

void Findings::noteFor(FormDraft* draft, const QString& round, const QString& check) {
    const auto now = snapshot();
    if (now == nullptr || draft == nullptr)
        return;
    job::Finding finding;
    finding.id = utf8(draft->text(QStringLiteral("id")));
    finding.text = utf8(draft->text(QStringLiteral("text")));
    finding.toDo = utf8(draft->text(QStringLiteral("toDo")));
    const auto severity = job::severityFromCode(utf8(draft->text(QStringLiteral("severity"))));
    QVariantMap errors;
    if (const QString typed = draft->text(QStringLiteral("minutes")).trimmed(); !typed.isEmpty()) {
        finding.minutes = wholeMinutes(typed);
        if (!finding.minutes)
            errors[QStringLiteral("minutes")] = tr("Type whole minutes, such as 45.");
    }
    // "stand:" alone is only what the check is about.
    if (finding.text.find_last_not_of(": ") == std::string::npos || finding.text.ends_with(':'))
        errors[QStringLiteral("text")] = tr("Type what was found, such as \"brake hose cracked\".");
    if (!severity)
        errors[QStringLiteral("severity")] = tr("Choose how serious it is: unsafe, soon or note.");
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    finding.severity = *severity;
    const auto* known = byId(now->job, finding.id);
    const Id supersedes = known == nullptr ? Id{} : known->said.entry;
    if (finding.id.empty())
        finding.id = session()->newId();
    std::vector drafts{journal::findingNoted(jobId(), finding, supersedes)};
    if (!round.isEmpty())
        drafts.push_back(journal::checkAnswered(jobId(), round.toStdString(), check.toStdString(),
                                                job::CheckAnswer::Found, {}, finding.id));
    session()->say(
        std::move(drafts), {.undoText = tr("Finding kept"), .form = draft->property("form").toString()},
        [this, self = QPointer(this), draft = QPointer(draft), id = text(finding.id)](const Entries& said) {
            if (!said || self == nullptr || draft == nullptr)
                return;
            draft->said();
            emit noted(id);
        });
}

void Findings::makeTask(const QString& finding) {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : byId(now->job, finding.toStdString());
    if (known == nullptr)
        return;
    const bool planned =
        std::ranges::find(now->job.tasks, known->id, &job::Task::finding) != now->job.tasks.end();
    if (planned || !beingPlanned_.insert(known->id).second)
        return; // a second touch makes no second task
    job::Task task;
    task.id = session()->newId();
    task.title = known->toDo.empty() ? known->text : known->toDo;
    task.finding = known->id;
    task.minutes = known->minutes;
    session()->say({journal::taskNamed(jobId(), task)},
                   {.undoText = tr("Task made: %1").arg(text(task.title)), .form = {}},
                   [self = QPointer(this), id = known->id](const Entries& /*said*/) {
                       if (self != nullptr)
                           self->beingPlanned_.erase(id);
                   });
}

bool Findings::settle(const QString& finding, const QString& how) {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : byId(now->job, finding.toStdString());
    if (known == nullptr)
        return true;
    if (const job::Settling asked = job::settling(now->job, *known);
        asked.asksHow || !asked.notFitted.empty())
        return false;
    session()->say({journal::findingSettled(jobId(), finding.toStdString(), utf8(how))},
                   {.undoText = tr("Settled"), .form = {}});
    return true;
}

void Findings::reopen(const QString& finding) {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : byId(now->job, finding.toStdString());
    if (known == nullptr || !known->settled)
        return;
    session()->say({journal::withdrawn(jobId(), known->settledBy)},
                   {.undoText = tr("Open again"), .form = {}});
}

QVariantMap Findings::known(const QString& finding) const {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : byId(now->job, finding.toStdString());
    if (known == nullptr)
        return {};
    return {{QStringLiteral("id"), finding},
            {QStringLiteral("text"), text(known->text)},
            {QStringLiteral("severity"), text(job::code(known->severity))},
            {QStringLiteral("toDo"), text(known->toDo)},
            {QStringLiteral("minutes"), known->minutes ? QString::number(*known->minutes) : QString()}};
}

} // namespace undercowl::ui
