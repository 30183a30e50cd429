// Wires read off a real rendered photo through the view model: proposed, confirmed, moved, undone.
// More than 400 lines: reading one photo takes seconds, and the cases share how it is opened and stroked.
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
    for (const QJsonValue value : plan()[QLatin1String(which)][u"along"].toArray()) {
        const QJsonArray point = value.toArray();
        points.append(
            QPointF(point.at(0).toDouble() / photo.width(), point.at(1).toDouble() / photo.height()));
    }
    return points;
}

// Where along the line, by its x, the wire comes closest to it.
qreal nearestTo(const QVariantList& line, const QVariantList& wire) {
    constexpr int parts = 40; // of each piece of the line
    qreal least = 2;
    qreal x = 0;
    for (qsizetype i = 1; i < line.size(); ++i)
        for (int part = 0; part <= parts; ++part) {
            const QPointF from = line[i - 1].toPointF();
            const QPointF at = from + (line[i].toPointF() - from) * part / parts;
            for (const QVariant& point : wire)
                if (const qreal away = QLineF(at, point.toPointF()).length(); away < least) {
                    least = away;
                    x = at.x();
                }
        }
    return x;
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
        QVERIFY(view->rows()->count() > 2);
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
        // How sure the reader is of a photo is its own tests' business: the rows come from a draft.
        std::vector<WireRow> rows(3);
        for (WireRow& row : rows) {
            row.candidates = {{{colour::Insulation::BN, std::nullopt}, 0.6},
                              {{colour::Insulation::RD, std::nullopt}, 0.3}};
            row.at = QPointF(0.5, 0.5);
        }
        rows[0].sure = rows[2].sure = true;
        rows[1].doubts = {sight::Doubt::CloseColours};
        const QJsonObject draft{
            {QStringLiteral("version"), 1},
            {QStringLiteral("photo"),
             QString::fromStdString(job::photosAbout(*session->job(), shop.gathering)[0]->id)},
            {QStringLiteral("rows"), QJsonDocument::fromJson(toJson(rows)).array()}};
        session->keepDraft({QStringLiteral("stroke/%1/loom").arg(QString::fromStdString(shop.gathering)),
                            QStringLiteral("Wires"), shop.job, session->now()},
                           QJsonDocument(draft).toJson());
        const auto view = strokeOn(shop, *session);
        QTRY_COMPARE(view->rows()->count(), 3);
        QCOMPARE(view->rows()->sureCount(), 2);
        view->confirmSure();
        QTRY_COMPARE(found(shop.stored()), (std::vector<std::string>{"1 BN", "3 BN"}));
        QVERIFY(!view->rows()->rows()[1].confirmed);
        QCOMPARE(view->current(), 1); // the one that is left is asked next
        QCOMPARE(view->wire()[QStringLiteral("sureness")].toString(),
                 QStringLiteral("not sure: brown or red"));
        view->take(0);
        QTRY_COMPARE(found(shop.stored()), (std::vector<std::string>{"1 BN", "2 RD", "3 BN"}));
        QCOMPARE(shop.stored()
                     .gatherings[0]
                     .find({wiring::Half::Loom, 2, 1})
                     ->answer(wiring::Answer::AsFound)
                     ->how,
                 wiring::HowKnown::RunnerUp);
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

    void aTapOutlinesItsWireAndStepsToTheNext() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        const QPointF from = strokeOf("before", view->reader()->size()).front().toPointF();
        QVERIFY(!view->named());
        view->tap(from.x(), from.y());
        QTRY_VERIFY_WITH_TIMEOUT(view->named() && !view->reader()->busy(), patience);
        QVERIFY(view->across() > 0.005 && view->across() < 0.1);
        const QVariantMap first = view->marks().front().toMap();
        view->step(true);
        QTRY_VERIFY_WITH_TIMEOUT(!view->reader()->busy(), patience);
        const QVariantMap second = view->marks().front().toMap();
        QVERIFY(second[QStringLiteral("x")].toDouble() >
                first[QStringLiteral("x")].toDouble() + view->across() / 2);
        view->step(false);
        QTRY_VERIFY_WITH_TIMEOUT(!view->reader()->busy(), patience);
        QVERIFY(std::abs(view->marks().front().toMap()[QStringLiteral("x")].toDouble() -
                         first[QStringLiteral("x")].toDouble()) < view->across());
        QVERIFY(view->waitsForEnd()); // the last wire is still asked for
    }

    void aStepFromARowGoesToTheRowOfThatWire() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        swept(*view);
        const QPointF at = *view->rows()->rows()[3].at;
        view->tap(at.x(), at.y());
        QTRY_VERIFY_WITH_TIMEOUT(!view->reader()->busy(), patience);
        QVERIFY(view->named());
        view->step(true);
        QTRY_COMPARE_WITH_TIMEOUT(view->current(), 4, patience);
        QVERIFY(view->named());
        view->setCurrent(0); // chosen by its place, not by a tap
        QVERIFY(!view->named());
    }

    void wiresAreProposedWithoutAStrokeAndAcceptedByTouch() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        view->findAll();
        QTRY_VERIFY_WITH_TIMEOUT(view->finding(), patience);
        QVERIFY(view->outlines().size() >= 8);
        QVERIFY(!view->findNote().isEmpty());
        QCOMPARE(view->acceptedCount(), 0);
        view->takeAccepted(); // none: nothing happens
        QVERIFY(view->finding());
        const QVariantList points = view->outlines()[2].toMap()[QStringLiteral("points")].toList();
        const QPointF on = points[points.size() / 2].toPointF();
        view->tap(on.x(), on.y());
        QCOMPARE(view->acceptedCount(), 1);
        view->tap(on.x(), on.y());
        QCOMPARE(view->acceptedCount(), 0);
        view->acceptAll();
        const int accepted = view->acceptedCount();
        QVERIFY(accepted >= 8);
        view->takeAccepted();
        QVERIFY(!view->finding());
        QCOMPARE(view->rows()->count(), accepted);
        QVERIFY(found(shop.stored()).empty()); // proposed, not confirmed
    }

    void aLineAcrossTheMouthLeavesTheConnectorsWiresInOrder() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        view->findAll();
        QTRY_VERIFY_WITH_TIMEOUT(view->finding(), patience);
        const auto all = view->outlines().size();
        const QString before = view->findNote();
        view->stroke(strokeOf("before", view->reader()->size()));
        QTRY_VERIFY_WITH_TIMEOUT(view->findNote() != before && !view->reader()->busy(), patience);
        QVERIFY(view->finding()); // still to be accepted
        QVERIFY(view->outlines().size() >= 7 && view->outlines().size() <= all);
        // In the order in which they come to the mouth, which runs from left to right here; further on wires
        // lean and cross.
        const QVariantList mouth = strokeOf("before", view->reader()->size());
        qreal last = -1;
        for (const QVariant& outline : view->outlines()) {
            const qreal now = nearestTo(mouth, outline.toMap()[QStringLiteral("points")].toList());
            QVERIFY2(now > last, qPrintable(QStringLiteral("%1 after %2").arg(now).arg(last)));
            last = now;
        }
        view->acceptAll();
        const int accepted = view->acceptedCount();
        view->takeAccepted();
        QCOMPARE(view->rows()->count(), accepted);
    }

    void whitePaperOpensThePhotoAgainAndReadsAgain() {
        const LiftShop shop;
        const auto session = shop.session();
        const auto view = strokeOn(shop, *session);
        swept(*view);
        view->setCurrent(0);
        view->pick(QStringLiteral("VT"), {});
        QTRY_COMPARE(found(shop.stored()).size(), std::size_t{1});
        view->askForCard(true);
        const QJsonArray card = plan()[u"before"][u"card"][u"box"].toArray();
        const QSize size = view->reader()->size();
        int sweeps = 0;
        connect(view->reader(), &PhotoReader::swept, this, [&] { ++sweeps; });
        view->tap((card.at(0).toDouble() + card.at(2).toDouble() / 2) / size.width(),
                  (card.at(1).toDouble() + card.at(3).toDouble() / 2) / size.height());
        QVERIFY(!view->asksForCard());
        QTRY_COMPARE_WITH_TIMEOUT(sweeps, 1, patience);
        QVERIFY(view->rows()->rows()[0].confirmed.has_value()); // what was confirmed stays so
        for (const WireRow& row : view->rows()->rows())
            QVERIFY(std::ranges::find(row.doubts, sight::Doubt::NoWhiteInView) == row.doubts.end());
    }

    void aComparisonAnswersOrSaysWhyItCannot() {
        const LiftShop shop;
        (void)shop.photo("switch-after.jpg", shop.gathering, job::PhotoPurpose::Refit);
        const auto session = shop.session();
        {
            const auto view = strokeOn(shop, *session);
            swept(*view);
            for (int row = 0; row < view->rows()->count(); ++row) {
                view->setCurrent(row);
                view->confirm();
            }
            QCOMPARE(view->rows()->count(), 9);
            QTRY_COMPARE(static_cast<int>(found(shop.stored()).size()), view->rows()->count());
        }
        CompareView view;
        view.setProperty("gathering", QString::fromStdString(shop.gathering));
        view.setSession(session.get());
        view.componentComplete();
        QTRY_VERIFY2(view.possible(), qPrintable(view.hint()));
        QTRY_COMPARE_WITH_TIMEOUT(view.reader()->state(), PhotoReader::State::Ready, patience);
        view.stroke(strokeOf("after", view.reader()->size()));
        QTRY_VERIFY_WITH_TIMEOUT(!view.verdict().isEmpty(), patience);
        // Two wires are exchanged in that photo: whatever is seen of it, 'same' would be a lie.
        QVERIFY2(view.verdict() != QStringLiteral("same"), qPrintable(view.result()));
        QVERIFY(!view.result().isEmpty());
        if (view.verdict() == QStringLiteral("cannot tell"))
            QVERIFY(!view.reasons().isEmpty());
        else
            QVERIFY2(!view.marksBefore().isEmpty(), qPrintable(view.result()));
        // Both photos are laid by the same line: as long and as turned as the places lie.
        const QVariantMap before = view.alignedBefore();
        const QVariantMap after = view.alignedAfter();
        QCOMPARE(before[QStringLiteral("turn")].toDouble(), 0.0);
        QVERIFY(before[QStringLiteral("span")].toDouble() > 0.1);
        QVERIFY(after[QStringLiteral("span")].toDouble() > 0.1);
        QVERIFY(std::abs(after[QStringLiteral("turn")].toDouble()) < 45.0);
        view.again();
        QCOMPARE(view.verdict(), QString());
    }
};

QTEST_MAIN(StrokeTest)
#include "stroke_test.moc"
