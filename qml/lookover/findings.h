// What was found on the machine.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

#include <set>

namespace undercowl::ui {

// open, settled: title what was found, detail what to do or how it was settled, more that the owner refused
// it, mark severity, picture its first photo; worst first.
class Findings : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* open READ open CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* settled READ settled CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* open() { return &open_; }
    [[nodiscard]] LineModel* settled() { return &settled_; }

    // The form's values: id (empty for a new finding), text, severity (a code), toDo. The finding's id comes
    // back with noted(), after the sync.
    Q_INVOKABLE void note(undercowl::ui::FormDraft* draft) { noteFor(draft, {}, {}); }
    // The same, and with it the answer to that check of a round.
    Q_INVOKABLE void noteFor(undercowl::ui::FormDraft* draft, const QString& round, const QString& check);
    // A task with the finding's remedy as its title, to be planned and timed.
    Q_INVOKABLE void makeTask(const QString& finding);
    // False where it has to be asked first, by SettleView: an unsafe one, or one whose part is not fitted.
    Q_INVOKABLE bool settle(const QString& finding, const QString& how);
    Q_INVOKABLE void reopen(const QString& finding); // it was not settled after all
    // text, severity and toDo of a finding, for a form that corrects it.
    Q_INVOKABLE QVariantMap known(const QString& finding) const;

signals:
    void noted(const QString& finding);

protected:
    void show(const Snapshot& snapshot) override;

private:
    LineModel open_, settled_;
    std::set<Id> beingPlanned_; // tasks that are said and not saved yet
};

} // namespace undercowl::ui
