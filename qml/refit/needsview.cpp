#include "qml/refit/needsview.h"

#include "core/job/needs.h"
#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <QPointer>

namespace undercowl::ui {

namespace {

QStringList listOf(const std::vector<std::string>& texts) {
    QStringList list;
    for (const std::string& each : texts)
        list += knownWords(each);
    return list;
}

std::vector<std::string> linesOf(const QString& typed) {
    std::vector<std::string> lines;
    for (const QString& line : typed.split(u'\n'))
        if (std::string trimmed = utf8(line); !trimmed.empty())
            lines.push_back(std::move(trimmed));
    return lines;
}

QString yes() {
    return QStringLiteral("yes");
}

} // namespace

void NeedsView::setStep(const QString& step) {
    step_ = step;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void NeedsView::show(const Snapshot& snapshot) {
    const auto* step = job::findStep(snapshot.job, step_.toStdString());
    const job::RefitNeeds needs = step == nullptr ? job::RefitNeeds{} : job::needsOf(*step);
    title_ = step == nullptr ? QString() : text(step->title);
    suggested_ = step != nullptr && !step->needs;
    renew_ = listOf(needs.renew);
    apply_ = knownWords(needs.apply);
    afterwards_ = listOf(needs.afterwards);
    noStart_ = needs.doNotStart;
    noRide_ = needs.doNotRide;
    bans_.clear();
    if (noStart_)
        bans_ += tr("Do not start until this is on and all that follows is done.");
    if (noRide_)
        bans_ += tr("Do not ride until this is on and all that follows is done.");
}

QVariantMap NeedsView::known() const {
    return {{QStringLiteral("renew"), renew_.join(u'\n')},
            {QStringLiteral("afterwards"), afterwards_.join(u'\n')},
            {QStringLiteral("apply"), apply_},
            {QStringLiteral("noStart"), noStart_ ? yes() : QString()},
            {QStringLiteral("noRide"), noRide_ ? yes() : QString()}};
}

void NeedsView::keep(FormDraft* draft) {
    if (draft == nullptr || step_.isEmpty())
        return;
    const job::RefitNeeds needs{
        linesOf(draft->text(QStringLiteral("renew"))), utf8(draft->text(QStringLiteral("apply"))),
        linesOf(draft->text(QStringLiteral("afterwards"))), draft->text(QStringLiteral("noStart")) == yes(),
        draft->text(QStringLiteral("noRide")) == yes()};
    session()->say({journal::refitNeeds(jobId(), step_.toStdString(), needs)},
                   {.undoText = tr("Kept for the refit"), .form = draft->form()},
                   [this, self = QPointer(this), draft = QPointer(draft)](const Entries& said) {
                       if (!said || self == nullptr || draft == nullptr)
                           return;
                       draft->said();
                       emit kept();
                   });
}

} // namespace undercowl::ui
