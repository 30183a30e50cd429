#include "qml/backup/backupview.h"

#include "platform/threads/across.h"
#include "qml/shell/words.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QPointer>
#include <QStandardPaths>
#include <QStorageInfo>

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

// Looks at disks in the background; 'then' has what was found, unless the view is gone by then.
void lookAtDisks(BackupView* view, auto look, auto then) {
    platform::offTouch([self = QPointer(view), look = std::move(look), then = std::move(then)] {
        platform::toTouch([self, then, found = look()] {
            if (self != nullptr)
                then(found);
        });
    });
}

} // namespace

BackupView::~BackupView() {
    cancel();
}

void BackupView::componentComplete() {
    places_.push_back(
        {tr("This device"), QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)});
    lastCopy_ = tr("looking ...");
    lookThere();
    lookAtDisks(
        this,
        [shop = session_->folder(), chosen = session_->setting(placeSetting), now = session_->now()] {
            Seen seen;
            for (const QStorageInfo& volume : QStorageInfo::mountedVolumes())
                if (isPutIn(volume))
                    seen.putIn.push_back({volume.displayName(), volume.rootPath()});
            const auto copies = store::rollingBackups(shop);
            seen.lastCopy = copies.empty() ? tr("none yet") : when(copies.front().at, now);
            seen.chosenIsThere = !chosen.isEmpty() && QFileInfo(chosen).isDir();
            return seen;
        },
        [this](const Seen& seen) { show(seen); });
}

void BackupView::show(const Seen& seen) {
    lastCopy_ = seen.lastCopy;
    places_.insert(places_.end(), seen.putIn.begin(), seen.putIn.end());
    const QString chosen = session_->setting(placeSetting);
    auto at = std::ranges::find(places_, chosen, &Place::folder);
    if (at == places_.end() && seen.chosenIsThere)
        at = places_.insert(at, {QDir(chosen).dirName(), chosen});
    if (at != places_.end())
        place_ = static_cast<int>(at - places_.begin());
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
    emit changed();
    const QString place = places_[static_cast<std::size_t>(place_)].folder;
    lookAtDisks(
        this,
        [folder = QDir(place)] {
            std::vector<std::filesystem::path> found;
            for (const QString& name :
                 folder.entryList({QStringLiteral("undercowl-*.backup")}, QDir::Files, QDir::Name))
                found.emplace_back(folder.filePath(name).toStdString());
            return found;
        },
        [this, place](const std::vector<std::filesystem::path>& found) {
            if (places_[static_cast<std::size_t>(place_)].folder != place)
                return; // another place was chosen meanwhile
            earlier_ = found;
            emit changed();
        });
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
    platform::offTouch([=, this, shop = session_->folder(), cancelled = cancelled_, told = -1]() mutable {
        wish.progress = [&](std::size_t done, std::size_t total) {
            const int now = total == 0 ? 100 : static_cast<int>(done * 100 / total);
            if (now != std::exchange(told, now))
                platform::toTouch([=, this] {
                    if (self != nullptr) {
                        progress_ = now / 100.0;
                        emit progressed();
                    }
                });
            return !cancelled->load();
        };
        QDir().mkpath(folder);
        auto made = store::Store::open(shop).and_then(
            [&](const store::Store& store) { return store::writeBackup(store, file.toStdString(), wish); });
        platform::toTouch([=, this, made = std::move(made)] {
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
            result_ += u'\n' + tr("Not in it: %1").arg(coreWords(fault));
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
