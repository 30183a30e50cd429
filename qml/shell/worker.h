// One thread that owns the store. Work is done in the order in which it was given; the touch thread never
// waits.
#pragma once

#include "qml/shell/shopstore.h"

#include <QObject>
#include <QThread>

#include <functional>
#include <memory>

namespace undercowl::ui {

class Worker {
public:
    Worker();
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;
    ~Worker(); // finishes everything that was given, then ends the thread

    // The store; null until it has been opened. Only to be touched from inside work.
    using Work = std::function<void(std::unique_ptr<ShopStore>& store)>;
    void give(Work work);

private:
    struct Desk;
    QThread thread_;
    Desk* desk_{}; // lives on the thread
};

} // namespace undercowl::ui
