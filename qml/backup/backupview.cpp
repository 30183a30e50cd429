#include "qml/backup/backupview.h"

#include "platform/threads/across.h"
#include "qml/shell/words.h"

#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

BackupView::~BackupView() {
    cancel();
}

void BackupView::componentComplete() {
    places_.push_back(thisDevice());
    lastCopy_ = tr("looking ...");
    lookThere();
    lookAtDisks(
        this,
        [shop = session_->folder(), chosen = session_->setting(backupPlaceSetting), now = session_->now()] {
            const auto copies = store::rollingBackups(shop);
            return Seen{backupPlaces(chosen, true),
                        copies.empty() ? tr("none yet") : when(copies.front().at, now)};
        },
        [this](const Seen& seen) { show(seen); });
}

void BackupView::show(const Seen& seen) {
    lastCopy_ = seen.lastCopy;
    places_ = seen.places;
    const auto at = std::ranges::find(places_, session_->setting(backupPlaceSetting), &BackupPlace::folder);
    place_ = at == places_.end() ? 0 : static_cast<int>(at - places_.begin());
    lookThere();
}

QStringList BackupView::places() const {
    QStringList names;
    for (const BackupPlace& place : places_)
        names << place.name;
    return names;
}

void BackupView::setPlace(int place) {
    if (place < 0 || place >= static_cast<int>(places_.size()) || place == place_)
        return;
    place_ = place;
    session_->set(backupPlaceSetting, places_[static_cast<std::size_t>(place)].folder);
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
