// Wires read off a real rendered photo through the view model: proposed, confirmed, moved, undone.
#include "liftshop.h"

#include "qml/refit/compareview.h"
#include "qml/wiring/strokeview.h"

#include <QElapsedTimer>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

constexpr int patience = 30000;

QJsonObject plan() {
    QFile file(QStringLiteral(UNDERCOWL_PHOTOS "/wiring.json"));
    if (!file.open(QIODevice::ReadOnly))
        qFatal("no wiring.json");
    return QJsonDocument::fromJson(file.readAll()).object();
}

// The stroke of assets/demo/wiring.json, in parts of the photo.
QVariantList strokeOf(const char* which, QSize photo) {
    QVariantList points;
    for (const QJsonValue& value : plan()[QLatin1String(which)][u"along"].toArray()) {
        const QJsonArray point = value.toArray();
        points.append(
            QPointF(point.at(0).toDouble() / photo.width(), point.at(1).toDouble() / photo.height()));
    }
    return points;
}

std::unique_ptr<StrokeView> strokeOn(const LiftShop& shop, ShopSession& session) {
    auto view = std::make_unique<StrokeView>();
    view->setProperty("gathering", QString::fromStdString(shop.gathering));
    view->setSession(&session);
    view->componentComplete();
    if (!QTest::qWaitFor([&] { return view->reader()->state() == PhotoReader::State::Ready; }, patience))
        qFatal("the photo was not opened: %s", qPrintable(view->reader()->problem()));
    return view;
}

void swept(StrokeView& view) {
    view.stroke(strokeOf("before", view.reader()->size()));
    if (!QTest::qWaitFor([&] { return view.rows()->count() > 0 && !view.reader()->busy(); }, patience))
        qFatal("no wires were read");
}

std::vector<std::string> found(const job::Job& job) {
    std::vector<std::string> codes;
    for (const auto* place : wiring::placesOf(job.gatherings[0], wiring::Half::Loom, wiring::Answer::AsFound))
        codes.push_back(std::to_string(place->key.number) + " " +
                        colour::code(place->answer(wiring::Answer::AsFound)->wire.colour));
    return codes;
}

} // namespace

