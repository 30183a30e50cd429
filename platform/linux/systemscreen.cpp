#include "platform/linux/systemscreen.h"

#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QPointer>
#include <QVariantMap>

namespace undercowl::platform {

namespace {

const QString saver = QStringLiteral("org.freedesktop.ScreenSaver");
const QString saverPath = QStringLiteral("/org/freedesktop/ScreenSaver");
const QString portal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString portalPath = QStringLiteral("/org/freedesktop/portal/desktop");
constexpr uint idle = 8; // of the portal's flags: the session is not idle

// There is no bus to start where none is named: asking for one would wait for a program that is not there.
QDBusConnection sessionBus() {
    const QByteArray run = qgetenv("XDG_RUNTIME_DIR");
    if (qEnvironmentVariableIsEmpty("DBUS_SESSION_BUS_ADDRESS") && run.isEmpty())
        return QDBusConnection(QStringLiteral("none"));
    return QDBusConnection::sessionBus();
}

QDBusMessage giveBack(uint cookie) {
    auto call = QDBusMessage::createMethodCall(saver, saverPath, saver, QStringLiteral("UnInhibit"));
    call << cookie;
    return call;
}

QDBusMessage closing(const QString& request) {
    return QDBusMessage::createMethodCall(portal, request, QStringLiteral("org.freedesktop.portal.Request"),
                                          QStringLiteral("Close"));
}

} // namespace

SystemScreen::SystemScreen(QObject* parent) : Screen(parent), bus_(sessionBus()) {}

SystemScreen::~SystemScreen() {
    release();
}

void SystemScreen::keep(bool awake) {
    ++asked_;
    release();
    if (!awake) {
        tell({});
        return;
    }
    if (!bus_.isConnected()) {
        tell(tr("This session has no message bus, so the screen may go out. Set the system to leave it on."));
        return;
    }
    askSaver();
}

void SystemScreen::askSaver() {
    auto call = QDBusMessage::createMethodCall(saver, saverPath, saver, QStringLiteral("Inhibit"));
    call << QStringLiteral("org.undercowl.Undercowl") << tr("A job is open at the lift");
    // The answer may come when nobody is left who wanted it: what it grants is given back all the same.
    auto* watcher = new QDBusPendingCallWatcher(bus_.asyncCall(call));
    connect(watcher, &QDBusPendingCallWatcher::finished, watcher,
            [self = QPointer(this), bus = bus_, call = asked_](QDBusPendingCallWatcher* done) {
                done->deleteLater();
                const QDBusPendingReply<uint> answer = *done;
                if (answer.isError()) {
                    if (self != nullptr && call == self->asked_)
                        self->askPortal(answer.error().message());
                } else if (self == nullptr || call != self->asked_) {
                    bus.send(giveBack(answer.value()));
                } else {
                    self->cookie_ = answer.value();
                    self->tell({});
                }
            });
}

void SystemScreen::askPortal(const QString& refusal) {
    auto call = QDBusMessage::createMethodCall(
        portal, portalPath, QStringLiteral("org.freedesktop.portal.Inhibit"), QStringLiteral("Inhibit"));
    call << QString() << idle << QVariantMap{{QStringLiteral("reason"), tr("A job is open at the lift")}};
    auto* watcher = new QDBusPendingCallWatcher(bus_.asyncCall(call));
    connect(watcher, &QDBusPendingCallWatcher::finished, watcher,
            [self = QPointer(this), bus = bus_, call = asked_, refusal](QDBusPendingCallWatcher* done) {
                done->deleteLater();
                const QDBusPendingReply<QDBusObjectPath> answer = *done;
                const bool wanted = self != nullptr && call == self->asked_;
                if (answer.isError()) {
                    if (wanted)
                        self->tell(
                            tr("The system does not let the screen be kept on (%1). Set it there to stay on.")
                                .arg(refusal));
                } else if (wanted) {
                    self->request_ = answer.value().path();
                    self->tell({});
                } else {
                    bus.send(closing(answer.value().path()));
                }
            });
}

void SystemScreen::release() {
    if (cookie_) {
        bus_.send(giveBack(*cookie_));
        cookie_.reset();
    }
    if (!request_.isEmpty()) {
        bus_.send(closing(request_));
        request_.clear();
    }
}

} // namespace undercowl::platform
