// The home screen: the machines in the shop, each with where it stopped and what is next; entries to
// continue.
#pragma once

#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// jobs: title machine, detail where it stopped, more what is next or what it waits for, aside when, mark
// "unsafe" or "waiting", group what those from here on wait for.
// drafts: id form, title, detail machine, aside when.
// Reads the list again whenever something was said, while 'active'.
class ShopHome : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY activeChanged)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* jobs READ jobs CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* done READ done CONSTANT)
    Q_PROPERTY(bool moreDone READ moreDone NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* drafts READ drafts CONSTANT)
    Q_PROPERTY(QString lastJobId READ lastJobId NOTIFY changed)
    Q_PROPERTY(QString lastMachine READ lastMachine NOTIFY changed)

public:
    explicit ShopHome(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] bool active() const { return active_; }
    void setActive(bool active);
    [[nodiscard]] bool ready() const { return ready_; }       // the list has been read once
    [[nodiscard]] LineModel* jobs() { return &jobs_; }        // without those handed over
    [[nodiscard]] LineModel* done() { return &done_; }        // handed over, the last ones
    [[nodiscard]] bool moreDone() const { return moreDone_; } // there may be older ones
    [[nodiscard]] LineModel* drafts() { return &drafts_; }
    [[nodiscard]] QString lastJobId() const; // of the machine last worked on, empty if the shop is
    [[nodiscard]] QString lastMachine() const;

    Q_INVOKABLE QString draftJob(const QString& form) const;
    Q_INVOKABLE QVariantMap draftPage(const QString& form) const; // see draftpages.h
    Q_INVOKABLE void discardDraft(const QString& form);

signals:
    void activeChanged();
    void changed();

private:
    void refresh();
    void showDrafts();
    void show(const std::vector<store::JobLine>& read);

    ShopSession* session_{};
    QString lastJobId_;
    LineModel jobs_;
    LineModel done_;
    LineModel drafts_;
    bool active_{true};
    bool ready_{};
    bool moreDone_{};
    bool stale_{};
};

} // namespace undercowl::ui
