// Memos: what is recorded can be read at any moment and after a cut, silence ends only what was begun by
// speech, and a faster pace keeps the pitch.
#include "platform/memo/devicememo.h"
#include "platform/memo/level.h"
#include "platform/memo/memosound.h"
#include "platform/memo/stretch.h"
#include "tests/platform/memo/givenrecorder.h"

#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>
#include <csignal>
#include <numbers>

using namespace undercowl::platform;
using State = Recorder::State;

namespace {

std::vector<short> tone(double hertz, double seconds, double loudness = 0.5) {
    std::vector<short> samples(static_cast<std::size_t>(seconds * memoRate));
    for (std::size_t i = 0; i < samples.size(); ++i)
        samples[i] = static_cast<short>(std::lround(
            32767 * loudness * std::sin(2 * std::numbers::pi * hertz * static_cast<double>(i) / memoRate)));
    return samples;
}

// How often it goes up through zero, a second.
double pitch(std::span<const short> samples) {
    int count = 0;
    for (std::size_t i = 1; i < samples.size(); ++i)
        count += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
    return static_cast<double>(count) * memoRate / static_cast<double>(samples.size());
}

// Records and dies in the midst of it.
[[noreturn]] void recordAndDie(const QString& file) {
    GivenRecorder recorder;
    recorder.start(file);
    recorder.give(tone(300, 3.5));
    QTest::qWait(400); // what was said 0.4 s ago is on the disk
    recorder.give(tone(300, 0.2));
    (void)std::raise(SIGKILL);
    std::abort();
}

} // namespace

class MemoTest : public QObject {
    Q_OBJECT

private slots:
    void whatIsSaidIsInTheFile() {
        const QTemporaryDir dir;
        const QString file = dir.filePath(QStringLiteral("a.wav"));
        GivenRecorder recorder;
        const QSignalSpy finished(&recorder, &Recorder::finished);
        const QSignalSpy heard(&recorder, &Recorder::heard);
        recorder.stop(); // nothing runs
        recorder.start(file);
        QCOMPARE(recorder.state(), State::Recording);
        const auto sound = tone(440, 1.25);
        recorder.give(sound);
        QCOMPARE(recorder.milliseconds(), 1200);
        QCOMPARE(heard.count(), 13); // the beginning, then ten a second
        QVERIFY(recorder.level() > 0.8);
        recorder.stop();
        QTRY_COMPARE(finished.count(), 1);
        QCOMPARE(finished.at(0).at(0).toString(), file);
        const MemoSound read = readMemo(file);
        QCOMPARE(read.rate, memoRate);
        QVERIFY(read.samples == sound);
        // Another one after it.
        recorder.start(dir.filePath(QStringLiteral("b.wav")));
        recorder.give(tone(440, 0.5));
        recorder.stop();
        QTRY_COMPARE(finished.count(), 2);
        QCOMPARE(readMemo(dir.filePath(QStringLiteral("b.wav"))).milliseconds(), 500);
    }

    void itCanBeReadWhileItRuns() {
        const QTemporaryDir dir;
        const QString file = dir.filePath(QStringLiteral("a.wav"));
        GivenRecorder recorder;
        recorder.start(file);
        for (int second = 1; second <= 3; ++second) {
            recorder.give(tone(440, 1));
            QTRY_COMPARE(readMemo(file).milliseconds(), second * 1000);
        }
    }

    void aCutLosesNothingThatIsASecondOld() {
        const QTemporaryDir dir;
        const QString file = dir.filePath(QStringLiteral("a.wav"));
        QProcess self;
        self.start(QCoreApplication::applicationFilePath(), {QStringLiteral("--die"), file});
        QVERIFY(self.waitForFinished(20000));
        QCOMPARE(self.exitStatus(), QProcess::CrashExit);
        const MemoSound read = readMemo(file);
        QVERIFY2(read.milliseconds() >= 3500, qPrintable(QString::number(read.milliseconds())));
        QVERIFY(std::abs(pitch(read.samples) - 300) < 2);
    }

