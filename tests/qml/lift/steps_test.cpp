// The lists of strip and refit steps of a machine with many of them: only the rows in view are made, and yet
// every row is reached, by a thumb and by keys.
#include "appwindow.h"

#include "qml/refit/refitview.h"
#include "qml/strip/stripview.h"

#include <QtQml/qqmlextensionplugin.h>

#include <algorithm>
#include <vector>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

using namespace undercowl;
using namespace undercowl::ui;

namespace {

constexpr int clips = 60;      // steps beside the shop's two and ...
constexpr int all = clips + 3; // ... the horn, a task of its own

// A shop of many steps, the last stripped with a photo, and its list on a window.
class Steps {
public:
    explicit Steps(const char* page) {
        auto store = store::Store::open(shop.folder);
        const auto put = [&](const journal::Draft& draft) {
            if (!store->append(draft))
                qFatal("nothing was kept");
        };
        job::StripStep step;
        step.id = horn = store->newId();
        step.task = store->newId();
        step.title = "take the horn off";
        step.bag = "61";
        put(journal::taskNamed(shop.job, {step.task, "horn", false, {}, 0}));
        put(journal::stepStripped(shop.job, step));
        step.task = shop.task;
        for (int i = 1; i <= clips; ++i) {
            step.id = last = store->newId();
            step.title = "loosen clip " + std::to_string(i) +
                         (i % 7 == 0 ? ", which holds the loom to the frame below the tank" : "");
            step.bag = std::to_string(i);
            put(journal::stepStripped(shop.job, step));
        }
        (void)shop.photo("tail-plug.jpg", last, job::PhotoPurpose::Strip);
        (void)shop.photo("switch-before.jpg", last, job::PhotoPurpose::Strip);
        session = shop.session();
        app = std::make_unique<AppWindow>(*session);
        app->show(page);
        if (!QTest::qWaitFor([&] { return list() != nullptr && list()->property("count").toInt() == all; }))
            qFatal("the list did not come");
        QTest::qWait(50);
    }

    [[nodiscard]] QQuickItem* list() const { return app->having("doneWord"); }
    [[nodiscard]] double at() const { return list()->property("contentY").toDouble(); }
    [[nodiscard]] QQuickItem* focused() const { return app->window().activeFocusItem(); }
    void key(Qt::Key key) const { QTest::keyClick(&app->window(), key); }

    // Rows that were made, whether they are seen or not.
    [[nodiscard]] std::vector<QQuickItem*> rows() const {
        std::vector<QQuickItem*> rows;
        const auto* content = list()->property("contentItem").value<QQuickItem*>();
        for (QQuickItem* item : content->childItems())
            if (item->property("lineId").isValid())
                rows.push_back(item);
        return rows;
    }
    [[nodiscard]] QQuickItem* row(const Id& id) const {
        for (QQuickItem* item : rows())
            if (item->property("lineId").toString().toStdString() == id && inView(*item))
                return item;
        return nullptr;
    }
    [[nodiscard]] bool inView(const QQuickItem& item) const {
        const QRectF page = list()->mapRectToScene({0, 0, list()->width(), list()->height()});
        return page.contains(item.mapRectToScene({0, 0, item.width(), item.height()}));
    }

    // Throws the list up by thumb until it stands still.
    void toEnd() const {
        const QPointF middle = list()->mapToScene({4, list()->height() / 2});
        for (double before = at() - 1; before != at();) {
            before = at();
            app->drag({middle + QPointF(0, 200), middle - QPointF(0, 200)});
            (void)QTest::qWaitFor([&] { return !list()->property("moving").toBool(); });
        }
    }

    LiftShop shop;
    Id horn;
    Id last;
    std::unique_ptr<ShopSession> session;
    std::unique_ptr<AppWindow> app;
};

// The photo in a row; null where it shows none.
QQuickItem* photoIn(QQuickItem& item) {
    if (item.inherits("QQuickImage"))
        return &item;
    for (QQuickItem* child : item.childItems())
        if (auto* photo = photoIn(*child))
            return photo;
    return nullptr;
}

} // namespace

