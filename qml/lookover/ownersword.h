// What the owner says: that something unsafe is not to be put right, and what the work may cost.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// finding     that was refused; set by the screen; title its words
// ways        how the owner may have said it: called, wrote, stood here
// approvals   title what it covers, detail who, how and when, aside the sum, mark "refused" when it was
class OwnersWord : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString finding READ finding WRITE setFinding NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString owner READ owner NOTIFY changed)
    Q_PROPERTY(QStringList ways READ ways CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* approvals READ approvals CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString finding() const { return finding_; }
    void setFinding(const QString& finding);
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString owner() const { return owner_; }
    [[nodiscard]] QStringList ways() const;
    [[nodiscard]] LineModel* approvals() { return &approvals_; }

    // The form's values: by, way (index of ways), note.
    Q_INVOKABLE void refuse(undercowl::ui::FormDraft* draft);
    // The form's values: what, by, way, sum, currency; 'given' false: the owner does not want it.
    Q_INVOKABLE void approve(undercowl::ui::FormDraft* draft, bool given);

signals:
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    void say(journal::Draft draft, FormDraft* form, const QString& undoText);

    QString finding_, title_, owner_;
    LineModel approvals_;
};

} // namespace undercowl::ui
