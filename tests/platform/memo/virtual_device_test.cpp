// Real sound through a real sound server: a synthesised voice is played into a virtual loudspeaker, whose
// other end is the microphone. What the memo holds and what the ear takes is what was said.
#include "platform/ear/ear.h"
#include "platform/listener/devicelistener.h"
#include "platform/memo/devicememo.h"
#include "platform/memo/level.h"
#include "platform/memo/memosound.h"
#include "platform/signals/devicesignaller.h"
#include "platform/voice/voice.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <array>
#include <cstdlib>

using namespace undercowl::platform;

namespace {

// Said with pauses round it, as 16 bit samples.
QString voiceFile(const QString& file, const std::string& words) {
    const std::array sentences{words};
    const auto speech = speak(sentences);
    if (!speech)
        qFatal("%s", speech.error().c_str());
    std::vector<short> samples(static_cast<std::size_t>(speech->rate) / 2, 0);
    samples.insert(samples.end(), speech->samples.begin(), speech->samples.end());
    samples.insert(samples.end(), static_cast<std::size_t>(speech->rate) / 2, 0);
    if (const auto written = writeSound(file.toStdString(), samples, speech->rate); !written)
        qFatal("%s", written.error().c_str());
    return file;
}

} // namespace

class VirtualDeviceTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        const QString server = QStandardPaths::findExecutable(QStringLiteral("pulseaudio"));
        if (server.isEmpty())
            QSKIP("no sound server is installed (pulseaudio)");
        const QString socket = dir_.filePath(QStringLiteral("sound"));
        qputenv("XDG_RUNTIME_DIR", dir_.path().toLocal8Bit());
        qputenv("HOME", dir_.path().toLocal8Bit());
        qputenv("PULSE_SERVER", "unix:" + socket.toLocal8Bit());
        server_.start(
            server,
            {QStringLiteral("-n"), QStringLiteral("--daemonize=no"), QStringLiteral("--exit-idle-time=-1"),
             QStringLiteral("--use-pid-file=no"), QStringLiteral("-L"),
             QStringLiteral("module-native-protocol-unix auth-anonymous=1 socket=") + socket,
             QStringLiteral("-L"), QStringLiteral("module-null-sink sink_name=bench"), QStringLiteral("-L"),
             QStringLiteral("module-remap-source master=bench.monitor source_name=microphone")});
        QVERIFY(server_.waitForStarted());
        QTRY_VERIFY_WITH_TIMEOUT(QFile::exists(socket), 5000);
        QTest::qWait(500);
    }

    void cleanupTestCase() {
        if (server_.state() == QProcess::NotRunning)
            return;
        server_.terminate();
        server_.waitForFinished();
    }

    void aMemoHoldsWhatWasSaid() {
        const QString spoken =
            voiceFile(dir_.filePath(QStringLiteral("spoken.wav")), "torque two five newton metres");
        const QString file = dir_.filePath(QStringLiteral("memo.wav"));
        DeviceRecorder recorder;
        const QSignalSpy finished(&recorder, &Recorder::finished);
        recorder.start(file);
        QVERIFY2(recorder.state() == Recorder::State::Recording, qPrintable(recorder.problem()));
        double loudest = 0;
        connect(&recorder, &Recorder::heard, this, [&] { loudest = std::max(loudest, recorder.level()); });
        play(spoken);
        recorder.stop();
        QTRY_COMPARE(finished.count(), 1);
        QVERIFY(loudest > 0.5);
        const MemoSound memo = readMemo(file);
        QVERIFY2(memo.milliseconds() > 2000, qPrintable(QString::number(memo.milliseconds())));
        // Not only noise: the ear understands it.
        const auto samples = readSound(file.toStdString());
        QVERIFY(samples.has_value());
        const auto ear = openEar();
        QVERIFY(ear.has_value());
        const Heard heard = (*ear)->hear(*samples);
        QCOMPARE(heard.text, std::string("torque two five newton metres"));
        QVERIFY(heard.accepted());
    }

    void aHeldButtonHearsWhatWasSaid() {
        const QString spoken =
            voiceFile(dir_.filePath(QStringLiteral("spoken.wav")), "front tyre one point eight bar");
        DeviceListener listener;
        std::vector<Heard> all;
        connect(&listener, &Listener::heard, this, [&all](const Heard& heard) { all.push_back(heard); });
        listener.start();
        QVERIFY2(listener.state() == Listener::State::Listening, qPrintable(listener.problem()));
        play(spoken);
        listener.stop();
        QTRY_COMPARE_WITH_TIMEOUT(all.size(), std::size_t{1}, 15000);
        QCOMPARE(all[0].text, std::string("front tyre one point eight bar"));
        QVERIFY(all[0].accepted());
    }

    void aMemoIsPlayedAtItsPace() {
        const QString file = dir_.filePath(QStringLiteral("memo.wav"));
        const int duration = readMemo(file).milliseconds();
        QVERIFY(duration > 2000);
        const auto took = [&](double pace) { // ms
            DevicePlayer player;
            QElapsedTimer timer;
            player.play(file, 0, pace);
            // Not what it takes to stretch the sound first: that is long where a sanitizer watches.
            const bool begun = QTest::qWaitFor([&] { return player.milliseconds() > 0; }, 15000);
            timer.start();
            const bool half = QTest::qWaitFor([&] { return player.milliseconds() > duration / 2; }, 15000);
            const bool ended = QTest::qWaitFor([&] { return !player.playing(); }, 15000);
            return begun && half && ended && player.problem().isEmpty() ? static_cast<double>(timer.elapsed())
                                                                        : 0;
        };
        // The sound server's delay is that of both paces, unless other work keeps it waiting once: then
        // again.
        double less = 0;
        for (int attempt = 0; attempt < 3 && less <= duration / 6.0; ++attempt) {
            const double plain = took(1);
            const double quick = took(1.5);
            QVERIFY2(plain > duration * 0.7, qPrintable(QString::number(plain)));
            QVERIFY2(quick > duration / 1.5 * 0.7, qPrintable(QString::number(quick)));
            less = plain - quick;
        }
        QVERIFY2(less > duration / 6.0, qPrintable(QString::number(less)));
    }

    void aSignalIsHeard() {
        DeviceSignaller signaller;
        double loud = 0; // s
        // With the first one the tones are loaded, and the server may keep its beginning back.
        hear(signaller, Signaller::Signal::Listening, loud);
        QVERIFY2(loud > 0.01, qPrintable(QString::number(loud)));
        hear(signaller, Signaller::Signal::Saved, loud);
        QVERIFY2(loud > 0.05 && loud < 0.3, qPrintable(QString::number(loud)));
    }

