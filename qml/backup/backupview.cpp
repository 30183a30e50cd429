#include "qml/backup/backupview.h"

#include "qml/shell/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QPointer>
#include <QStandardPaths>
#include <QStorageInfo>
#include <QThreadPool>

#include <algorithm>

namespace undercowl::ui {

namespace {

const QString placeSetting = QStringLiteral("backup-place");

// Sticks, cards and shares that were put in, as Linux and Android mount them.
bool isPutIn(const QStorageInfo& volume) {
    const QString root = volume.rootPath();
    return volume.isValid() && volume.isReady() && !volume.isReadOnly() &&
           (root.startsWith(QStringLiteral("/media/")) || root.startsWith(QStringLiteral("/run/media/")) ||
            root.startsWith(QStringLiteral("/mnt/")) || root.startsWith(QStringLiteral("/storage/")));
}

} // namespace

BackupView::~BackupView() {
    cancel();
}

void BackupView::componentComplete() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    places_.push_back({tr("This device"), documents});
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes())
        if (isPutIn(volume))
            places_.push_back({volume.displayName(), volume.rootPath()});
    const QString chosen = session_->setting(placeSetting);
    const auto at = std::ranges::find(places_, chosen, &Place::folder);
    if (at != places_.end())
        place_ = static_cast<int>(at - places_.begin());
    else if (!chosen.isEmpty() && QFileInfo(chosen).isDir())
        places_.push_back({QDir(chosen).dirName(), chosen}), place_ = static_cast<int>(places_.size()) - 1;
    const auto copies = store::rollingBackups(session_->folder());
    lastCopy_ = copies.empty() ? tr("none yet") : when(copies.front().at, session_->now());
    lookThere();
}

QStringList BackupView::places() const {
    QStringList names;
    for (const Place& place : places_)
        names << place.name;
    return names;
}

void BackupView::setPlace(int place) {
    if (place < 0 || place >= static_cast<int>(places_.size()) || place == place_)
        return;
    place_ = place;
    session_->set(placeSetting, places_[static_cast<std::size_t>(place)].folder);
    lookThere();
}

void BackupView::lookThere() {
    earlier_.clear();
    const QDir folder(places_[static_cast<std::size_t>(place_)].folder);
    for (const QString& name :
         folder.entryList({QStringLiteral("undercowl-*.backup")}, QDir::Files, QDir::Name))
        earlier_.emplace_back(folder.filePath(name).toStdString());
    emit changed();
}

QString BackupView::passphraseProblem(const QString& first, const QString& second) const {
    if (first.isEmpty() && second.isEmpty())
        return {};
    if (first.toUtf8().size() < static_cast<qsizetype>(store::shortestPassphrase))
        return tr("At least eight characters; several words are best.");
    return first == second ? QString() : tr("Type it once more, the same way.");
}

void BackupView::write(const QString& passphrase, bool onlyNew) {
    if (writing_)
        return;
    const QString folder = places_[static_cast<std::size_t>(place_)].folder;
    QDir().mkpath(folder);
    const QString file = QDir(folder).filePath(QStringLiteral("undercowl-%1.backup")
                                                   .arg(QDateTime::fromMSecsSinceEpoch(session_->now())
                                                            .toString(QStringLiteral("yyyy-MM-dd-HHmmss"))));
    writing_ = true;
    progress_ = 0;
    result_.clear();
    cancelled_ = std::make_shared<std::atomic_bool>(false);
    emit progressed();
    store::BackupWish wish;
    wish.passphrase = passphrase.toStdString();
    if (onlyNew) {
        wish.earlier = earlier_;
        wish.earlierPassphrase = wish.passphrase;
    }
    const QPointer self(this);
    const auto post = [](auto work) {
        QMetaObject::invokeMethod(QCoreApplication::instance(), std::move(work));
    };
    QThreadPool::globalInstance()->start(
        [=, this, shop = session_->folder(), cancelled = cancelled_, told = -1]() mutable {
            wish.progress = [&](std::size_t done, std::size_t total) {
                const int now = total == 0 ? 100 : static_cast<int>(done * 100 / total);
                if (now != std::exchange(told, now))
                    post([=, this] {
                        if (self != nullptr) {
                            progress_ = now / 100.0;
                            emit progressed();
                        }
                    });
                return !cancelled->load();
            };
            auto made = store::Store::open(shop).and_then([&](const store::Store& store) {
                return store::writeBackup(store, file.toStdString(), wish);
            });
            post([=, this, made = std::move(made)] {
                if (self != nullptr)
                    ended(made, file);
            });
        });
}

void BackupView::ended(const store::Result<store::BackupMade>& made, const QString& file) {
    writing_ = false;
    if (made) {
        result_ = tr("%1 was written and read again: %n photos and memos, %2.", nullptr,
                     static_cast<int>(made->mediaHere))
                      .arg(QDir::toNativeSeparators(file),
                           QLocale().formattedDataSize(static_cast<qint64>(made->bytes)));
        for (const std::string& fault : made->faults)
            result_ += u'\n' + tr("Not in it: %1").arg(text(fault));
        lookThere();
    } else if (!cancelled_->load()) {
        session_->report(made.error());
    }
    emit progressed();
}

void BackupView::cancel() {
    if (cancelled_ != nullptr)
        cancelled_->store(true);
}

} // namespace undercowl::ui
