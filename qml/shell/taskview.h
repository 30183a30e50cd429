// One task: its watch, what it waits for, what has to be finished before it.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// task       whose screen this is; set by the screen
// state      "open", "waiting", "finished"
// running    its watch runs; spent: "1 h 20 min"; forgotten: the watch has run too long to be true
// others     the other tasks: title, mark "closes" when it would close a circle, on: it has to be finished
// first
class TaskView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString task READ task WRITE setTask NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString state READ state NOTIFY changed)
    Q_PROPERTY(QString waitingFor READ waitingFor NOTIFY changed)
    Q_PROPERTY(bool running READ running NOTIFY changed)
    Q_PROPERTY(bool forgotten READ forgotten NOTIFY changed)
    Q_PROPERTY(QString spent READ spent NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* others READ others CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString task() const { return task_; }
    void setTask(const QString& task);
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString state() const { return state_; }
    [[nodiscard]] QString waitingFor() const { return waitingFor_; }
    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] bool forgotten() const { return forgotten_; }
    [[nodiscard]] QString spent() const { return spent_; }
    [[nodiscard]] LineModel* others() { return &others_; }

    Q_INVOKABLE void startOrStop(); // one touch
    // How long it really was, in minutes, for the watch that was forgotten. errors.minutes when it is no
    // number.
    Q_INVOKABLE void correct(const QString& minutes);
    // The form's values: waitingFor, heldBy ("owner", "parts", "outside"; empty: not said). errors.waitingFor
    // when it is empty.
    Q_INVOKABLE void hold(undercowl::ui::FormDraft* draft);
    Q_INVOKABLE void resume();
    Q_INVOKABLE void finish();
    // Whether 'other' has to be finished first: said again it is taken back. errors.after for a circle.
    Q_INVOKABLE void comesAfter(const QString& other);

protected:
    void show(const Snapshot& snapshot) override;

private:
    void say(journal::Draft draft, const QString& undoText);
    [[nodiscard]] const job::Task* found(const Snapshot& snapshot) const;

    QString task_, title_, state_, waitingFor_, spent_;
    Id span_; // the last of the task
    bool running_{};
    bool forgotten_{};
    LineModel others_;
};

} // namespace undercowl::ui
