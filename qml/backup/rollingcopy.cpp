#include "qml/backup/rollingcopy.h"

#include "core/store/backup.h"
#include "platform/threads/across.h"

#include <QCoreApplication>
#include <QPointer>
#include <QTimer>

namespace undercowl::ui {

namespace {

constexpr int hourMs = 3'600'000;

void copyIfDue(ShopSession& session) {
    if (session.state() != ShopSession::State::Ready || session.readOnly())
        return;
    const QPointer alive(&session);
    platform::offTouch([alive, folder = session.folder(), now = session.now()] {
        if (!store::backupIsDue(folder, now))
            return;
        // A store of its own: the mechanic's never waits for the copy.
        auto made = store::Store::open(folder).and_then(
            [](const store::Store& store) { return store::backUpDatabase(store); });
        if (made)
            return;
        platform::toTouch([alive, problem = made.error()] {
            if (alive != nullptr)
                alive->tell(QCoreApplication::translate("RollingCopy",
                                                        "The daily copy of the shop could not be made; "
                                                        "what you enter is still kept. %1")
                                .arg(QString::fromStdString(problem.message)));
        });
    });
}

} // namespace

void keepRollingCopies(ShopSession& session, int firstAfterMs) {
    auto* hourly = new QTimer(&session);
    hourly->setInterval(firstAfterMs);
    QObject::connect(hourly, &QTimer::timeout, &session, [hourly, &session] {
        hourly->setInterval(hourMs);
        copyIfDue(session);
    });
    hourly->start();
}

} // namespace undercowl::ui
