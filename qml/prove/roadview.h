// The road test, and what is to be looked at again after so many kilometres or days.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// tests: title distance, detail note.  rechecks: title what, detail when it is due, on: seen to, mark "due"
// when it is late. The forms' values: distance, unit ("km", "mi"), note; what, after (km), days.
class RoadView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* tests READ tests CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* rechecks READ rechecks CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* tests() { return &tests_; }
    [[nodiscard]] LineModel* rechecks() { return &rechecks_; }

    Q_INVOKABLE void keepTest(undercowl::ui::FormDraft* draft);
    Q_INVOKABLE void keepRecheck(undercowl::ui::FormDraft* draft);
    Q_INVOKABLE void seen(const QString& recheck);

protected:
    void show(const Snapshot& snapshot) override;

private:
    void say(journal::Draft entry, const QString& undoText, FormDraft* draft);

    LineModel tests_, rechecks_;
};

} // namespace undercowl::ui
