// What a photo cannot show is asked before it is confirmed: a tracer may lie on the side that is turned away.
#include "appwindow.h"

#include "qml/wiring/strokeview.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

constexpr int patience = 30000;

std::size_t found(const LiftShop& shop) {
    return wiring::placesOf(shop.stored().gatherings[0], wiring::Half::Loom, wiring::Answer::AsFound).size();
}

WireRow row(std::optional<colour::Insulation> tracer) {
    WireRow row;
    row.candidates = {{{colour::Insulation::BN, tracer}, 0.99}};
    row.at = QPointF(0.5, 0.5);
    row.sure = true;
    return row;
}

// As if the photo had been read so: what the reader makes of one is its own tests' business.
void readAs(const std::vector<WireRow>& rows, const LiftShop& shop, ShopSession& session) {
    const QJsonObject draft{{QStringLiteral("version"), 1},
                            {QStringLiteral("photo"),
                             QString::fromStdString(job::photosAbout(*session.job(), shop.gathering)[0]->id)},
                            {QStringLiteral("rows"), QJsonDocument::fromJson(toJson(rows)).array()}};
    session.keepDraft({QStringLiteral("stroke/%1/loom").arg(QString::fromStdString(shop.gathering)),
                       QStringLiteral("Wires"), shop.job, session.now()},
                      QJsonDocument(draft).toJson());
}

} // namespace

class TurnedTest : public QObject {
    Q_OBJECT

private slots:
    void allThatAreSureAreConfirmedOnlyWhenEachWasTurned() {
        const LiftShop shop;
        const auto session = shop.session();
        readAs({row(std::nullopt), row(colour::Insulation::YE)}, shop, *session);
        AppWindow app(*session);
        app.show("StrokePage", {{QStringLiteral("gathering"), QString::fromStdString(shop.gathering)}});
        auto* view = app.view<StrokeView>();
        QVERIFY(view != nullptr);
        QTRY_COMPARE_WITH_TIMEOUT(view->rows()->sureCount(), 2, patience);
        QVERIFY(app.touch(QStringLiteral("All 2 sure")));
        QTRY_VERIFY(app.button(QStringLiteral("One by one")) != nullptr);
        QVERIFY(app.button(QStringLiteral("Confirm")) == nullptr);
        QCOMPARE(found(shop), std::size_t{0});
        QVERIFY(app.touch(QStringLiteral("One by one")));
        QTRY_VERIFY(app.button(QStringLiteral("Confirm")) != nullptr);
        QCOMPARE(found(shop), std::size_t{0});
        QVERIFY(app.touch(QStringLiteral("All 2 sure")));
        QVERIFY(app.touch(QStringLiteral("All 2, each was turned")));
        QTRY_COMPARE(found(shop), std::size_t{2});
        // All is said: the way on is plain.
        QTRY_VERIFY(app.button(QStringLiteral("Done")) != nullptr);
        QVERIFY(app.button(QStringLiteral("Next open wire")) == nullptr);
    }

    void aPlainWireIsSureOfOneSideOnly() {
        const LiftShop shop;
        const auto session = shop.session();
        readAs({row(std::nullopt), row(colour::Insulation::YE)}, shop, *session);
        AppWindow app(*session);
        app.show("StrokePage", {{QStringLiteral("gathering"), QString::fromStdString(shop.gathering)}});
        auto* view = app.view<StrokeView>();
        QTRY_COMPARE_WITH_TIMEOUT(view->rows()->sureCount(), 2, patience);
        const auto word = [&](const char* what) { return view->wire()[QLatin1String(what)].toString(); };
        view->setCurrent(0);
        QCOMPARE(word("sureness"), QStringLiteral("sure, of the side that is seen"));
        QCOMPARE(word("reason"), QStringLiteral("turn the wire, a tracer may lie on its other side"));
        view->setCurrent(1);
        QCOMPARE(word("sureness"), QStringLiteral("sure"));
        QCOMPARE(word("reason"), QString());
    }
};

QTEST_MAIN(TurnedTest)

#include "turned_test.moc"
