#include "qml/shell/pendingphotos.h"

#include "core/journal/say.h"
#include "qml/shell/burst.h"
#include "qml/shell/photofile.h"
#include "qml/shell/words.h"

#include <QDir>
#include <QFileInfo>
#include <QImageReader>

#include <algorithm>
#include <map>
#include <span>

namespace undercowl::ui {

namespace {

bool alreadyKept(const job::Job& job, const std::string& media) {
    return std::ranges::find(job.photos, media, &job::Photo::media) != job.photos.end();
}

// What one touch of the shutter left behind.
struct Touch {
    QStringList files;
    Id id; // of the photo, if it is to be said
};

// On the worker. Kept: 1; kept before: 0.
Result<int> rescue(ShopStore& store, const PhotoToKeep& photo, const Id& id) {
    if (QImageReader(photo.file).read().isNull())
        return tl::unexpected(store::Problem{store::Fault::Refused, "cut short"});
    auto read = readPhotoFile(photo.file);
    if (!read)
        return tl::unexpected(read.error());
    auto job = store.job(photo.job);
    if (!job)
        return tl::unexpected(job.error());
    auto media = store.keepMedia(bytesOf(*read), read->suffix);
    if (!media)
        return tl::unexpected(media.error());
    if (alreadyKept(*job, media->name))
        return 0;
    auto said =
        store.append(std::vector{journal::photoTaken(photo.job, describe(*read, photo, id, media->name))});
    if (!said)
        return tl::unexpected(said.error());
    return 1;
}

} // namespace

QString takenFolder(const ShopSession& session) {
    const QString folder = text(session.folder().string()) + QStringLiteral("-taken");
    return QDir().mkpath(folder) ? folder : QString();
}

QString takenName(const QString& folder, const PhotoToKeep& photo, const Id& unique) {
    return QStringLiteral("%1/%2_%3_%4_%5.jpg")
        .arg(folder, text(photo.job), text(job::code(photo.purpose)).replace(u' ', u'-'), text(photo.about),
             text(unique));
}

std::optional<PhotoToKeep> photoOfTakenName(const QString& file) {
    const QStringList pieces = QFileInfo(file).completeBaseName().split(u'_');
    if (pieces.size() != 4 || pieces[0].isEmpty())
        return std::nullopt;
    const auto purpose = job::photoPurposeFromCode(QString(pieces[1]).replace(u'-', u' ').toStdString());
    if (!purpose)
        return std::nullopt;
    return PhotoToKeep{.file = file,
                       .job = pieces[0].toStdString(),
                       .purpose = *purpose,
                       .about = pieces[2].toStdString(),
                       .note = {},
                       .ours = true};
}

void rescueTakenPhotos(ShopSession& session, std::function<void(int)> then) {
    const QDir folder(takenFolder(session));
    std::map<QString, Touch> touches; // by the first picture's file
    for (const auto& name : folder.entryList({QStringLiteral("*.jpg")}, QDir::Files, QDir::Name)) {
        const QString file = folder.filePath(name);
        if (!photoOfTakenName(file))
            continue;
        Touch& touch = touches[burstOf(file)];
        touch.files << file;
        touch.id = session.newId();
    }
    if (touches.empty())
        return;
    session.ask(
        &session,
        [touches](ShopStore& store) {
            int kept = 0;
            for (const auto& [first, touch] : touches) {
                const QString file = touch.files.size() == 1 ? touch.files.front() : sharpestOf(touch.files);
                if (file.isEmpty())
                    continue;
                const auto done = rescue(store, *photoOfTakenName(file), touch.id);
                if (!done)
                    continue;
                kept += *done;
                for (const QString& each : touch.files)
                    QFile::remove(each); // the content of one is in the store, and the others show the same
            }
            return kept;
        },
        [&session, then = std::move(then)](int kept) {
            if (kept > 0)
                emit session.jobsChanged();
            if (then)
                then(kept);
        });
}

} // namespace undercowl::ui
