// Work that goes from one thread to another. Every screen model hands work over by these three, so that there
// is one place to look at when threads are in question.
#pragma once

#include <QCoreApplication>
#include <QMetaObject>
#include <QThreadPool>

#include <utility>

#if defined(__has_feature)
#if __has_feature(thread_sanitizer)
#define UNDERCOWL_THREADS_WATCHED
#endif
#endif
#ifdef UNDERCOWL_THREADS_WATCHED
#include <atomic>
#include <memory>
#endif

namespace undercowl::ui {

// The work itself. Qt's queue sees to it that what its giver wrote before is seen by it; the thread sanitizer
// cannot look into Qt's library, so where it watches the same is said once more in code that it sees.
template<typename Work>
[[nodiscard]] auto handed(Work work) {
#ifdef UNDERCOWL_THREADS_WATCHED
    auto seal = std::make_shared<std::atomic<bool>>(false);
    auto opened = [seal, work = std::move(work)]() mutable {
        (void)seal->load(std::memory_order_acquire);
        work();
    };
    seal->store(true, std::memory_order_release);
    return opened;
#else
    return work;
#endif
}

// Runs work() on the thread that 'there' lives on, after all that was given to it before; not at all if
// 'there' is gone.
template<typename Work>
void across(QObject* there, Work work) {
    QMetaObject::invokeMethod(there, handed(std::move(work)), Qt::QueuedConnection);
}

// Runs work() on the touch thread. By way of the application: only there may be asked whether a view still
// lives (QPointer).
template<typename Work>
void toTouch(Work work) {
    across(QCoreApplication::instance(), std::move(work));
}

// Runs work() beside the touch thread: disks, decoding, whatever may take long.
template<typename Work>
void offTouch(Work work) {
    QThreadPool::globalInstance()->start(handed(std::move(work)));
}

} // namespace undercowl::ui
