// Saying, undo, and the snapshot of the open job.
#include "qml/shell/session.h"

#include "core/journal/say.h"
#include "qml/shell/photofile.h"

#include <QFile>

#include <array>

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
        across(this, [this, entries = std::move(entries), options, snapshot, then] {
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

void ShopSession::undo(const std::vector<journal::Entry>& entries, const QString& undoText) {
    if (entries.empty())
        return;
    std::vector<journal::Draft> drafts;
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry)
        drafts.push_back(journal::withdrawn(entry->stream, entry->id));
    say(std::move(drafts), {.undoText = undoText, .form = {}});
}

void ShopSession::undoLast() {
    const auto entries = undoEntries_;
    const bool wasUndo = !entries.empty() && entries.front().kind == "entry.withdrawn";
    forgetUndo();
    undo(entries, wasUndo ? tr("Brought back") : tr("Undone"));
}

void ShopSession::forgetUndo() {
    undoEntries_.clear();
    undoText_.clear();
    emit undoChanged();
}

void ShopSession::openJob(const QString& id) {
    wanted_ = id.toStdString();
    if (snapshot_ && snapshot_->job.id == wanted_)
        return;
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
