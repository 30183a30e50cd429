// Fluids, grease and sealant: what went in, and what speaks against one before it does.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QPointer>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// used: title what, detail grade, batch, day of opening, more what spoke against it.
// The form's values: what, grade, limit, batch, opened; against: what speaks against them as they stand.
class ConsumablesView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* used READ used CONSTANT)
    Q_PROPERTY(undercowl::ui::FormDraft* draft READ draft WRITE setDraft NOTIFY draftChanged)
    Q_PROPERTY(QStringList against READ against NOTIFY draftChanged)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* used() { return &used_; }
    [[nodiscard]] FormDraft* draft() const { return draft_; }
    void setDraft(FormDraft* draft);
    [[nodiscard]] QStringList against() const;

    // All the same, when something speaks against it: it was said before.
    Q_INVOKABLE void use();

signals:
    void draftChanged();

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] job::ConsumableUse entered() const;
    [[nodiscard]] QStringList against(const job::ConsumableUse& use, job::TimeMs at) const;

    QPointer<FormDraft> draft_;
    LineModel used_;
};

} // namespace undercowl::ui
