// What every view model of a screen about the open job shares: the session, and being told of each new
// snapshot.
#pragma once

#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

class JobScreen : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ANONYMOUS
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session READ session WRITE setSession NOTIFY changed REQUIRED)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(QVariantMap errors READ errors NOTIFY errorsChanged)

public:
    explicit JobScreen(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override; // shows the snapshot that is there

    [[nodiscard]] ShopSession* session() const { return session_; }
    void setSession(ShopSession* session);                             // once
    [[nodiscard]] bool ready() const { return snapshot() != nullptr; } // the job has been read
    // What is wrong with what was entered: field to words with the remedy.
    [[nodiscard]] const QVariantMap& errors() const { return errors_; }

signals:
    void changed(); // everything that the screen shows of the job
    void errorsChanged();

protected:
    [[nodiscard]] SnapshotPtr snapshot() const {
        return session_ == nullptr ? nullptr : session_->snapshot();
    }
    [[nodiscard]] Id jobId() const;                  // empty while no job is open
    virtual void show(const Snapshot& snapshot) = 0; // before changed()
    void setErrors(const QVariantMap& errors);

private:
    void showSnapshot();

    ShopSession* session_{};
    QVariantMap errors_;
};

} // namespace undercowl::ui
