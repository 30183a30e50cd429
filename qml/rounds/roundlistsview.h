// The shop's lists of checks, and one of them being changed.
#pragma once

#include "core/journal/rounds.h"
#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace undercowl::ui {

// lists: id key, title, detail how many checks, and what it is for.
// checks: of the chosen list: id its place, title, detail group.
class RoundListsView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(QString key MEMBER key_)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* lists READ lists CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* checks READ checks CONSTANT)

public:
    explicit RoundListsView(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override; // asks the store

    [[nodiscard]] QString title() const;
    [[nodiscard]] const QString& error() const { return error_; }
    [[nodiscard]] LineModel* lists() { return &lists_; }
    [[nodiscard]] LineModel* checks() { return &checks_; }

    Q_INVOKABLE QString groupOf(int place) const;
    // In the group of that name, at its end; a new group at the end of the list. Kept at once; undo brings
    // back what was.
    Q_INVOKABLE void add(const QString& group, const QString& check);
    Q_INVOKABLE void change(int place, const QString& check); // empty: taken out of the list

signals:
    void changed();
    void kept();

private:
    void show(std::vector<journal::RoundList> lists);
    void read();
    void keep(const journal::RoundList& list, const QString& undoText);
    [[nodiscard]] const journal::RoundList* chosen() const;

    ShopSession* session_{};
    QString key_;
    QString error_;
    std::vector<journal::RoundList> all_;
    LineModel lists_, checks_;
};

} // namespace undercowl::ui
