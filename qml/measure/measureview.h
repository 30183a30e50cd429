// One reading: what was measured, with what, against which limits, and what follows from it.
//
// The verdict is core/verdict's; where limit or uncertainty is missing the value is kept without one, and the
// reason is shown.
#pragma once

#include "qml/measure/band.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QPointer>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// draft          what is being entered: what, value, unit (index in units), low, high, trust (index in
// trusts),
//                reference, instrument (index in instruments, 0 for none)
// about          step or task that the reading is about; may be empty
// units, unit    what may be chosen, and the chosen one's symbol
// instruments    "none named", then those that measure in this unit
// verdict        "within", "undecided", "outside" or empty;  reason: why, or why there is none
// working        uncertainty and verdict line by line, and what would settle it;  band  the same as a plot
// readings       of the job, newest first: title what, aside value, detail verdict and limits, mark the
// verdict
class MeasureView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::FormDraft* draft READ draft WRITE setDraft NOTIFY draftChanged)
    Q_PROPERTY(QString about MEMBER about_ NOTIFY changed)
    Q_PROPERTY(QStringList units READ units CONSTANT)
    Q_PROPERTY(QString unit READ unit NOTIFY judged)
    Q_PROPERTY(QStringList instruments READ instruments NOTIFY judged)
    Q_PROPERTY(QStringList trusts READ trusts CONSTANT)
    Q_PROPERTY(QString verdict READ verdict NOTIFY judged)
    Q_PROPERTY(QString reason READ reason NOTIFY judged)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY judged)
    Q_PROPERTY(QStringList working READ working NOTIFY judged)
    Q_PROPERTY(undercowl::ui::Band* band READ band CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* readings READ readings CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] FormDraft* draft() const { return draft_; }
    void setDraft(FormDraft* draft);
    [[nodiscard]] QStringList units() const;
    [[nodiscard]] QString unit() const;
    [[nodiscard]] QStringList instruments() const;
    [[nodiscard]] QStringList trusts() const;
    [[nodiscard]] QString verdict() const { return verdict_; }
    [[nodiscard]] QString reason() const { return reason_; }
    [[nodiscard]] QStringList cautions() const { return cautions_; }
    [[nodiscard]] QStringList working() const { return working_; }
    [[nodiscard]] Band* band() { return &band_; }
    [[nodiscard]] LineModel* readings() { return &readings_; }

    Q_INVOKABLE void keep(); // says the reading; errors by field: what, value, low, high, reference

signals:
    void draftChanged();
    void judged();
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    void judge();
    [[nodiscard]] job::Reading reading(QVariantMap& errors) const;

    QPointer<FormDraft> draft_;
    QString about_;
    QString verdict_, reason_;
    QStringList cautions_, working_;
    Band band_;
    LineModel readings_;
};

} // namespace undercowl::ui
