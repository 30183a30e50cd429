#include "qml/backup/restoreview.h"

#include "platform/threads/across.h"
#include "qml/backup/found.h"
#include "qml/shell/words.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace undercowl::ui {

namespace {

using std::filesystem::path;

QString noRoom() {
    return RestoreView::tr("There is no room on this device for the shop. Make room, then try again.");
}

QString whyNoSalvage(const store::Problem& problem) {
    switch (problem.fault) {
    case store::Fault::TooNew:
        return RestoreView::tr("The shop was written by a newer version. Bring this app up to date.");
    case store::Fault::DiskFull: return noRoom();
    case store::Fault::Damaged:
    case store::Fault::NotFound:
        return RestoreView::tr(
            "Nothing of the shop on this device can be read any more. Bring a backup back.");
    default: return coreWords(problem.message);
    }
}

} // namespace

RestoreView::~RestoreView() {
    cancel();
}

path RestoreView::home() const {
    return shops_ == nullptr ? session_->folder() : shops_->home();
}

QString RestoreView::here() const {
    return session_ == nullptr ? QString() : folderName(session_->folder());
}

QString RestoreView::goesOnWith() const {
    return folderName(goesOnWith_);
}

void RestoreView::componentComplete() {
    emit changed();
    ++looking_;
    lookAtDisks(
        this,
        [chosen = session_->setting(backupPlaceSetting)] { return backupsIn(backupPlaces(chosen, false)); },
        [this](const std::vector<Line>& found) {
            --looking_;
            backups_.setLines(found);
            emit looked();
        });
    lookForShops();
}

void RestoreView::lookForShops() {
    ++looking_;
    emit looked();
    lookAtDisks(
        this, [home = home(), present = session_->folder()] { return shopsOf(home, present); },
        [this](const std::vector<Line>& found) {
            --looking_;
            earlier_.setLines(found);
            emit looked();
        });
}

void RestoreView::goTo(Step step) {
    step_ = step;
    emit changed();
}

bool RestoreView::busy() const {
    return step_ == Step::Working || step_ == Step::Removing || step_ == Step::Switching;
}

void RestoreView::choose(const QString& file) {
    if (busy())
        return;
    lookAtDisks(
        this, [file] { return lookAtBackup(file, QDir(QFileInfo(file).path()).dirName()).line; },
        [this](const Line& line) {
            if (busy())
                return;
            chooseOther();
            chosen_ = line;
            if (line.mark == wrongMark)
                problem_ = tr("This file is no backup of a shop, or damaged at its very beginning. Choose "
                              "another one.");
            goTo(Step::Backup);
        });
}

void RestoreView::chooseShop(const QString& folder) {
    const auto line = std::ranges::find(earlier_.lines(), folder, &Line::id);
    if (line == earlier_.lines().end() || busy())
        return;
    const Line& shop = *line; // of a list that stays
    chooseOther();
    chosen_ = shop;
    goesOnWith_ = pathOf(folder);
    goTo(Step::Shop);
}

void RestoreView::chooseOther() {
    if (busy())
        return;
    chosen_ = {};
    problem_.clear();
    result_.clear();
    passphraseError_.clear();
    goesOnWith_.clear();
    goTo(Step::Choose);
}

void RestoreView::retype() {
    passphraseError_.clear();
    emit changed();
}

void RestoreView::bringBack(const QString& passphrase, bool incomplete) {
    if (step_ != (incomplete ? Step::Damaged : Step::Backup) || chosen_.mark == wrongMark)
        return;
    passphraseError_.clear();
    work(
        [incomplete, file = pathOf(chosen_.id), home = home(), now = session_->now(),
         word = passphrase.toStdString()](const store::Progress& progress) {
            Outcome outcome;
            if (const auto set = store::withEarlier(file, word, [&] { return progress(0, 1); }); set) {
                store::clearCutOff(home);
                outcome.folder = store::newShopFolder(home, now);
                outcome.wanting = set->wanting;
                outcome.restored =
                    store::restoreBackup(set->files, outcome.folder, word, incomplete, progress);
            } else {
                outcome.passphraseFits = set.error().fault != store::Fault::Refused || word.empty();
                outcome.restored = tl::unexpected(set.error());
            }
            return outcome;
        },
        [this, incomplete](const Outcome& outcome) { ended(outcome, incomplete); });
}

