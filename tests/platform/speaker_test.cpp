// The device's voice, on machines with a sound card and without.
#include "platform/speaker/devicespeaker.h"

#include <QElapsedTimer>
#include <QTest>

using undercowl::platform::DeviceSpeaker;

class SpeakerTest : public QObject {
    Q_OBJECT

private slots:
    void nothingIsLoadedBeforeTheFirstSentence() {
        QElapsedTimer timer;
        timer.start();
        DeviceSpeaker speaker;
        QVERIFY(timer.elapsed() < 50);
        QVERIFY(!speaker.speaking());
        QVERIFY(speaker.problem().isEmpty());
        speaker.stop(); // with nothing open
    }

    void itSpeaksOrSaysWhyNot() {
        DeviceSpeaker speaker;
        QElapsedTimer timer;
        timer.start();
        speaker.say(QStringLiteral("place three, green with white tracer"), 0.3);
        QVERIFY(timer.elapsed() < 3000);
        QTRY_VERIFY(speaker.speaking() || !speaker.problem().isEmpty());
        speaker.say(QStringLiteral("green with white tracer"), 2); // slower than there is
        speaker.stop();
        QTRY_VERIFY(!speaker.speaking());
    }
};

QTEST_GUILESS_MAIN(SpeakerTest)
#include "speaker_test.moc"
