// Work that goes from one thread to another. Every screen model and every device hands work over by these
// three, so that there is one place to look at when threads are in question.
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
#endif

namespace undercowl::platform {

// The work itself. Qt's queue sees to it that what its giver wrote before is seen by it; the thread sanitizer
// cannot look into Qt's library, so where it watches the same is said once more in code that it sees.
#ifdef UNDERCOWL_THREADS_WATCHED
template<typename Work>
struct Sealed {
    Work work;
    std::atomic<bool> seal{false};

    void open() {
        (void)seal.load(std::memory_order_acquire);
        work();
    }
};

// Only the way to it lies in Qt's queue. Work that is never called is not freed in such a build.
template<typename Work>
struct Handed {
    Sealed<Work>* sealed;

    __attribute__((no_sanitize("thread"))) void operator()() const {
        Sealed<Work>* mine = sealed;
        mine->open();
        delete mine;
    }
};

template<typename Work>
[[nodiscard]] Handed<Work> handed(Work work) {
    auto* sealed = new Sealed<Work>{std::move(work)};
    sealed->seal.store(true, std::memory_order_release);
    return {sealed};
}
#else
template<typename Work>
[[nodiscard]] Work handed(Work work) {
    return work;
}
#endif

// Runs work() on the thread that 'there' lives on, after all that was given to it before; not at all if
// 'there' is gone.
template<typename Work>
void across(QObject* there, Work work) {
    QMetaObject::invokeMethod(there, handed(std::move(work)), Qt::QueuedConnection);
}

// Runs work() on the touch thread. By way of the application: only there may be asked whether a view or
// a device still lives (QPointer).
template<typename Work>
void toTouch(Work work) {
    across(QCoreApplication::instance(), std::move(work));
}

// Runs work() beside the touch thread: disks, decoding, whatever may take long.
template<typename Work>
void offTouch(Work work) {
    QThreadPool::globalInstance()->start(handed(std::move(work)));
}

} // namespace undercowl::platform
