// The rounds that were begun on the open job, and beginning one by what the machine has.
#pragma once

#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// begun: title, detail how far it is and what came of it, on: every check has its answer.
class RoundsView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* begun READ begun CONSTANT)
    Q_PROPERTY(QString unfinished READ unfinished NOTIFY begunChanged)
    Q_PROPERTY(QString unfinishedToGo READ unfinishedToGo NOTIFY begunChanged)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* begun() { return &begun_; }
    [[nodiscard]] QString unfinished() const { return unfinished_; } // the last such round; empty: none
    [[nodiscard]] QString unfinishedToGo() const { return unfinishedToGo_; } // "40 of 50 to go"

    // The traits are those of journal::traits(). Refused, with the remedy, when no list fits.
    Q_INVOKABLE void begin(const QStringList& traits);

signals:
    void begunChanged();
    void roundBegun(const QString& round); // the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    LineModel begun_;
    QString unfinished_, unfinishedToGo_;
    bool beginning_{};
};

} // namespace undercowl::ui
