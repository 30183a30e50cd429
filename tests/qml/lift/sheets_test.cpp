// Spreadsheets out, and in again after a look at each line.
#include "forms.h"

#include "core/journal/say.h"
#include "qml/handover/devicefiles.h"
#include "qml/sheets/sheetsview.h"

#include <QDesktopServices>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

using namespace undercowl;
using namespace undercowl::ui;

class SheetsTest : public QObject {
    Q_OBJECT

public slots:
    void open(const QUrl& url) { opened_.push_back(url.toLocalFile()); }

private slots:
    void whatIsWrittenIsBroughtIntoAnotherShop() {
        const LiftShop shop;
        job::Part part;
        part.id = "p1";
        part.name = "brake \"shoes\", rear";
        part.supplier = "Harbour parts";
        part.price = job::TypedValue{"18.50", "EUR"};
        part.state = job::PartState::Ordered;
        shop.say(journal::partStated(shop.job, part));
        const auto session = shop.session();
        SheetsView view;
        view.setProperty("session", QVariant::fromValue(session.get()));
        view.write();
        QTRY_COMPARE(view.files().size(), 9);
        const QString parts = view.folder() + QStringLiteral("/parts.csv");

        const LiftShop other; // has a job of the same number
        const auto there = other.session();
        SheetsView in;
        in.setProperty("session", QVariant::fromValue(there.get()));
        in.look(parts);
        QTRY_COMPARE(in.ready(), 1);
        QVERIFY(other.stored().parts.empty()); // looked at only
        in.bringIn();
        QTRY_COMPARE(in.broughtIn(), 1);
        const auto same = other.stored().parts.at(0);
        QCOMPARE(same.name, part.name);
        QCOMPARE(same.supplier, part.supplier);
        QCOMPARE(*same.price, *part.price);
        QCOMPARE(same.state, part.state);
        in.look(parts);
        QTRY_COMPARE(in.lines()->count(), 1);
        QCOMPARE(in.lines()->lines()[0].mark, QStringLiteral("passed"));
        QCOMPARE(in.ready(), 0);
    }

    void whatWasWrittenIsShownByTheSystem() {
        const LiftShop shop;
        const auto session = shop.session();
        SheetsView view;
        view.setProperty("session", QVariant::fromValue(session.get()));
        view.write();
        QTRY_COMPARE(view.files().size(), 9);
        DeviceFiles device;
        QVERIFY(!device.shares()); // no sheet of receivers here
        QSignalSpy refused(&device, &DeviceFiles::refused);
        QDesktopServices::setUrlHandler(QStringLiteral("file"), this, "open");
        device.show(view.folder(), view.files().front());
        device.share(view.folder(), view.files(), QStringLiteral("Spreadsheets"));
        device.share(view.folder(), {}, QStringLiteral("Nothing"));
        QDesktopServices::unsetUrlHandler(QStringLiteral("file"));
        QCOMPARE(opened_, (QStringList{view.folder() + u'/' + view.files().front(), view.folder()}));
        QVERIFY(refused.isEmpty());
        device.show(view.folder(), QStringLiteral("gone.csv"));
        QCOMPARE(refused.size(), 1);
        QVERIFY(refused[0][0].toString().contains(QStringLiteral("gone.csv")));
    }

    void aWrongLineIsNamedAndLeftOut() {
        const LiftShop shop;
        const auto session = shop.session();
        const QString path = shop.dir.filePath(QStringLiteral("machines.csv"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("make,model,year\nVelbrook,Gull 50,1998\nVelbrook,Gull 50,soon\n");
        file.close();
        SheetsView view;
        view.setProperty("session", QVariant::fromValue(session.get()));
        view.look(path);
        QTRY_COMPARE(view.lines()->count(), 2);
        QCOMPARE(view.ready(), 1);
        QVERIFY(view.lines()->lines()[1].detail.startsWith(QStringLiteral("year")));
        view.bringIn();
        QTRY_COMPARE(view.broughtIn(), 1);
        session->undoLast();
        view.look(shop.dir.filePath(QStringLiteral("nothing.csv")));
        QVERIFY(view.error().contains(QStringLiteral("nothing.csv")));
    }

private:
    QStringList opened_;
};

QTEST_MAIN(SheetsTest)
#include "sheets_test.moc"
