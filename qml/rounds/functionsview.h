// What works when the machine comes in: tried one after the other.
#pragma once

#include "qml/rounds/checkwalk.h"

namespace undercowl::ui {

class FunctionsView : public undercowl::ui::CheckWalk {
    Q_OBJECT
    QML_ELEMENT
    // Tried again before the machine leaves: what worked when it came in stands beside.
    Q_PROPERTY(bool after MEMBER after_)

public:
    using CheckWalk::CheckWalk;

    void componentComplete() override; // asks the store for the list

    // 0 works, 1 does not, 2 not tried; the remark may be empty.
    Q_INVOKABLE void answer(int index, const QString& remark);

signals:
    void saidSo(); // the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    bool after_{};
};

} // namespace undercowl::ui