class StepsTest : public QObject {
    Q_OBJECT

private slots:
    void onlyRowsInViewAreMade_data() {
        QTest::addColumn<QByteArray>("page");
        QTest::newRow("strip") << QByteArray("StepsPage");
        QTest::newRow("refit") << QByteArray("RefitStepsPage");
    }

    void onlyRowsInViewAreMade() {
        QFETCH(const QByteArray, page);
        const Steps steps(page);
        QVERIFY2(steps.rows().size() < 20, qPrintable(QString::number(steps.rows().size())));
        steps.toEnd();
        QVERIFY2(steps.rows().size() < 30, qPrintable(QString::number(steps.rows().size())));
        // A row that was another one before tells its own step, and no photo of that one.
        const auto job = steps.shop.stored();
        int seen = 0;
        for (QQuickItem* row : steps.rows()) {
            if (!steps.inView(*row))
                continue;
            ++seen;
            const auto* step = job::findStep(job, row->property("lineId").toString().toStdString());
            QVERIFY(step != nullptr);
            QCOMPARE(row->property("title").toString().toStdString(), step->title);
            QVERIFY(row->property("aside").toString().contains(QString::fromStdString(step->bag)));
            QCOMPARE(photoIn(*row) != nullptr, step->id == steps.shop.step);
        }
        QVERIFY(seen >= 3);
    }

    void theFirstPhotoOfAStepIsShown_data() { onlyRowsInViewAreMade_data(); }

    void theFirstPhotoOfAStepIsShown() {
        QFETCH(const QByteArray, page);
        const Steps steps(page);
        QQuickItem* row = steps.row(steps.last);
        QVERIFY(row != nullptr);
        QQuickItem* photo = photoIn(*row);
        QVERIFY(photo != nullptr);
        QTRY_COMPARE(photo->property("status").toInt(), 1); // Image.Ready
        const auto job = steps.shop.stored();
        const auto photos = job::photosAbout(job, steps.last);
        QCOMPARE(photos.size(), std::size_t{2});
        QCOMPARE(photo->property("source").toUrl(),
                 steps.session->mediaUrl(QString::fromStdString(photos.front()->media)));
        // Decoded as small as it is shown.
        QVERIFY(photo->implicitWidth() <= 2 * photo->width());
        const QImage picture = steps.app->window().grabWindow();
        const QRect area = photo->mapRectToScene({0, 0, photo->width(), photo->height()}).toRect();
        QSet<QRgb> colours;
        for (int x = area.left(); x < area.right(); ++x)
            colours.insert(picture.pixel(x, area.center().y()));
        QVERIFY2(colours.size() > 10, "the photo is not drawn");
    }

    void theLastRowIsReachedByThumb() {
        const Steps steps("StepsPage");
        QVERIFY(steps.row(steps.shop.step) == nullptr);
        steps.toEnd();
        QVERIFY(steps.row(steps.shop.step) != nullptr);
        QVERIFY(steps.app->touch(QStringLiteral("unplug 6-place connector")));
        QTRY_VERIFY(steps.app->view<StripView>() != nullptr &&
                    steps.app->view<StripView>()->property("corrects").toString().toStdString() ==
                        steps.shop.step);
    }

