// Taking a machine in: what was entered in the form becomes a machine, an owner and a job.
#pragma once

#include "core/journal/say.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// The form's values, all text: make, model, year, frame, notes; odometer, odometerUnit; owner, phone, mail,
// address; reason, works, worksNot, received; altitude, altitudeUnit, load, rider, luggage (kg).
class TakeIn : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::ui::FormDraft* draft MEMBER draft_ REQUIRED)
    Q_PROPERTY(bool editing MEMBER editing_)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(QVariantMap errors READ errors NOTIFY errorsChanged)
    Q_PROPERTY(undercowl::ui::LineModel* returns READ returns CONSTANT)

public:
    explicit TakeIn(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] const QVariantMap& errors() const { return errors_; } // field to words with the remedy
    [[nodiscard]] LineModel* returns() { return &returns_; }

    // What the open job says already, for a form that corrects it; empty while no job is open.
    Q_INVOKABLE QVariantMap known() const;
    // What the digits and letters of a frame number tell of themselves; empty while nothing is typed. Only a
    // hint: a number that is wrong by its check digit may be right, and the other way round.
    Q_INVOKABLE QString frameHint(const QString& number) const;
    // Jobs of a machine with that frame number, into 'returns': title the job, detail machine and owner, more
    // why it was here, on: it comes back from that one.
    Q_INVOKABLE void lookForReturn(const QString& frame);
    Q_INVOKABLE void comesBackFrom(const QString& job); // one of them
    // Says it, as a new job or as a correction of the open one. Errors name the field; nothing entered is
    // lost.
    Q_INVOKABLE void save();

signals:
    void busyChanged();
    void errorsChanged();
    void saved(const QString& jobId); // the sync has returned

private:
    struct Entered;
    [[nodiscard]] bool read(Entered& entered);
    void finish(const Entries& said, const QString& jobId);

    ShopSession* session_{};
    FormDraft* draft_{};
    bool editing_{};
    bool busy_{};
    QVariantMap errors_;
    LineModel returns_;
    QVariantMap known_; // of those jobs, for the form
};

} // namespace undercowl::ui
