#include "qml/lookover/settleview.h"

#include "core/job/settling.h"
#include "core/journal/say.h"
#include "qml/shell/words.h"

#include <QPointer>

namespace undercowl::ui {

void SettleView::setFinding(const QString& finding) {
    finding_ = finding;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void SettleView::show(const Snapshot& snapshot) {
    const auto* finding = job::findFinding(snapshot.job, finding_.toStdString());
    known_ = finding != nullptr && !finding->settled;
    notFitted_.clear();
    if (finding == nullptr)
        return;
    const job::Settling asked = job::settling(snapshot.job, *finding);
    title_ = text(finding->text);
    unsafe_ = asked.asksHow;
    QStringList done;
    for (const job::Task* task : asked.done)
        done += text(task->title);
    done_ = done.join(QStringLiteral(", "));
    for (const job::Part* part : asked.notFitted)
        notFitted_ += tr("%1 (%2)").arg(text(part->name), words(part->state));
}

void SettleView::settle(FormDraft* draft) {
    if (draft == nullptr || !known_)
        return;
    const std::string how = utf8(draft->text(QStringLiteral("how")));
    setErrors({});
    if (unsafe_ && how.empty()) {
        setErrors({{QStringLiteral("how"), tr("Type what was done, such as \"hose renewed, brake bled\".")}});
        return;
    }
    if (!notFitted_.isEmpty() && !asking()) {
        asked_ = notFitted_;
        emit changed();
        return;
    }
    session()->say({journal::findingSettled(jobId(), finding_.toStdString(), how)},
                   {.undoText = tr("Settled"), .form = draft->form()},
                   [this, self = QPointer(this), kept = QPointer(draft)](const Entries& said) {
                       if (!said || self == nullptr)
                           return;
                       if (kept != nullptr)
                           kept->said();
                       emit settled();
                   });
}

} // namespace undercowl::ui