    void everyRowIsReachedByKeys() {
        const Steps steps("StepsPage");
        for (int i = 0; i < 5 && steps.row(steps.last) != steps.focused(); ++i)
            steps.key(Qt::Key_Tab);
        QCOMPARE(steps.focused(), steps.row(steps.last)); // the newest stands first
        // Tab goes on row by row, in their order, and brings each into view; so do the arrows.
        const auto job = steps.shop.stored();
        for (std::size_t i = 1; i < 30; ++i) {
            steps.key(i % 3 == 0 ? Qt::Key_Down : Qt::Key_Tab);
            QCOMPARE(steps.focused()->property("lineId").toString().toStdString(),
                     job.steps[job.steps.size() - 1 - i].id);
            QVERIFY(steps.inView(*steps.focused()));
            QVERIFY(steps.focused()->property("visualFocus").toBool());
        }
        for (std::size_t i = 28; i > 10; --i) {
            steps.key(i % 3 == 0 ? Qt::Key_Up : Qt::Key_Backtab);
            QCOMPARE(steps.focused()->property("lineId").toString().toStdString(),
                     job.steps[job.steps.size() - 1 - i].id);
            QVERIFY(steps.inView(*steps.focused()));
        }
        steps.key(Qt::Key_Home);
        QCOMPARE(steps.focused(), steps.row(steps.last));
        steps.key(Qt::Key_PageDown);
        QVERIFY(steps.inView(*steps.focused()));
        QVERIFY(steps.focused() != steps.row(steps.last));
        steps.key(Qt::Key_End);
        QVERIFY(steps.row(steps.shop.step) != nullptr);
        QCOMPARE(steps.focused(), steps.row(steps.shop.step));
        // From the last row Tab leads out of the list, and back into it to where one was.
        steps.key(Qt::Key_Tab);
        QVERIFY(!steps.focused()->property("lineId").isValid());
        steps.key(Qt::Key_Backtab);
        QCOMPARE(steps.focused(), steps.row(steps.shop.step));
        steps.key(Qt::Key_Return);
        QTRY_VERIFY(steps.app->view<StripView>() != nullptr &&
                    steps.app->view<StripView>()->property("corrects").toString().toStdString() ==
                        steps.shop.step);
    }

    void whatStandsAboveTheRowsIsSeenAndReached() {
        const Steps steps("RefitStepsPage");
        job::StripStep hose;
        hose.id = "018bcfe5-8358-7d42-8b4d-66eeb0f36a01";
        hose.task = steps.shop.task;
        hose.title = "fuel hose off";
        bool said = false;
        steps.session->say({journal::stepStripped(steps.shop.job, hose)}, {},
                           [&](const Entries&) { said = true; });
        QTRY_VERIFY(said);
        QTRY_VERIFY(steps.app->button(QStringLiteral("Read hoses and cables back")) != nullptr);
        QTest::qWait(50);
        QVERIFY(steps.inView(*steps.app->button(QStringLiteral("Read hoses and cables back"))));
        // First of all by Tab, and again from the far end of the list.
        const auto* above = steps.app->button(QStringLiteral("Read hoses and cables back"));
        for (int i = 0; i < 6 && steps.focused() != above; ++i)
            steps.key(Qt::Key_Tab);
        QCOMPARE(steps.focused(), above);
        steps.key(Qt::Key_Tab);
        QCOMPARE(steps.focused()->property("lineId").toString().toStdString(), hose.id);
        steps.key(Qt::Key_End);
        QVERIFY(!steps.inView(*above));
        steps.key(Qt::Key_Home);
        steps.key(Qt::Key_Backtab);
        QCOMPARE(steps.focused(), above);
        QVERIFY(steps.inView(*above));
    }

    void theListStaysWhereItIsWhileTheOrderIsChanged() {
        const Steps steps("RefitStepsPage");
        QVERIFY(steps.app->touch(QStringLiteral("Change the order")));
        steps.toEnd();
        const auto place = [&](const Id& id) {
            auto* view = steps.app->view<RefitView>();
            const auto& lines = view->steps()->lines();
            return std::ranges::find(lines, QString::fromStdString(id), &Line::id) - lines.begin();
        };
        QCOMPARE(place(steps.horn), all - 3);
        QVERIFY(steps.app->touch(QStringLiteral("take the horn off")));
        QQuickItem* row = steps.row(steps.horn);
        QVERIFY(row->property("chosen").toBool());
        const double at = steps.at();
        QVERIFY(at > 2000);
        QVERIFY(steps.app->touch(QStringLiteral("Later")));
        QTRY_COMPARE(place(steps.horn), all - 2);
        QTest::qWait(50);
        QCOMPARE(steps.at(), at);
        QCOMPARE(steps.row(steps.horn), row); // moved, not made anew: it keeps what it had
        QVERIFY(row->property("chosen").toBool());
        QVERIFY(steps.app->touch(QStringLiteral("Earlier")));
        QTRY_COMPARE(place(steps.horn), all - 3);
        QCOMPARE(steps.at(), at);
    }
};

QTEST_MAIN(StepsTest)
#include "steps_test.moc"
