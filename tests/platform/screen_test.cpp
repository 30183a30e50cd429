// The screen is kept on through a message bus of its own, on which the test answers in the place of the
// system.
#include "platform/screen/devicescreen.h"

#include <QDBusConnection>
#include <QDBusObjectPath>
#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QVariantMap>

using undercowl::platform::DeviceScreen;

namespace {

class Saver : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")

public:
    using QObject::QObject;
    QStringList told;
    QList<uint> held;

public slots:
    uint Inhibit(const QString& who, const QString& why) {
        told += who + u'|' + why;
        held += next_;
        return next_++;
    }
    void UnInhibit(uint cookie) { held.removeAll(cookie); }

private:
    uint next_{41};
};

class Portal : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Inhibit")

public:
    using QObject::QObject;
    QList<uint> flags;
    QString reason;

public slots:
    QDBusObjectPath Inhibit(const QString& /*window*/, uint wanted, const QVariantMap& options) {
        flags += wanted;
        reason = options.value(QStringLiteral("reason")).toString();
        return QDBusObjectPath(QStringLiteral("/org/freedesktop/portal/desktop/request/1"));
    }
};

class Request : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Request")

public:
    using QObject::QObject;
    int closed{};

public slots:
    void Close() { ++closed; }
};

} // namespace

class ScreenTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        qunsetenv("DBUS_SESSION_BUS_ADDRESS");
        qunsetenv("XDG_RUNTIME_DIR");
    }

    // First: a process finds its bus once.
    void withoutABusItSaysSo() {
        DeviceScreen screen;
        screen.setAwake(false);
        QVERIFY(screen.problem().isEmpty());
        screen.setAwake(true);
        QVERIFY(screen.awake());
        QVERIFY2(screen.problem().contains(QStringLiteral("message bus")), qPrintable(screen.problem()));
        screen.setAwake(false);
        QVERIFY(screen.problem().isEmpty());
    }

    void theScreenSaverWaitsWhileItIsWanted() {
        QVERIFY(begin());
        Saver saver;
        auto answers = answering(QStringLiteral("saver"));
        QVERIFY(answers.registerObject(QStringLiteral("/org/freedesktop/ScreenSaver"), &saver,
                                       QDBusConnection::ExportAllSlots));
        QVERIFY(answers.registerService(QStringLiteral("org.freedesktop.ScreenSaver")));
        DeviceScreen screen;
        screen.setAwake(true);
        QTRY_COMPARE(saver.held, QList<uint>{41});
        QVERIFY2(saver.told[0].startsWith(QStringLiteral("org.undercowl.Undercowl|")),
                 qPrintable(saver.told[0]));
        screen.setAwake(true); // no second wish
        screen.setAwake(false);
        QTRY_VERIFY(saver.held.isEmpty());
        QCOMPARE(saver.told.size(), 1);
        QVERIFY(screen.problem().isEmpty());
        // On and off before the system has answered: nothing is left behind.
        screen.setAwake(true);
        screen.setAwake(false);
        QTRY_COMPARE(saver.told.size(), 2);
        QTRY_VERIFY(saver.held.isEmpty());
        // Nor when nobody is left once it answers.
        {
            DeviceScreen gone;
            gone.setAwake(true);
        }
        QTRY_COMPARE(saver.told.size(), 3);
        QTRY_VERIFY(saver.held.isEmpty());
        // Nor when the program ends.
        {
            DeviceScreen other;
            other.setAwake(true);
            QTRY_COMPARE(saver.held.size(), 1);
        }
        QTRY_VERIFY(saver.held.isEmpty());
        QVERIFY(answers.unregisterService(QStringLiteral("org.freedesktop.ScreenSaver")));
    }

    void thePortalIsAskedWhereNoSaverAnswers() {
        QVERIFY(begin());
        Portal portal;
        Request request;
        auto answers = answering(QStringLiteral("portal"));
        QVERIFY(answers.registerObject(QStringLiteral("/org/freedesktop/portal/desktop"), &portal,
                                       QDBusConnection::ExportAllSlots));
        QVERIFY(answers.registerObject(QStringLiteral("/org/freedesktop/portal/desktop/request/1"), &request,
                                       QDBusConnection::ExportAllSlots));
        QVERIFY(answers.registerService(QStringLiteral("org.freedesktop.portal.Desktop")));
        DeviceScreen screen;
        screen.setAwake(true);
        QTRY_COMPARE(portal.flags, QList<uint>{8}); // idle
        QVERIFY(!portal.reason.isEmpty());
        QTest::qWait(100); // its answer
        screen.setAwake(false);
        QTRY_COMPARE(request.closed, 1);
        QVERIFY(answers.unregisterService(QStringLiteral("org.freedesktop.portal.Desktop")));
    }

    void whereNobodyAnswersItSaysSo() {
        QVERIFY(begin());
        DeviceScreen screen;
        screen.setAwake(true);
        QTRY_VERIFY2(screen.problem().contains(QStringLiteral("stay on")), qPrintable(screen.problem()));
        screen.setAwake(false);
        QVERIFY(screen.problem().isEmpty());
    }

    void cleanupTestCase() {
        if (bus_.state() == QProcess::NotRunning)
            return;
        bus_.terminate();
        bus_.waitForFinished();
    }

private:
    // A bus of this test; true once it answers.
    bool begin() {
        if (bus_.state() == QProcess::Running)
            return true;
        const QString daemon = QStandardPaths::findExecutable(QStringLiteral("dbus-daemon"));
        if (daemon.isEmpty())
            return false;
        // Without the services of this machine: nobody is started to answer.
        QFile config(dir_.filePath(QStringLiteral("bus.conf")));
        if (!config.open(QIODevice::WriteOnly))
            return false;
        config.write("<busconfig><type>session</type><listen>unix:path=" +
                     dir_.filePath(QStringLiteral("bus")).toUtf8() +
                     "</listen><auth>EXTERNAL</auth><policy context=\"default\"><allow "
                     "send_destination=\"*\" eavesdrop=\"true\"/><allow eavesdrop=\"true\"/>"
                     "<allow own=\"*\"/></policy></busconfig>");
        config.close();
        bus_.start(daemon, {QStringLiteral("--config-file=") + config.fileName(), QStringLiteral("--nofork"),
                            QStringLiteral("--nopidfile"), QStringLiteral("--print-address")});
        if (!bus_.waitForReadyRead(5000))
            return false;
        address_ = QString::fromUtf8(bus_.readLine()).trimmed();
        qputenv("DBUS_SESSION_BUS_ADDRESS", address_.toUtf8());
        return !address_.isEmpty();
    }

    // Whoever answers has a connection of its own, as another program would.
    [[nodiscard]] QDBusConnection answering(const QString& name) const {
        return QDBusConnection::connectToBus(address_, name);
    }

    QTemporaryDir dir_;
    QProcess bus_;
    QString address_;
};

QTEST_GUILESS_MAIN(ScreenTest)
#include "screen_test.moc"
