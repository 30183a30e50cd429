// Everything as spreadsheets, and machines and parts from one, with a look at each line before it is brought
// in.
#pragma once

#include "core/journal/sheet.h"
#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// lines: of the file that is looked at: title the line's number and what it would do, detail what is wrong,
// mark "wrong" or "passed".
class SheetsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)
    Q_PROPERTY(QString folder READ folder NOTIFY changed)
    Q_PROPERTY(QStringList files READ files NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString unknown READ unknown NOTIFY changed)
    Q_PROPERTY(int ready READ ready NOTIFY changed)
    Q_PROPERTY(int broughtIn READ broughtIn NOTIFY changed)

public:
    explicit SheetsView(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] LineModel* lines() { return &lines_; }
    [[nodiscard]] QString folder() const;
    [[nodiscard]] const QStringList& files() const { return files_; } // that were written
    [[nodiscard]] const QString& error() const { return error_; }
    [[nodiscard]] const QString& unknown() const { return unknown_; } // columns that are not brought in
    [[nodiscard]] int ready() const { return ready_; }                // lines that can be brought in
    [[nodiscard]] int broughtIn() const { return broughtIn_; }

    Q_INVOKABLE void write();                   // everything, into the folder
    Q_INVOKABLE void look(const QString& file); // nothing is said yet
    Q_INVOKABLE void forget();                  // what was looked at
    Q_INVOKABLE void bringIn();                 // the lines that nothing is wrong with

signals:
    void changed();

private:
    void show(const journal::SheetPlan& plan);

    ShopSession* session_{};
    LineModel lines_;
    QStringList files_;
    QString error_, unknown_;
    std::vector<journal::Draft> drafts_;
    int ready_{};
    int broughtIn_{};
    bool busy_{};
};

} // namespace undercowl::ui
