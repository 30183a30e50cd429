#include "qml/refit/afterwardsview.h"

#include "core/job/needs.h"
#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>
#include <utility>

namespace undercowl::ui {

QStringList banWords(const job::Job& job) {
    QStringList start;
    QStringList ride;
    for (const job::Banned& banned : job::bans(job)) {
        QStringList& list = banned.ban == job::Ban::Start ? start : ride;
        if (banned.apart)
            list += AfterwardsView::tr("%1 is not on again").arg(text(banned.step->title));
        for (const std::string& what : banned.missing)
            if (!banned.apart && !list.contains(knownWords(what)))
                list += knownWords(what);
    }
    QStringList words;
    if (!start.isEmpty())
        words += AfterwardsView::tr("Do not start: %1").arg(start.join(QStringLiteral("; ")));
    if (!ride.isEmpty())
        words += AfterwardsView::tr("Do not ride: %1").arg(ride.join(QStringLiteral("; ")));
    return words;
}

void AfterwardsView::show(const Snapshot& snapshot) {
    std::vector<Line> open;
    std::vector<Line> left;
    for (const job::StripStep& step : snapshot.job.steps) {
        if (!step.refitted)
            continue;
        const job::RefitNeeds needs = job::needsOf(step);
        for (const std::string& what : needs.afterwards) {
            const job::SeenTo* seen = job::seenTo(step, what);
            if (seen != nullptr && !seen->leftOut)
                continue;
            Line line{.id = text(step.id) + u'|' + text(what),
                      .title = knownWords(what),
                      .detail = tr("after: %1").arg(text(step.title)),
                      .more = text(step.id)};
            if (needs.doNotStart)
                line.mark = QStringLiteral("start");
            else if (needs.doNotRide)
                line.mark = QStringLiteral("ride");
            if (seen != nullptr)
                line.aside = text(seen->note);
            (seen == nullptr ? open : left).push_back(std::move(line));
        }
    }
    open_.setLines(std::move(open));
    left_.setLines(std::move(left));
    bans_ = banWords(snapshot.job);
}

void AfterwardsView::say(journal::Draft draft, const QString& undoText) {
    session()->say({std::move(draft)}, {.undoText = undoText, .form = {}},
                   [this, self = QPointer(this)](const Entries& said) {
                       if (said && self != nullptr)
                           emit saidSo();
                   });
}

std::string AfterwardsView::keptAs(const QString& step, const QString& shown) const {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : job::findStep(now->job, step.toStdString());
    if (known != nullptr)
        for (const std::string& what : job::needsOf(*known).afterwards)
            if (knownWords(what) == shown)
                return what;
    return shown.toStdString();
}

void AfterwardsView::done(const QString& step, const QString& what) {
    setErrors({});
    say(journal::refitSeenTo(jobId(), step.toStdString(), keptAs(step, what)), tr("Done: %1").arg(what));
}

void AfterwardsView::leaveOut(const QString& step, const QString& what, const QString& reason) {
    if (utf8(reason).empty()) {
        setErrors(
            {{QStringLiteral("reason"), tr("Type why it is left out, such as \"goes home on a trailer\".")}});
        return;
    }
    setErrors({});
    say(journal::refitSeenTo(jobId(), step.toStdString(), keptAs(step, what), true, utf8(reason)),
        tr("Left out: %1").arg(what));
}

} // namespace undercowl::ui
