// A round on the open job, one check after the other.
#pragma once

#include "qml/rounds/checkwalk.h"

namespace undercowl::ui {

class RoundView : public undercowl::ui::CheckWalk {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString round MEMBER round_ REQUIRED)
    Q_PROPERTY(QString title READ title NOTIFY changed)

public:
    using CheckWalk::CheckWalk;

    [[nodiscard]] QString title() const { return title_; }

    Q_INVOKABLE void fine();
    Q_INVOKABLE void notDone();

protected:
    void show(const Snapshot& snapshot) override;

private:
    void answer(job::CheckAnswer answer, const QString& undoText);

    QString round_;
    QString title_;
};

} // namespace undercowl::ui