void RestoreView::work(std::function<Outcome(const store::Progress&)> work,
                       std::function<void(const Outcome&)> then) {
    progress_ = 0;
    problem_.clear();
    cancelled_ = std::make_shared<std::atomic_bool>(false);
    emit progressed();
    goTo(Step::Working);
    const QPointer self(this);
    platform::offTouch([this, self, work = std::move(work), then = std::move(then), cancelled = cancelled_,
                        told = -1]() mutable {
        const store::Progress progress = [&](std::size_t done, std::size_t total) {
            const int percent = total == 0 ? 100 : static_cast<int>(done * 100 / total);
            if (percent != std::exchange(told, percent))
                platform::toTouch([this, self, percent] {
                    if (self != nullptr) {
                        progress_ = percent / 100.0;
                        emit progressed();
                    }
                });
            return !cancelled->load();
        };
        platform::toTouch([self, then, outcome = work(progress)] {
            if (self != nullptr)
                then(outcome);
        });
    });
}

bool RestoreView::damaged() const {
    // A full disk keeps a whole shop from being opened.
    return session_ != nullptr && (session_->state() == ShopSession::State::Failed ||
                                   (session_->readOnly() && !session_->diskFull()));
}

void RestoreView::salvage() {
    if (step_ != Step::Choose || !damaged())
        return;
    chosen_ = {.id = here(), .title = tr("What can be read of the shop on this device"), .detail = here()};
    work(
        [from = session_->folder(), home = home(), now = session_->now()](const store::Progress& progress) {
            store::clearCutOff(home);
            Outcome outcome;
            outcome.folder = store::newShopFolder(home, now);
            outcome.salvaged = store::salvage(from, outcome.folder, {}, {}, progress);
            return outcome;
        },
        [this](const Outcome& outcome) { salvaged(outcome); });
}

void RestoreView::salvaged(const Outcome& outcome) {
    const store::Result<store::Salvaged>& made = *outcome.salvaged;
    if (!made) {
        const bool stopped = cancelled_->load();
        goTo(Step::Choose);
        chooseOther();
        problem_ = stopped ? QString() : whyNoSalvage(made.error());
        emit changed();
        return;
    }
    goesOnWith_ = outcome.folder;
    result_ = tr("A new shop of what can be read: %n entries.", nullptr, static_cast<int>(made->entries));
    if (made->fromBackups > 0)
        result_ += u'\n' + tr("%n of them only the copies beside it still had.", nullptr,
                              static_cast<int>(made->fromBackups));
    if (const auto faults = made->faults.size() + made->report.faults.size(); faults > 0)
        result_ += u'\n' + tr("%n things in it are missing or damaged.", nullptr, static_cast<int>(faults));
    goTo(Step::Partly);
}

void RestoreView::ended(const Outcome& outcome, bool incomplete) {
    if (!outcome.restored) {
        refused(outcome, incomplete);
        return;
    }
    const store::Restored& restored = *outcome.restored;
    goesOnWith_ = outcome.folder;
    const bool whole = restored.missing.empty() && restored.damage.empty() && restored.report.sound();
    if (whole && !cancelled_->load()) {
        goOn();
        return;
    }
    result_ =
        tr("Brought back as it was on %1: %n entries.", nullptr, static_cast<int>(restored.report.entries))
            .arg(moment(restored.from.at));
    if (!restored.damage.empty())
        result_ += u'\n' + tr("%n places of the backup could not be read.", nullptr,
                              static_cast<int>(restored.damage.size()));
    if (!restored.missing.empty())
        result_ += u'\n' + tr("%n photos or memos are in none of the backups here.", nullptr,
                              static_cast<int>(restored.missing.size()));
    const auto faults = static_cast<int>(restored.report.faults.size());
    if (restored.missing.empty() && faults > 0)
        result_ += u'\n' + tr("%n things in it are missing or damaged.", nullptr, faults);
    goTo(Step::Partly);
}

