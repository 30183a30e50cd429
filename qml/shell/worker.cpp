#include "qml/shell/worker.h"

#include <utility>

namespace undercowl::ui {

struct Worker::Desk : QObject {
    std::unique_ptr<ShopStore> store;
};

Worker::Worker() : desk_(new Desk) {
    thread_.setObjectName(QStringLiteral("shop store"));
    desk_->moveToThread(&thread_);
    thread_.start();
}

Worker::~Worker() {
    // Queued behind all work given before: the store closes and the thread ends after the last of it.
    QMetaObject::invokeMethod(
        desk_,
        [this] {
            delete desk_;
            thread_.quit();
        },
        Qt::QueuedConnection);
    thread_.wait();
}

void Worker::give(Work work) {
    QMetaObject::invokeMethod(
        desk_, [desk = desk_, work = std::move(work)] { work(desk->store); }, Qt::QueuedConnection);
}

} // namespace undercowl::ui
