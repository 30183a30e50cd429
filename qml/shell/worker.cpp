#include "qml/shell/worker.h"

#include "platform/threads/across.h"

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
    platform::across(desk_, [this] {
        delete desk_;
        thread_.quit();
    });
    thread_.wait();
}

void Worker::give(Work work) {
    platform::across(desk_, [desk = desk_, work = std::move(work)] { work(desk->store); });
}

} // namespace undercowl::ui
