#include "qml/parts/consumablesview.h"

#include "core/job/consumable.h"
#include "core/journal/saywork.h"
#include "qml/shell/words.h"

namespace undercowl::ui {

void ConsumablesView::setDraft(FormDraft* draft) {
    if (draft_ == draft)
        return;
    draft_ = draft;
    if (draft_ != nullptr)
        connect(draft_, &FormDraft::valuesChanged, this, &ConsumablesView::draftChanged);
    emit draftChanged();
}

job::ConsumableUse ConsumablesView::entered() const {
    const auto field = [this](const char* name) {
        return draft_ == nullptr ? std::string() : utf8(draft_->text(QString::fromLatin1(name)));
    };
    job::ConsumableUse use;
    use.what = field("what");
    use.grade = field("grade");
    use.limit = field("limit");
    use.batch = field("batch");
    use.opened = field("opened");
    return use;
}

QStringList ConsumablesView::against(const job::ConsumableUse& use, job::TimeMs at) const {
    bool whole = false;
    const int days = session()->setting(QStringLiteral("fluid-days")).toInt(&whole);
    QStringList words;
    for (const job::Message& message :
         job::againstUse(use, dayOf(at), whole && days > 0 ? days : job::brakeFluidDaysOpen))
        words += ui::words(message);
    return words;
}

QStringList ConsumablesView::against() const {
    const auto use = entered();
    return use.what.empty() ? QStringList() : against(use, session()->now());
}

void ConsumablesView::show(const Snapshot& snapshot) {
    std::vector<Line> lines;
    for (const job::ConsumableUse& use : snapshot.job.consumables) {
        QStringList detail{text(use.grade),
                           use.batch.empty() ? QString() : tr("batch %1").arg(text(use.batch)),
                           use.opened.empty() ? QString() : tr("opened %1").arg(dateWords(use.opened))};
        detail.removeAll(QString());
        lines.push_back({.id = text(use.id),
                         .title = text(use.what),
                         .detail = detail.join(QStringLiteral(" · ")),
                         .more = against(use, use.said.at).join(QStringLiteral("; "))});
    }
    used_.setLines(std::move(lines));
}

void ConsumablesView::use() {
    auto use = entered();
    if (use.what.empty()) {
        setErrors({{QStringLiteral("what"), tr("Type what goes in, such as \"brake fluid\".")}});
        return;
    }
    setErrors({});
    use.id = session()->newId();
    session()->say(
        {journal::consumableUsed(jobId(), use)},
        {.undoText = tr("Kept: %1").arg(text(use.what)), .form = draft_->property("form").toString()},
        [draft = draft_](const Entries& said) {
            if (said && draft != nullptr)
                draft->said();
        });
}

} // namespace undercowl::ui