    void aFileThatCannotBeWrittenIsTold() {
        GivenRecorder recorder;
        const QSignalSpy finished(&recorder, &Recorder::finished);
        recorder.start(QStringLiteral("/no/such/folder/a.wav"));
        QTRY_COMPARE(recorder.state(), State::Failed);
        QVERIFY(recorder.problem().contains(QStringLiteral("make room")));
        QTRY_COMPARE(finished.count(), 1);
        GivenRecorder deaf;
        deaf.refusal = QStringLiteral("no microphone");
        deaf.start(QStringLiteral("/no/such/folder/a.wav"));
        QCOMPARE(deaf.state(), State::NoMicrophone);
        QCOMPARE(deaf.problem(), QStringLiteral("no microphone"));
    }

    void theMeterReadsDecibels() {
        QCOMPARE(level({}), 0.0);
        QCOMPARE(level(std::vector<short>(100, 0)), 0.0);
        // A tone of half the full scale is 9 dB below it, root of the mean square: 1 - 9.03 / 60.
        QVERIFY(std::abs(level(tone(500, 1)) - (1 - 9.03 / 60)) < 0.001);
        QVERIFY(std::abs(level(tone(500, 1, 0.005)) - (1 - 49.03 / 60)) < 0.01);
    }

    void silenceEndsWhatWasSpoken() {
        SilenceWatch watch(3000);
        for (int i = 0; i < 200; ++i)
            QVERIFY(!watch.over(0.3, 100)); // twenty seconds of an engine, and nobody spoke
        for (int i = 0; i < 10; ++i)
            QVERIFY(!watch.over(0.7, 100));
        for (int i = 0; i < 29; ++i)
            QVERIFY(!watch.over(0.32, 100));
        QVERIFY(!watch.over(0.7, 100)); // a pause to think
        for (int i = 0; i < 29; ++i)
            QVERIFY(!watch.over(0.32, 100));
        QVERIFY(watch.over(0.32, 100));
    }

    void aFasterPaceKeepsThePitch() {
        const auto given = tone(200, 2);
        for (const double pace : {0.7, 1.5, 2.0}) {
            const auto made = stretched(given, memoRate, pace);
            const double seconds = static_cast<double>(made.size()) / memoRate;
            QVERIFY2(std::abs(seconds - 2 / pace) < 0.1, qPrintable(QString::number(seconds)));
            QVERIFY2(std::abs(pitch(made) - 200) < 4, qPrintable(QString::number(pitch(made))));
            QVERIFY(std::abs(level(made) - level(given)) < 0.02);
        }
        QVERIFY(stretched(given, memoRate, 1) == given);
        const std::vector<short> brief(10, 5);
        QVERIFY(stretched(brief, memoRate, 1.5) == brief);
        QVERIFY(stretched({}, memoRate, 1.5).empty());
    }

    void theOutlineShowsWhereItIsLoud() {
        MemoSound sound{std::vector<short>(memoRate, 0), memoRate};
        const auto loud = tone(300, 1);
        sound.samples.insert(sound.samples.end(), loud.begin(), loud.end());
        const auto levels = outlineOf(sound, 10);
        QCOMPARE(levels.size(), 10);
        QCOMPARE(levels[0], 0.0);
        QVERIFY(levels[9] > 0.8);
        QVERIFY(outlineOf({}, 10).isEmpty());
        QVERIFY(readMemo(QStringLiteral("/no/such/file.wav")).samples.empty());
    }

    void theDeviceSaysWhatItCannotDo() {
        DevicePlayer player;
        const QSignalSpy outlined(&player, &Player::outlined);
        player.outline(QStringLiteral("/no/such/file.wav"));
        QTRY_COMPARE(outlined.count(), 1);
        QCOMPARE(outlined.at(0).at(1).toInt(), 0);
        player.play(QStringLiteral("/no/such/file.wav"), 0, 1);
        QTRY_VERIFY(!player.playing());
        QVERIFY(!player.problem().isEmpty());
    }
};

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    if (argc == 3 && QByteArray(argv[1]) == "--die")
        recordAndDie(QString::fromLocal8Bit(argv[2]));
    MemoTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "memo_test.moc"
