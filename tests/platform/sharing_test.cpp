// Files that were made, handed to the system: the program that opens them is one of ours here.
#include "platform/sharing.h"

#include <QDesktopServices>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>

using namespace undercowl;

class SharingTest : public QObject {
    Q_OBJECT

public slots:
    void open(const QUrl& url) { opened_.push_back(url); }

private slots:
    void initTestCase() {
        QVERIFY(folder_.isValid());
        QFile file(record());
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("%PDF-1.4");
        QDesktopServices::setUrlHandler(QStringLiteral("file"), this, "open");
    }
    void cleanupTestCase() { QDesktopServices::unsetUrlHandler(QStringLiteral("file")); }
    void init() { opened_.clear(); }

    void aFileIsShownByTheSystemsProgram() {
        QCOMPARE(platform::showFile(record()), QString());
        QCOMPARE(opened_, QList<QUrl>{QUrl::fromLocalFile(record())});
    }

    void whereThereIsNoSheetOfReceiversTheFolderIsShown() {
        QVERIFY(!platform::hasShareSheet());
        QCOMPARE(platform::shareFiles({record()}, QStringLiteral("Hand over")), QString());
        QCOMPARE(opened_, QList<QUrl>{QUrl::fromLocalFile(folder_.path())});
    }

    void aFileThatIsGoneIsNamed() {
        const QString gone = folder_.filePath(QStringLiteral("gone.pdf"));
        QVERIFY(platform::showFile(gone).contains(gone));
        QVERIFY(opened_.isEmpty());
    }

private:
    [[nodiscard]] QString record() const { return folder_.filePath(QStringLiteral("record 1 %.pdf")); }

    QTemporaryDir folder_;
    QList<QUrl> opened_;
};

QTEST_MAIN(SharingTest)
#include "sharing_test.moc"
