// Saying, undo, and the snapshot of the open job.
#include "qml/shell/session.h"

#include "core/journal/say.h"
#include "qml/shell/photofile.h"

#include <QFile>

#include <array>
#include <utility>

namespace undercowl::ui {

namespace {

Result<SnapshotPtr> readSnapshot(const ShopStore& store, const Id& id) {
    auto job = store.job(id);
    if (!job)
        return tl::unexpected(job.error());
    auto snapshot = std::make_shared<Snapshot>();
    snapshot->job = std::move(*job);
    if (!snapshot->job.machine.empty()) {
        auto machine = store.machine(snapshot->job.machine);
        if (!machine)
            return tl::unexpected(machine.error());
        snapshot->machine = std::move(*machine);
    }
    if (!snapshot->job.owner.empty()) {
        auto owner = store.owner(snapshot->job.owner);
        if (!owner)
            return tl::unexpected(owner.error());
        snapshot->owner = std::move(*owner);
    }
    snapshot->standing = job::standing(snapshot->job);
    return SnapshotPtr(std::move(snapshot));
}

} // namespace

void ShopSession::sayFrom(MakeEntries make, SayOptions options, std::function<void(const Entries&)> then) {
    clearProblem();
    ++underway_;
    setSaving(Saving::Underway);
    worker_.give([this, make = std::move(make), options = std::move(options), then = std::move(then),
                  open = wanted_](std::unique_ptr<ShopStore>& store) {
        Entries entries = tl::unexpected(store::Problem{store::Fault::CannotOpen, "the store is not open"});
        SnapshotPtr snapshot;
        if (store != nullptr) {
            entries = make(*store);
            if (entries && !options.form.isEmpty())
                (void)store->dropDraft(
                    options.form.toStdString()); // a draft too many is offered again: harmless
            if (entries && !open.empty()) {
                if (auto read = readSnapshot(*store, open))
                    snapshot = std::move(*read);
            }
        }
        platform::across(this, [this, entries = std::move(entries), options, snapshot, then] {
            appended(entries, options, snapshot, then);
        });
    });
}

void ShopSession::appended(const Entries& entries, const SayOptions& options, const SnapshotPtr& snapshot,
                           const std::function<void(const Entries&)>& then) {
    --underway_;
    if (!entries) {
        report(entries.error());
        if (entries.error().fault == store::Fault::DiskFull)
            setDiskFull(true);
        setSaving(Saving::Failed);
        if (then)
            then(entries);
        return;
    }
    setDiskFull(false);
    if (!options.form.isEmpty())
        forgetDraft(options.form);
    if (snapshot && snapshot->job.id == wanted_)
        publish(snapshot);
    undoText_ = options.undoText;
    undoEntries_ = options.undoText.isEmpty() ? std::vector<journal::Entry>{} : *entries;
    if (!options.withdraws) {
        takenBack_.reset();
        if (options.undoText.isEmpty())
            steps_.clear(); // nothing before what cannot be taken back is taken back behind it
        else if (!entries->empty())
            steps_.push_back({options.undoText, *entries});
        emit stepsChanged();
    }
    emit undoChanged();
    ++savedCount_;
    if (underway_ == 0)
        setSaving(Saving::Saved);
    else
        emit savingChanged();
    emit jobsChanged();
    if (then)
        then(entries);
}

void ShopSession::say(std::vector<journal::Draft> drafts, SayOptions options,
                      std::function<void(const Entries&)> then) {
    sayFrom([drafts = std::move(drafts)](ShopStore& store) -> Entries { return store.append(drafts); },
            std::move(options), std::move(then));
}

Id ShopSession::keepPhoto(PhotoToKeep photo, SayOptions options, std::function<void(const Entries&)> then) {
    const Id id = newId();
    sayFrom(
        [photo = std::move(photo), id,
         location = setting(QStringLiteral("location")) == u"kept"](ShopStore& store) -> Entries {
            auto read = readPhotoFile(photo.file, location);
            if (!read)
                return tl::unexpected(read.error());
            auto media =
                store.keepMedia(std::as_bytes(std::span(read->bytes.constData(),
                                                        static_cast<std::size_t>(read->bytes.size()))),
                                read->suffix);
            if (!media)
                return tl::unexpected(media.error());
            job::Photo said;
            said.id = id;
            said.media = media->name;
            said.purpose = photo.purpose;
            said.about = photo.about;
            said.note = photo.note.trimmed().toStdString();
            said.width = read->width;
            said.height = read->height;
            said.takenAt = read->takenAt;
            auto entries = store.append(std::array{journal::photoTaken(photo.job, said)});
            if (entries && photo.ours)
                QFile::remove(photo.file); // its content is in the store now
            return entries;
        },
        std::move(options), std::move(then));
    return id;
}

void ShopSession::withdraw(const Step& step, const QString& undoText, std::function<void(bool)> then) {
    std::vector<journal::Draft> drafts;
    for (auto entry = step.entries.rbegin(); entry != step.entries.rend(); ++entry)
        drafts.push_back(journal::withdrawn(entry->stream, entry->id));
    undoEntries_.clear();
    undoText_.clear();
    emit undoChanged();
    say(std::move(drafts), {.undoText = undoText, .form = {}, .withdraws = true},
        [then = std::move(then)](const Entries& said) { then(said.has_value()); });
}

void ShopSession::undoLast() {
    const Step last{undoText_, undoEntries_};
    if (last.entries.empty())
        return;
    if (const auto back = std::exchange(takenBack_, std::nullopt)) {
        withdraw(last, tr("Brought back"), [this, back = *back, open = wanted_](bool saved) {
            stands(saved && open == wanted_ ? std::optional(back) : std::nullopt);
        });
        return;
    }
    if (steps_.empty() || steps_.back().entries.front().id != last.entries.front().id)
        steps_.push_back(last); // of the job that was open before
    takeBack();
}

void ShopSession::takeBack() {
    if (steps_.empty())
        return;
    const Step step = std::move(steps_.back());
    steps_.pop_back();
    takenBack_ = step;
    emit stepsChanged();
    withdraw(step, tr("Undone: %1").arg(step.text), [this, step, open = wanted_](bool saved) {
        stands(!saved && open == wanted_ ? std::optional(step) : std::nullopt);
    });
}

void ShopSession::stands(const std::optional<Step>& step) {
    if (!step)
        return;
    takenBack_.reset();
    steps_.push_back(*step);
    emit stepsChanged();
}

QString ShopSession::takeBackText() const {
    return steps_.empty() ? QString() : steps_.back().text;
}

// Another job is opened: what was said of it already, such as that it was taken in, is what can be taken
// back.
void ShopSession::forgetSteps() {
    std::erase_if(steps_, [this](const Step& step) { return step.entries.front().stream != wanted_; });
    emit stepsChanged();
}

void ShopSession::openJob(const QString& id) {
    wanted_ = id.toStdString();
    if (snapshot_ && snapshot_->job.id == wanted_)
        return;
    forgetSteps();
    if (snapshot_)
        publish(nullptr);
    opening_ = true;
    emit openingChanged();
    ask(
        this, [id = wanted_](ShopStore& store) { return std::pair(id, readSnapshot(store, id)); },
        [this](const std::pair<Id, Result<SnapshotPtr>>& read) {
            if (read.first != wanted_ || (snapshot_ && snapshot_->job.id == wanted_))
                return; // too late, or asked for twice
            opening_ = false;
            emit openingChanged();
            if (read.second)
                publish(*read.second);
            else
                report(read.second.error());
        });
}

void ShopSession::closeJob() {
    wanted_.clear();
    forgetSteps();
    opening_ = false;
    emit openingChanged();
    if (snapshot_)
        publish(nullptr);
}

void ShopSession::publish(SnapshotPtr snapshot) {
    snapshot_ = std::move(snapshot);
    emit jobChanged();
}

void ShopSession::setSaving(Saving saving) {
    saving_ = saving;
    emit savingChanged();
}

} // namespace undercowl::ui
