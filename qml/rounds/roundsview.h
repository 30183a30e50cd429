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

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* begun() { return &begun_; }

    // The traits are those of journal::traits(). Refused, with the remedy, when no list fits.
    Q_INVOKABLE void begin(const QStringList& traits);

signals:
    void roundBegun(const QString& round); // the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    LineModel begun_;
    bool beginning_{};
};

} // namespace undercowl::ui