class StrokeTest : public QObject {
    Q_OBJECT

private slots:
    void aStrokeProposesAndNothingIsConfirmed() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        QElapsedTimer longest;
        qint64 worst = 0;
        view->stroke(strokeOf("before", view->reader()->size()));
        while (view->reader()->busy()) { // the touch thread goes on meanwhile
            longest.start();
            QTest::qWait(5);
            worst = std::max(worst, longest.elapsed());
        }
        QVERIFY2(worst < 200, qPrintable(QStringLiteral("the touch thread waited %1 ms").arg(worst)));
        QCOMPARE(view->rows()->count(), static_cast<int>(plan()[u"gathering"][u"functions"].toArray().size()));
        QCOMPARE(view->rows()->openCount(), view->rows()->count());
        QVERIFY(found(shop.stored()).empty());
        QVERIFY(view->path().size() > 1);
    }

    void confirmingSaysAtOnceAndUndoTakesItBack() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        swept(*view);
        view->setCurrent(0);
        const auto proposed = view->rows()->rows()[0].candidates[0].wire;
        view->confirm();
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{"1 " + colour::code(proposed)});
        const auto gathering = shop.stored().gatherings[0];
        QVERIFY(gathering.first.has_value()); // place 1 is where its wire was crossed
        QCOMPARE(gathering.find({wiring::Half::Loom, 1, 1})->answer(wiring::Answer::AsFound)->how,
                 wiring::HowKnown::Read);
        QVERIFY(view->rows()->rows()[0].confirmed.has_value());
        QTRY_VERIFY(!session->undoText().isEmpty());
        session->undoLast();
        QTRY_VERIFY(found(shop.stored()).empty());
        QTRY_VERIFY(!view->rows()->rows()[0].confirmed.has_value());
    }

    void aPickedColourIsSaidAsPicked() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        swept(*view);
        view->setCurrent(1);
        view->pick(QStringLiteral("VT"), QStringLiteral("YE"));
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{"2 VT/YE"});
    }

    void allSureConfirmsNoUnsureOne() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        swept(*view);
        const int sure = view->rows()->sureCount();
        QVERIFY(sure > 0);
        view->confirmSure();
        QTRY_COMPARE(static_cast<int>(found(shop.stored()).size()), sure);
        for (const WireRow& row : view->rows()->rows())
            QCOMPARE(row.confirmed.has_value(), row.sure);
    }

    void turningRoundMovesTheAnswersAndUndoMovesThemBack() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        swept(*view);
        view->setCurrent(0);
        view->pick(QStringLiteral("VT"), {});
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{"1 VT"});
        const int last = view->rows()->count();
        view->reverse();
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{std::to_string(last) + " VT"});
        QTRY_COMPARE(session->undoText(), QStringLiteral("Turned round"));
        session->undoLast();
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{"1 VT"});
        QTRY_VERIFY(view->rows()->rows()[0].confirmed.has_value());
        QCOMPARE(view->rows()->openCount(), last - 1);
    }

    void aWireThatWasMissedIsPutInBeforeTheOthers() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        swept(*view);
        view->setCurrent(0);
        view->pick(QStringLiteral("VT"), {});
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{"1 VT"});
        view->setCurrent(0);
        view->insertWire(false);
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{"2 VT"});
        view->removeWire();
        QTRY_COMPARE(found(shop.stored()), std::vector<std::string>{"1 VT"});
    }

    void anUnconfirmedRowSurvivesTheApp() {
        const LiftShop shop;
        int rows = 0;
        {
            const auto session = shop.session();
            const auto view = strokeOn(shop, *session);
            swept(*view);
            rows = view->rows()->count();
            view->setCurrent(0);
            view->confirm();
            QTRY_COMPARE(found(shop.stored()).size(), std::size_t{1});
        }
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        QTRY_COMPARE(view->rows()->count(), rows);
        QVERIFY(view->rows()->rows()[0].confirmed.has_value());
        QCOMPARE(view->rows()->openCount(), rows - 1);
    }

    void twoTapsAreAStrokeAndALaterTapLooksAgain() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        const QVariantList stroke = strokeOf("before", view->reader()->size());
        const QPointF from = stroke.front().toPointF();
        const QPointF to = stroke.back().toPointF();
        view->tap(from.x(), from.y());
        QVERIFY(view->waitsForEnd());
        view->tap(to.x(), to.y());
        QTRY_VERIFY_WITH_TIMEOUT(view->rows()->count() > 1, patience);
        const int rows = view->rows()->count();
        const QPointF at = *view->rows()->rows()[1].at;
        view->tap(at.x(), at.y());
        QTRY_VERIFY_WITH_TIMEOUT(!view->reader()->busy(), patience);
        QCOMPARE(view->rows()->count(), rows);
        QCOMPARE(view->current(), 1);
    }

    void theSwapOfTheAfterPhotoIsFound() {
        const LiftShop shop;
        (void)shop.photo("switch-after.jpg", shop.gathering, job::PhotoPurpose::Refit);
        const auto session = shop.session();
        {
            const auto view = strokeOn(shop, *session);
            swept(*view);
            for (int row = 0; row < view->rows()->count(); ++row) {
                view->setCurrent(row);
                view->confirm(); // as the reader proposes: the demo's photo is read right
            }
            QTRY_COMPARE(static_cast<int>(found(shop.stored()).size()), view->rows()->count());
        }
        CompareView view;
        view.setProperty("gathering", QString::fromStdString(shop.gathering));
        view.setSession(session.get());
        view.componentComplete();
        QVERIFY2(view.possible(), qPrintable(view.hint()));
        QTRY_COMPARE_WITH_TIMEOUT(view.reader()->state(), PhotoReader::State::Ready, patience);
        view.stroke(strokeOf("after", view.reader()->size()));
        QTRY_VERIFY_WITH_TIMEOUT(!view.verdict().isEmpty(), patience);
        QCOMPARE(view.verdict(), QStringLiteral("changed"));
        QVERIFY2(view.result().contains(QStringLiteral("swapped")), qPrintable(view.result()));
        QCOMPARE(view.marksBefore().size(), 2);
        QCOMPARE(view.marksAfter().size(), 2);
    }
};

QTEST_MAIN(StrokeTest)
#include "stroke_test.moc"
