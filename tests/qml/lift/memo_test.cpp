// Spoken memos on the screen: one touch begins, one ends, what was said is in the store and attached to what
// was open.
#include "appwindow.h"

#include "platform/memo/level.h"
#include "qml/memo/memoplayback.h"
#include "qml/memo/memorecording.h"
#include "qml/memo/pendingmemos.h"
#include "qml/strip/stripview.h"

#include <QDir>
#include <QtQml/qqmlextensionplugin.h>

#include <cmath>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

std::vector<short> speech(double seconds, double loudness = 0.5) {
    std::vector<short> samples(static_cast<std::size_t>(seconds * platform::memoRate));
    for (std::size_t i = 0; i < samples.size(); ++i)
        samples[i] =
            static_cast<short>(std::lround(32767 * loudness * std::sin(0.1 * static_cast<double>(i))));
    return samples;
}

struct Page {
    explicit Page(const char* page = "MemoPage", const QVariantMap& properties = {}) {
        session = shop.session();
        app = std::make_unique<AppWindow>(*session);
        app->show(page, properties);
    }
    [[nodiscard]] std::vector<job::Memo> memos() const { return shop.stored().memos; }
    // In the store's media, as the memo names it.
    [[nodiscard]] platform::MemoSound sound(const job::Memo& memo) const {
        return platform::readMemo(QString::fromStdString((shop.folder / "media" / memo.media).string()));
    }

    LiftShop shop;
    std::unique_ptr<ShopSession> session;
    std::unique_ptr<AppWindow> app;
};

} // namespace

class MemosTest : public QObject {
    Q_OBJECT

private slots:
    void twoTouchesFromHomeToARunningMemo() {
        const LiftShop shop;
        const auto session = std::make_unique<ShopSession>(shopInFolder(shop.folder), shop.folder);
        AppWindow app(*session);
        QVERIFY(app.touch(QStringLiteral("Memo")));
        QVERIFY(app.touch(QStringLiteral("Record")));
        QCOMPARE(app.recorder().state(), platform::Recorder::State::Recording);
        app.recorder().give(speech(1));
        QVERIFY(app.touch(QStringLiteral("Stop")));
        QTRY_COMPARE(shop.stored().memos.size(), std::size_t{1});
    }

    void whatIsSaidIsKeptWithItsMarks() {
        const Page page("MemoPage", {{QStringLiteral("about"), QStringLiteral("step-1")}});
        QVERIFY(page.app->touch(QStringLiteral("Record")));
        page.app->recorder().give(speech(1.5));
        QTRY_VERIFY(page.app->label(QStringLiteral("0:01")) != nullptr);
        QVERIFY(page.app->touch(QStringLiteral("Mark")));
        page.app->recorder().give(speech(0.5));
        QVERIFY(page.app->touch(QStringLiteral("Stop")));
        QTRY_COMPARE(page.memos().size(), std::size_t{1});
        const job::Memo memo = page.memos()[0];
        QCOMPARE(memo.about, std::string("step-1"));
        QCOMPARE(memo.marks, std::vector<int>{1500});
        QCOMPARE(page.sound(memo).milliseconds(), 2000);
        QVERIFY(QDir(QString::fromStdString(page.shop.folder.string()) + QStringLiteral("-taken"))
                    .entryList(QDir::Files)
                    .isEmpty());
        QVERIFY(page.app->touch(QStringLiteral("Undo")));
        QTRY_VERIFY(page.memos().empty());
    }

    void leavingTheScreenKeepsIt() {
        const Page page;
        QVERIFY(page.app->touch(QStringLiteral("Record")));
        page.app->recorder().give(speech(1));
        QVERIFY(page.app->touch(QStringLiteral("Back")));
        QTRY_COMPARE(page.memos().size(), std::size_t{1});
        QCOMPARE(page.app->recorder().state(), platform::Recorder::State::Idle);
    }

    void aSlipOfTheThumbIsNoMemo() {
        const Page page;
        QVERIFY(page.app->touch(QStringLiteral("Record")));
        page.app->recorder().give(speech(0.2));
        QVERIFY(page.app->touch(QStringLiteral("Stop")));
        QTest::qWait(200);
        QVERIFY(page.memos().empty());
    }

    void silenceEndsItWhereThatIsChosen() {
        Page page("HomePage");
        page.session->set(QStringLiteral("memo-end"), QStringLiteral("silence"));
        page.app->show("MemoPage", {{QStringLiteral("recording"), true}});
        QCOMPARE(page.app->recorder().state(), platform::Recorder::State::Recording);
        page.app->recorder().give(speech(1, 0.002));
        page.app->recorder().give(speech(1));
        page.app->recorder().give(speech(2.5, 0.002));
        QCOMPARE(page.app->recorder().state(), platform::Recorder::State::Recording);
        page.app->recorder().give(speech(1, 0.002));
        QCOMPARE(page.app->recorder().state(), platform::Recorder::State::Idle);
        QTRY_COMPARE(page.memos().size(), std::size_t{1});
        // Where it is not chosen only a touch ends it.
        page.session->set(QStringLiteral("memo-end"), QStringLiteral("touch"));
        QVERIFY(page.app->touch(QStringLiteral("Record")));
        page.app->recorder().give(speech(1));
        page.app->recorder().give(speech(6, 0.002));
        QCOMPARE(page.app->recorder().state(), platform::Recorder::State::Recording);
    }

