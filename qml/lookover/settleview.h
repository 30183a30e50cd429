// Saying that a finding is put right, where that is asked first.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// finding     whose settling it is; set by the screen
// unsafe      it is: what was done has to be said in words
// done        titles of its tasks that are finished
// notFitted   parts of it that are not on the machine, with their state
// asking      it was touched once with parts missing; the next touch settles
class SettleView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString finding READ finding WRITE setFinding NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(bool unsafe READ unsafe NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)
    Q_PROPERTY(QStringList notFitted READ notFitted NOTIFY changed)
    Q_PROPERTY(bool asking READ asking NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] const QString& finding() const { return finding_; }
    void setFinding(const QString& finding);
    [[nodiscard]] const QString& title() const { return title_; }
    [[nodiscard]] bool unsafe() const { return unsafe_; }
    [[nodiscard]] const QString& done() const { return done_; }
    [[nodiscard]] const QStringList& notFitted() const { return notFitted_; }
    [[nodiscard]] bool asking() const { return !notFitted_.isEmpty() && asked_ == notFitted_; }

    // The form's value: how. errors.how where it is unsafe and nothing is said of it; with parts missing the
    // first call only sets 'asking'.
    Q_INVOKABLE void settle(undercowl::ui::FormDraft* draft);

signals:
    void settled(); // the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    QString finding_, title_, done_;
    QStringList notFitted_, asked_;
    bool unsafe_{};
    bool known_{};
};

} // namespace undercowl::ui