void RestoreView::refused(const Outcome& outcome, bool incomplete) {
    const store::Problem& problem = outcome.restored.error();
    Step next = incomplete ? Step::Damaged : Step::Backup;
    if (cancelled_->load()) {
        // as it was before
    } else if (sealed() && !outcome.passphraseFits) {
        passphraseError_ =
            tr("This passphrase does not fit: look at each letter, large or small. If it is right, the "
               "file is damaged at its beginning.");
    } else if (problem.fault == store::Fault::Refused || problem.fault == store::Fault::Damaged) {
        if (incomplete)
            problem_ =
                tr("Nothing of this backup can be read any more. Choose another one; this device holds "
                   "what it held before.");
        else if (outcome.wanting > 0)
            problem_ =
                tr("Some of its photos and memos are in earlier backups, of which %n are not in the same "
                   "folder. Put them there, or bring back what is here.",
                   nullptr, static_cast<int>(outcome.wanting));
        else
            problem_ =
                tr("The backup is damaged or cut short. If there is another one, take that. Nothing was "
                   "changed on this device.");
        next = incomplete ? Step::Backup : Step::Damaged;
    } else if (problem.fault == store::Fault::DiskFull) {
        problem_ = noRoom();
    } else if (problem.fault == store::Fault::TooNew) {
        problem_ = tr("The backup was written by a newer version. Bring this app up to date.");
    } else if (problem.fault == store::Fault::NotFound) {
        problem_ = tr("The file is not there any more. Put the stick or the card in again.");
    } else {
        problem_ = coreWords(problem.message);
    }
    goTo(next);
}

void RestoreView::cancel() {
    if (cancelled_ != nullptr)
        cancelled_->store(true);
}

void RestoreView::askToRemove() {
    if (removable())
        goTo(Step::Remove);
}

void RestoreView::remove() {
    if (step_ != Step::Remove)
        return;
    goTo(Step::Removing);
    lookAtDisks(
        this,
        [home = home(), folder = goesOnWith_, present = session_->folder()]() -> store::Result<void> {
            std::error_code error;
            // The app may be on a folder that was named for this run, whatever is the current one.
            if (std::filesystem::equivalent(folder, present, error))
                return store::failed(store::Fault::Refused,
                                     folder.string() + " is the current shop: go on with another one first");
            auto removed = store::removeShop(home, folder);
            if (removed) // where photos of it lay until they were kept; what is not empty stays
                std::filesystem::remove(folder.string() + "-taken", error);
            return removed;
        },
        [this](const store::Result<void>& removed) {
            goTo(Step::Choose);
            chooseOther();
            if (!removed)
                session_->report(removed.error());
            lookForShops();
        });
}

void RestoreView::goOn() {
    if (step_ == Step::Remove || step_ == Step::Removing || step_ == Step::Switching)
        return;
    const Step before = step_ == Step::Working ? Step::Partly : step_;
    if (goesOnWith_.empty() || shops_ == nullptr) {
        goTo(before);
        return;
    }
    step_ = Step::Switching;
    emit changed();
    lookAtDisks(
        this,
        [keeps = shops_->keeps(), home = home(), folder = goesOnWith_] {
            return keeps ? store::chooseShop(home, folder) : store::Result<void>{};
        },
        [this, before](const store::Result<void>& chosen) {
            if (!chosen) {
                session_->report(chosen.error());
                goTo(before);
            } else if (shops_ != nullptr) {
                shops_->goOnWith(goesOnWith_);
            }
        });
}

} // namespace undercowl::ui
