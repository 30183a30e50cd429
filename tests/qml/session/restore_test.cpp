// More than 400 lines: every case walks the same page and shares its shops, its stick and its clock.
// A shop brought back from the screen: what is found, what keeps it from coming back, and that the present
// shop is never touched.
#include "core/journal/say.h"
#include "core/store/shops.h"
#include "qml/backup/restoreview.h"
#include "qml/shell/picturefolder.h"
#include "qml/shell/session.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QThreadPool>

#include <memory>
#include <span>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

constexpr auto passphrase = "four wet spark plugs";
constexpr int aWhile = 20'000; // ms: a sealed backup's key takes its time on a slow machine

QString text(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

QByteArray contentOf(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void put(const QString& name, const QByteArray& content) {
    QFile file(name);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(content);
}

std::size_t jobsIn(const std::filesystem::path& shop) {
    return store::Store::open(shop)->jobs()->size();
}

} // namespace

class RestoreTest : public QObject {
    Q_OBJECT

private slots:
    void backupsAreFoundNewestFirst() {
        write("undercowl-2026-11-20-101500.backup", {});
        now_ += 60'000;
        sayJob("2026-002");
        write("tuesday.backup", {});
        write("undercowl-2020-01-02-030405.backup", passphrase); // says by its name alone when it was made
        put(stick("undercowl-2019-01-01-000000.backup"), "no backup at all");
        put(stick("letter.txt"), "no backup either");
        begin();
        QTRY_VERIFY(!view_->looking());
        const auto& found = view_->backups()->lines();
        QCOMPARE(found.size(), std::size_t{4});
        QCOMPARE(found[0].id, stick("tuesday.backup"));
        QVERIFY2(found[0].detail.contains(QStringLiteral("tuesday.backup\nstick, ")),
                 qPrintable(found[0].detail));
        QCOMPARE(found[0].mark, QString());
        QCOMPARE(found[1].id, stick("undercowl-2026-11-20-101500.backup"));
        QCOMPARE(found[2].mark, QStringLiteral("sealed"));
        QVERIFY2(found[2].title.startsWith(QStringLiteral("2 Jan 2020, 03:04")), qPrintable(found[2].title));
        QCOMPARE(found[3].mark, QStringLiteral("wrong"));
        QCOMPARE(view_->earlier()->count(), 0);

        view_->choose(found[3].id);
        QTRY_VERIFY(!view_->problem().isEmpty());
        view_->bringBack({}, false);
        QCOMPARE(view_->step(), RestoreView::Step::Backup); // there is nothing to try
    }

    void aShopComesBackBesideThePresentOneAndIsGoneOnWith() {
        write("1.backup", {});
        sayJob("2026-002");
        begin();
        const QByteArray before = contentOf(text(folder_ / "shop.db"));
        choose("1.backup");
        QVERIFY(!view_->sealed());
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->bringBack({}, false);
        QCOMPARE(view_->step(), RestoreView::Step::Working);
        view_->chooseOther(); // too late
        QCOMPARE(view_->step(), RestoreView::Step::Working);
        QTRY_COMPARE_WITH_TIMEOUT(wanted.size(), 1, aWhile);
        QCOMPARE(view_->progress(), 1.0);
        const auto restored = store::currentShop(folder_);
        QVERIFY(restored != folder_);
        QCOMPARE(view_->goesOnWith(), text(restored));
        QCOMPARE(jobsIn(restored), std::size_t{1});
        QCOMPARE(jobsIn(folder_), std::size_t{2});
        QCOMPARE(contentOf(text(folder_ / "shop.db")), before);

        // From there the earlier one is a touch away.
        begin(restored);
        QTRY_COMPARE(view_->earlier()->count(), 1);
        const Line line = view_->earlier()->lines().at(0);
        QVERIFY2(line.title.startsWith(QStringLiteral("2 jobs, last worked on ")), qPrintable(line.title));
        view_->chooseShop(line.id);
        QCOMPARE(view_->step(), RestoreView::Step::Shop);
        QCOMPARE(store::currentShop(folder_), restored); // not yet
        view_->goOn();
        QTRY_COMPARE(wanted.size(), 2);
        QCOMPARE(store::currentShop(folder_), folder_);
    }

    void anEarlierShopIsRemovedByASecondActAndThePresentOneNever() {
        write("1.backup", {});
        begin();
        choose("1.backup");
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->bringBack({}, false);
        QTRY_COMPARE_WITH_TIMEOUT(wanted.size(), 1, aWhile);
        const auto restored = store::currentShop(folder_);
        begin(restored);
        QTRY_COMPARE(view_->earlier()->count(), 1);
        const Line line = view_->earlier()->lines().at(0);
        QCOMPARE(line.id, text(folder_));
        QVERIFY2(line.detail.contains(QStringLiteral("KiB")), qPrintable(line.detail));
        view_->remove(); // none was chosen
        view_->chooseShop(line.id);
        view_->remove(); // nor asked for
        QCOMPARE(view_->step(), RestoreView::Step::Shop);
        QVERIFY(view_->removable());
        view_->askToRemove();
        QCOMPARE(view_->step(), RestoreView::Step::Remove);
        view_->goOn(); // that was another button
        QCOMPARE(view_->step(), RestoreView::Step::Remove);
        view_->chooseOther();
        view_->chooseShop(line.id);
        view_->askToRemove();
        QCOMPARE(folders(), 2);
        view_->remove();
        QCOMPARE(view_->step(), RestoreView::Step::Removing);
        QTRY_COMPARE(view_->step(), RestoreView::Step::Choose);
        QTRY_COMPARE(view_->earlier()->count(), 0);
        QCOMPARE(folders(), 1);
        QCOMPARE(store::currentShop(folder_), restored);
        QCOMPARE(jobsIn(restored), std::size_t{1});
        QVERIFY(session_->problem().isEmpty());
    }

    void anAppOnAFolderOfItsOwnRemembersNoOther() {
        write("1.backup", {});
        ShopSwitch given(folder_, false);
        begin();
        view_->setShops(&given);
        choose("1.backup");
        QSignalSpy wanted(&given, &ShopSwitch::wanted);
        view_->bringBack({}, false);
        QTRY_COMPARE_WITH_TIMEOUT(wanted.size(), 1, aWhile);
        const auto restored = view_->goesOnWith().toStdString();
        QCOMPARE(jobsIn(restored), std::size_t{1});
        QCOMPARE(store::currentShop(folder_), folder_);
        // The one that it opens again at its next start is not offered for removal.
        begin(restored);
        view_->setShops(&given);
        QTRY_COMPARE(view_->earlier()->count(), 1);
        const Line line = view_->earlier()->lines().at(0);
        QVERIFY2(line.detail.contains(QStringLiteral("next start")), qPrintable(line.detail));
        view_->chooseShop(line.id);
        QVERIFY(!view_->removable());
        view_->askToRemove();
        QCOMPARE(view_->step(), RestoreView::Step::Shop);
    }

    void aWrongPassphraseIsToldAndCanBeTypedAgain() {
        write("1.backup", passphrase);
        begin();
        choose("1.backup");
        QVERIFY(view_->sealed());
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->bringBack(QStringLiteral("three wet spark plugs"), false);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Backup, aWhile);
        QVERIFY2(view_->passphraseError().contains(QStringLiteral("does not fit")),
                 qPrintable(view_->passphraseError()));
        QVERIFY(view_->problem().isEmpty());
        QCOMPARE(folders(), 1);
        view_->retype();
        QVERIFY(view_->passphraseError().isEmpty());
        view_->bringBack(QString::fromLatin1(passphrase), false);
        QTRY_COMPARE_WITH_TIMEOUT(wanted.size(), 1, aWhile);
        QCOMPARE(jobsIn(store::currentShop(folder_)), std::size_t{1});
    }

    void earlierBackupsOfThePlaceComeWithIt() {
        keepPhoto("as found");
        write("1.backup", passphrase);
        now_ += 60'000;
        keepPhoto("the connector");
        write("2.backup", passphrase, {stick("1.backup")});
        begin();
        choose("2.backup");
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->bringBack(QString::fromLatin1(passphrase), false);
        QTRY_COMPARE_WITH_TIMEOUT(wanted.size(), 1, aWhile);
        QVERIFY(store::Store::open(store::currentShop(folder_))->check()->sound());
    }

    void whatIsMissingIsToldAndTheRestComesBackByASecondAct() {
        keepPhoto("as found");
        write("1.backup", {});
        now_ += 60'000;
        keepPhoto("the connector");
        write("2.backup", {}, {stick("1.backup")});
        QVERIFY(QFile::remove(stick("1.backup")));
        begin();
        choose("2.backup");
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->bringBack({}, true);
        QCOMPARE(view_->step(), RestoreView::Step::Backup); // not at the first touch
        view_->bringBack({}, false);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Damaged, aWhile);
        QVERIFY2(view_->problem().contains(QStringLiteral("of which 1 are not")),
                 qPrintable(view_->problem()));
        QCOMPARE(folders(), 1);
        view_->bringBack({}, true);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Partly, aWhile);
        QVERIFY2(view_->result().contains(QStringLiteral("1 photos or memos are in none")),
                 qPrintable(view_->result()));
        QCOMPARE(wanted.size(), 0);
        QCOMPARE(store::currentShop(folder_), folder_); // until that was read
        view_->goOn();
        QTRY_COMPARE(wanted.size(), 1);
        QCOMPARE(jobsIn(store::currentShop(folder_)), std::size_t{1});
    }

    void aDamagedOneGivesWhatCanBeRead() {
        write("1.backup", {});
        QByteArray content = contentOf(stick("1.backup"));
        content.replace(content.indexOf("SQLite format 3"), 6, "sqlite");
        put(stick("1.backup"), content);
        begin();
        choose("1.backup");
        view_->bringBack({}, false);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Damaged, aWhile);
        QVERIFY2(view_->problem().contains(QStringLiteral("damaged or cut short")),
                 qPrintable(view_->problem()));
        view_->bringBack({}, true);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Partly, aWhile);
        QVERIFY2(view_->result().contains(QStringLiteral("could not be read")), qPrintable(view_->result()));
        QCOMPARE(jobsIn(view_->goesOnWith().toStdString()), std::size_t{1});
    }

    void whereNothingCanBeReadThatIsSaid() {
        write("1.backup", {});
        put(stick("1.backup"), contentOf(stick("1.backup")).left(1536)); // its head, and no more
        begin();
        choose("1.backup");
        view_->bringBack({}, false);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Damaged, aWhile);
        view_->bringBack({}, true);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Backup, aWhile);
        QVERIFY2(view_->problem().contains(QStringLiteral("Nothing of this backup")),
                 qPrintable(view_->problem()));
        QCOMPARE(folders(), 1);
    }

    void stoppedItLeavesNothing() {
        keepPhoto(std::string(3'000'000, 'x'));
        write("1.backup", {});
        begin();
        choose("1.backup");
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->bringBack({}, false);
        view_->cancel();
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Backup, aWhile);
        QVERIFY2(view_->problem().isEmpty(), qPrintable(view_->problem()));
        QCOMPARE(folders(), 1);
        QCOMPARE(wanted.size(), 0);
    }

    void aShopThatCannotBeOpenedIsNoObstacle() {
        write("1.backup", {});
        put(text(folder_ / "shop.db"), "not even a database any more");
        begin({}, ShopSession::State::Failed);
        choose("1.backup");
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->bringBack({}, false);
        QTRY_COMPARE_WITH_TIMEOUT(wanted.size(), 1, aWhile);
        QCOMPARE(jobsIn(store::currentShop(folder_)), std::size_t{1});
        QCOMPARE(contentOf(text(folder_ / "shop.db")), QByteArray("not even a database any more"));
    }

    void ofADamagedShopANewOneIsMade() {
        keepPhoto("as found");
        QVERIFY(store::backUpDatabase(open()));
        begin();
        QVERIFY(!view_->damaged());
        view_->salvage(); // of a whole one there is no need
        QCOMPARE(view_->step(), RestoreView::Step::Choose);
        session_.reset();

        put(text(folder_ / "shop.db"), "not even a database any more");
        begin();
        QVERIFY(session_->readOnly());
        QVERIFY(view_->damaged());
        QSignalSpy wanted(shops_.get(), &ShopSwitch::wanted);
        view_->salvage();
        QCOMPARE(view_->step(), RestoreView::Step::Working);
        QTRY_COMPARE_WITH_TIMEOUT(view_->step(), RestoreView::Step::Partly, aWhile);
        QVERIFY2(view_->result().contains(QStringLiteral("3 of them only the copies")),
                 qPrintable(view_->result()));
        QCOMPARE(store::currentShop(folder_), folder_); // until that was read
        view_->goOn();
        QTRY_COMPARE(wanted.size(), 1);
        const auto made = store::Store::open(store::currentShop(folder_));
        QCOMPARE(made->jobs()->size(), std::size_t{1});
        QVERIFY(made->check()->sound()); // its photo too
        QVERIFY(!made->mechanic().empty());
        QCOMPARE(contentOf(text(folder_ / "shop.db")), QByteArray("not even a database any more"));
    }

    void aShopOfWhichNothingCanBeReadIsNotMadeAnew() {
        put(text(folder_ / "shop.db"), "not even a database any more");
        begin({}, ShopSession::State::Failed);
        QVERIFY(view_->damaged());
        view_->salvage();
        QTRY_VERIFY_WITH_TIMEOUT(!view_->problem().isEmpty(), aWhile);
        QCOMPARE(view_->step(), RestoreView::Step::Choose);
        QCOMPARE(folders(), 1);
    }

    void aBackupIsLookedForInOtherFoldersToo() {
        write("1.backup", {});
        put(stick("letter.txt"), "no backup");
        QDir(stick({})).mkdir(QStringLiteral("older"));
        PictureFolder chooser;
        chooser.setProperty("names", QStringList{QStringLiteral("*.backup")});
        chooser.setFolder(stick({}));
        QTRY_COMPARE(chooser.entries()->count(), 2);
        QCOMPARE(chooser.entries()->lines()[0].mark, QStringLiteral("folder"));
        QCOMPARE(chooser.entries()->lines()[1].id, stick("1.backup"));
        QCOMPARE(chooser.entries()->lines()[1].mark, QStringLiteral("file"));
    }

    void init() {
        dir_ = std::make_unique<QTemporaryDir>();
        qputenv("HOME", dir_->path().toLocal8Bit()); // its documents are a place that is looked into
        QDir(dir_->path()).mkpath(QStringLiteral("stick"));
        QDir(dir_->path()).mkpath(QStringLiteral("shops"));
        folder_ = dir_->filePath(QStringLiteral("shops/shop")).toStdString();
        shops_ = std::make_unique<ShopSwitch>(folder_, true);
        now_ = 1'795'780'800'000;
        auto store = open();
        const job::Mechanic mechanic{store.newId(), "Ada"};
        QVERIFY(store.append(journal::mechanicNamed(mechanic)));
        QVERIFY(store.chooseMechanic(mechanic.id));
        sayJob("2026-001");
    }
    void cleanup() {
        view_.reset();
        session_.reset();
        QThreadPool::globalInstance()->waitForDone();
        dir_.reset();
    }

