// The device's microphone, on machines with one and without.
#include "platform/listener/devicelistener.h"

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTest>

using undercowl::platform::DeviceListener;
using State = undercowl::platform::Listener::State;

class ListenerTest : public QObject {
    Q_OBJECT

private slots:
    void nothingIsOpenedBeforeItIsPressed() {
        QElapsedTimer timer;
        timer.start();
        DeviceListener listener;
        QVERIFY(timer.elapsed() < 50);
        QCOMPARE(listener.state(), State::Idle);
        listener.stop(); // nothing to hear
        QCOMPARE(listener.state(), State::Idle);
    }

    void pressingListensOrSaysWhyNot() {
        DeviceListener listener;
        const QSignalSpy heard(&listener, &DeviceListener::heard);
        listener.start();
        if (listener.state() == State::NoMicrophone) {
            QVERIFY(!listener.problem().isEmpty());
            return;
        }
        QCOMPARE(listener.state(), State::Listening);
        QTest::qWait(300);
        listener.stop();
        // The touch thread goes on while it is heard.
        QTRY_COMPARE_WITH_TIMEOUT(heard.size(), 1, 10000);
        QCOMPARE(listener.state(), State::Idle);
    }
};

QTEST_GUILESS_MAIN(ListenerTest)
#include "listener_test.moc"
