// The page of one job: after weeks away it answers at once where it stopped and what is next.
#pragma once

#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// photos: newest first, at most 12: title what it shows, aside when, picture.
// tasks: title, detail what it waits for or its time, mark "waiting" or "running", on: finished.
// bans: what the machine must not do yet, in words; afterwards: how much is open after refitting.
// bags: what lies in bags that are not refitted yet: title bag, detail content, more step.
// parts: those still to come: title, aside state;  came: those that are here and not fitted, in words.
class JobView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString number READ number NOTIFY changed)
    Q_PROPERTY(QString machine READ machine NOTIFY changed)
    Q_PROPERTY(QString frameNumber READ frameNumber NOTIFY changed)
    Q_PROPERTY(QString owner READ owner NOTIFY changed)
    Q_PROPERTY(QString reason READ reason NOTIFY changed)
    Q_PROPERTY(QString cameBackFrom READ cameBackFrom NOTIFY changed)
    Q_PROPERTY(QString stopped READ stopped NOTIFY changed)
    Q_PROPERTY(QString next READ next NOTIFY changed)
    Q_PROPERTY(QString since READ since NOTIFY changed)
    Q_PROPERTY(QString moment READ moment NOTIFY changed)
    Q_PROPERTY(QString unsafe READ unsafe NOTIFY changed)
    Q_PROPERTY(QStringList bans READ bans NOTIFY changed)
    Q_PROPERTY(int afterwards READ afterwards NOTIFY changed)
    Q_PROPERTY(int openFindings READ openFindings NOTIFY changed)
    Q_PROPERTY(int checksToGo READ checksToGo NOTIFY changed)
    Q_PROPERTY(int steps READ steps NOTIFY changed)
    Q_PROPERTY(int stepsToRefit READ stepsToRefit NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* photos READ photos CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* tasks READ tasks CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* bags READ bags CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* parts READ parts CONSTANT)
    Q_PROPERTY(QString came READ came NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString number() const { return number_; }
    [[nodiscard]] QString machine() const { return machine_; } // "Marrowin Tern 125, 1987"
    [[nodiscard]] QString frameNumber() const { return frameNumber_; }
    [[nodiscard]] QString owner() const { return owner_; }
    [[nodiscard]] QString reason() const { return reason_; }
    [[nodiscard]] QString cameBackFrom() const { return cameBackFrom_; } // the id of that job; empty: none
    [[nodiscard]] QString stopped() const { return stopped_; }
    [[nodiscard]] QString next() const { return next_; }
    [[nodiscard]] QString since() const { return since_; }   // when it was last worked on, and by whom
    [[nodiscard]] QString moment() const { return moment_; } // job::code(Moment)
    [[nodiscard]] QString unsafe() const { return unsafe_; } // the first open unsafe finding; empty: none
    [[nodiscard]] QStringList bans() const { return bans_; }
    [[nodiscard]] int afterwards() const { return afterwards_; }
    [[nodiscard]] int openFindings() const { return openFindings_; }
    [[nodiscard]] int checksToGo() const { return checksToGo_; } // of rounds that were begun
    [[nodiscard]] int steps() const { return steps_; }
    [[nodiscard]] int stepsToRefit() const { return stepsToRefit_; }
    [[nodiscard]] LineModel* photos() { return &photos_; }
    [[nodiscard]] LineModel* tasks() { return &tasks_; }
    [[nodiscard]] LineModel* bags() { return &bags_; }
    [[nodiscard]] LineModel* parts() { return &parts_; }
    [[nodiscard]] QString came() const { return came_; }

    Q_INVOKABLE void nameTask(const QString& title);

signals:
    void taskSaid(); // a task was named

protected:
    void show(const Snapshot& snapshot) override;

private:
    void sayTask(journal::Draft draft, const QString& undoText);

    QString number_, machine_, frameNumber_, owner_, reason_, stopped_, next_, since_, moment_, unsafe_,
        cameBackFrom_;
    QStringList bans_;
    int afterwards_{};
    int openFindings_{};
    int checksToGo_{};
    int steps_{};
    int stepsToRefit_{};
    QString came_;
    LineModel photos_, tasks_, bags_, parts_;
};

} // namespace undercowl::ui