private:
    static void play(const QString& file) {
        QProcess player;
        player.start(QStringLiteral("paplay"), {file});
        QVERIFY2(player.waitForStarted(), qPrintable(player.errorString()));
        // The recorder's events go on. Not until the wait succeeds: it never does once one of those events
        // has told that the player ended.
        while (player.state() != QProcess::NotRunning) {
            player.waitForFinished(20);
            QTest::qWait(10);
        }
        QCOMPARE(player.exitCode(), 0);
        QTest::qWait(300);
    }

    // Records a signal, and counts for how many seconds it is loud.
    void hear(DeviceSignaller& signaller, Signaller::Signal signal, double& loud) {
        loud = 0;
        const QString file = dir_.filePath(QStringLiteral("signal.wav"));
        DeviceRecorder recorder;
        const QSignalSpy finished(&recorder, &Recorder::finished);
        double level = 0;
        connect(&recorder, &Recorder::heard, this, [&] { level = std::max(level, recorder.level()); });
        recorder.start(file);
        QVERIFY2(recorder.state() == Recorder::State::Recording, qPrintable(recorder.problem()));
        QTest::qWait(500);
        QVERIFY(level < 0.3);
        signaller.give(signal);
        QTRY_VERIFY_WITH_TIMEOUT(level > 0.3, 15000); // a busy server plays it seconds later
        QTest::qWait(1000);
        recorder.stop();
        QTRY_COMPARE(finished.count(), 1);
        const MemoSound sound = readMemo(file);
        loud = static_cast<double>(
                   std::ranges::count_if(sound.samples, [](short each) { return std::abs(each) > 1500; })) /
               sound.rate;
    }

    QTemporaryDir dir_;
    QProcess server_;
};

QTEST_GUILESS_MAIN(VirtualDeviceTest)
#include "virtual_device_test.moc"