    void byVoiceItBeginsAndEnds() {
        Page page("HomePage");
        page.session->set(QStringLiteral("voice"), QStringLiteral("on"));
        page.app->show("StripPage");
        auto* strip = page.app->view<StripView>();
        QTRY_VERIFY(strip != nullptr && strip->begun());
        page.app->listener().say("memo");
        QTRY_COMPARE(page.app->recorder().state(), platform::Recorder::State::Recording);
        page.app->recorder().give(speech(1));
        page.app->listener().say("stop");
        QTRY_COMPARE(page.memos().size(), std::size_t{1});
        // It belongs to the step that was open, though that is not said yet.
        QCOMPARE(page.memos()[0].about, strip->claim().toStdString());
        QTRY_VERIFY(!page.session->undoText().isEmpty()); // the screen has heard of it as well
        page.app->listener().say("undo");
        QTRY_VERIFY(page.memos().empty());
        page.app->listener().say("memo");
        QCOMPARE(page.app->recorder().state(), platform::Recorder::State::Recording);
    }

    void aCutMemoIsKeptAtTheNextStart() {
        const LiftShop shop;
        {
            const auto session = shop.session();
            const MemoToKeep memo{.file = {}, .job = shop.job, .about = shop.step};
            platform::GivenRecorder recorder;
            const QString file = memoName(*session, memo);
            recorder.start(file);
            recorder.give(speech(2));
            QTRY_COMPARE(platform::readMemo(file).milliseconds(), 2000);
            QVERIFY(memoOfName(file).has_value());
            QVERIFY(!memoOfName(QStringLiteral("/x/notes.wav")).has_value());
        } // the program ends; nobody kept it
        const auto session = shop.session();
        int kept = -1;
        rescueMemos(*session, false, [&kept](int count) { kept = count; });
        QTest::qWait(100);
        QCOMPARE(kept, -1); // it may still be running, for all that this call knows
        rescueMemos(*session, true, [&kept](int count) { kept = count; });
        QTRY_COMPARE(kept, 1);
        const auto memos = shop.stored().memos;
        QCOMPARE(memos.size(), std::size_t{1});
        QCOMPARE(memos[0].about, shop.step);
    }

    void itIsPlayedFasterAndFromMarkToMark() {
        const Page page;
        QVERIFY(page.app->touch(QStringLiteral("Record")));
        page.app->recorder().give(speech(1));
        QVERIFY(page.app->touch(QStringLiteral("Mark")));
        page.app->recorder().give(speech(2));
        QVERIFY(page.app->touch(QStringLiteral("Mark")));
        page.app->recorder().give(speech(1));
        QVERIFY(page.app->touch(QStringLiteral("Stop")));
        QTRY_COMPARE(page.memos().size(), std::size_t{1});
        HeardPlayer& player = page.app->player();
        QTRY_VERIFY(page.app->label(QStringLiteral("0:00 / 0:04")) != nullptr);
        QVERIFY(page.app->touch(QStringLiteral("Play")));
        QCOMPARE(player.from, QList<int>{0});
        QVERIFY(player.file().endsWith(QString::fromStdString(page.memos()[0].media)));
        player.reach(2000);
        QTRY_VERIFY(page.app->label(QStringLiteral("0:02 / 0:04")) != nullptr);
        QVERIFY(page.app->touch(QStringLiteral("1 ×"))); // faster, from where it is
        QCOMPARE(player.from.back(), 2000);
        QCOMPARE(player.paces.back(), 1.5);
        QVERIFY(page.app->touch(QStringLiteral("Next mark")));
        QCOMPARE(player.from.back(), 3000);
        QVERIFY(page.app->touch(QStringLiteral("Next mark"))); // after the last comes the first
        QCOMPARE(player.from.back(), 1000);
        QVERIFY(page.app->touch(QStringLiteral("Pause")));
        QVERIFY(!player.playing());
        QVERIFY(page.app->touch(QStringLiteral("Play")));
        QCOMPARE(player.from.back(), 1000);
        player.reach(1800);
        QVERIFY(page.app->touch(QStringLiteral("Mark")));
        QTRY_COMPARE(page.memos().at(0).marks, (std::vector<int>{1000, 1800, 3000}));
        QCOMPARE(page.memos().size(), std::size_t{1});
    }

    void withoutAMicrophoneItIsTyped() {
        const Page page;
        page.app->recorder().refusal = QStringLiteral("No microphone answers. Type the memo.");
        QVERIFY(page.app->touch(QStringLiteral("Record")));
        QTRY_VERIFY(page.app->label(QStringLiteral("No microphone answers. Type the memo.")) != nullptr);
        QVERIFY(page.app->field(QStringLiteral("the third bolt is the longer one")) != nullptr);
    }
};

QTEST_MAIN(MemosTest)
#include "memo_test.moc"