private:
    [[nodiscard]] store::WallClock clock() const {
        return [now = now_] { return now; };
    }
    [[nodiscard]] store::Store open() const { return std::move(*store::Store::open(folder_, clock())); }
    [[nodiscard]] QString stick(const QString& name) const {
        return dir_->filePath(QStringLiteral("stick/")) + name;
    }
    void sayJob(const std::string& number) {
        auto store = open();
        job_ = store.newId();
        QVERIFY(store.append(journal::jobOpened(job_, {.number = number})));
    }
    void keepPhoto(const std::string& content) {
        auto store = open();
        const auto media = store.keepMedia(std::as_bytes(std::span(content)), "jpg");
        QVERIFY(media);
        QVERIFY(
            store.append(journal::photoTaken(job_, {store.newId(), media->name, {}, {}, {}, 4, 3, 0, {}})));
    }
    void write(const QString& name, const std::string& word, const QStringList& earlier = {}) {
        store::BackupWish wish;
        wish.passphrase = word;
        wish.earlierPassphrase = word;
        wish.cost = {1, 8192}; // cheap: what is tested is not how long guessing takes
        for (const QString& file : earlier)
            wish.earlier.emplace_back(file.toStdString());
        const auto made = store::writeBackup(open(), stick(name).toStdString(), wish);
        QVERIFY2(made, made ? "" : made.error().message.c_str());
    }
    // The page on the shop in the folder.
    void begin(const std::filesystem::path& shop = {}, ShopSession::State state = ShopSession::State::Ready) {
        view_.reset();
        const auto folder = shop.empty() ? folder_ : shop;
        session_ = std::make_unique<ShopSession>(shopInFolder(folder), folder, clock());
        QTRY_COMPARE(session_->state(), state);
        if (state == ShopSession::State::Ready && !session_->readOnly())
            session_->set(QStringLiteral("backup-place"), dir_->filePath(QStringLiteral("stick")));
        view_ = std::make_unique<RestoreView>();
        view_->setProperty("session", QVariant::fromValue(session_.get()));
        view_->setShops(shops_.get());
        view_->componentComplete();
    }
    void choose(const QString& name) {
        view_->choose(stick(name));
        QTRY_COMPARE(view_->step(), RestoreView::Step::Backup);
    }
    // Beside one another, those that were cut off too.
    [[nodiscard]] int folders() const {
        return static_cast<int>(QDir(dir_->filePath(QStringLiteral("shops")))
                                    .entryList(QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot)
                                    .size());
    }

    std::unique_ptr<QTemporaryDir> dir_;
    std::filesystem::path folder_;
    std::unique_ptr<ShopSwitch> shops_;
    job::TimeMs now_{};
    Id job_;
    std::unique_ptr<ShopSession> session_;
    std::unique_ptr<RestoreView> view_;
};

QTEST_GUILESS_MAIN(RestoreTest)

#include "restore_test.moc"
