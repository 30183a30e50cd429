// The guided set of photos as found: each view is photographed or passed over.
#pragma once

#include "qml/rounds/checkwalk.h"

#include <set>

namespace undercowl::ui {

class ViewsView : public undercowl::ui::CheckWalk {
    Q_OBJECT
    QML_ELEMENT

public:
    using CheckWalk::CheckWalk;

    void componentComplete() override; // asks the store for the list

    Q_INVOKABLE void skip(); // for as long as the page is open; nothing is said

protected:
    void show(const Snapshot& snapshot) override;

private:
    std::set<QString> skipped_;
};

} // namespace undercowl::ui
