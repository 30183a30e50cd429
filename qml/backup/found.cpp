#include "qml/backup/found.h"

#include "core/store/backup.h"
#include "core/store/shops.h"
#include "qml/backup/restoreview.h"
#include "qml/shell/words.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>

namespace undercowl::ui {

using std::filesystem::path;

namespace {

// Of a sealed one only its name and its file tell when it was made.
job::TimeMs madeAt(const QFileInfo& file, const store::BackupHead& head) {
    if (head.at > 0)
        return head.at;
    const QDateTime named =
        QDateTime::fromString(file.fileName(), QStringLiteral("'undercowl-'yyyy-MM-dd-HHmmss'.backup'"));
    return (named.isValid() ? named : file.lastModified()).toMSecsSinceEpoch();
}

} // namespace

path pathOf(const QString& name) {
    return {name.toStdString()};
}

QString folderName(const path& folder) {
    return text((folder.has_filename() ? folder : folder.parent_path()).string());
}

QString moment(job::TimeMs at) {
    return dateWords(dayOf(at)) + QStringLiteral(", ") +
           QDateTime::fromMSecsSinceEpoch(at).toString(QStringLiteral("HH:mm"));
}

FoundBackup lookAtBackup(const QString& file, const QString& place) {
    const QFileInfo info(file);
    const auto head = store::readBackupHead(pathOf(file));
    FoundBackup found{madeAt(info, head.value_or(store::BackupHead{})), {}};
    const QString size = QLocale().formattedDataSize(info.size());
    found.line = {.id = file, .title = moment(found.at), .detail = info.fileName()};
    if (!head) {
        found.line.mark = wrongMark;
        found.line.detail +=
            u'\n' + RestoreView::tr("%1, %2: no backup, or damaged at its beginning").arg(place, size);
    } else if (head->sealed) {
        found.line.mark = sealedMark;
        found.line.detail += u'\n' + RestoreView::tr("%1, %2, sealed with a passphrase").arg(place, size);
    } else {
        found.line.detail += u'\n' + place + QStringLiteral(", ") + size;
    }
    return found;
}

std::vector<Line> backupsIn(const std::vector<BackupPlace>& places) {
    std::vector<FoundBackup> all;
    for (const BackupPlace& place : places) {
        const QDir folder(place.folder);
        for (const QString& name :
             folder.entryList({QStringLiteral("*.backup")}, QDir::Files | QDir::Readable))
            all.push_back(lookAtBackup(folder.filePath(name), place.name));
    }
    std::ranges::stable_sort(all, std::ranges::greater(), &FoundBackup::at);
    std::vector<Line> lines;
    lines.reserve(all.size());
    for (FoundBackup& found : all)
        lines.push_back(std::move(found.line));
    return lines;
}

std::vector<Line> shopsOf(const path& home, const path& present) {
    std::vector<Line> lines;
    for (const store::ShopBeside& shop : store::shopsBeside(home)) {
        std::error_code error;
        if (std::filesystem::equivalent(shop.folder, present, error))
            continue;
        const QString jobs = RestoreView::tr("%n jobs", nullptr, static_cast<int>(shop.jobs));
        Line line{.id = folderName(shop.folder),
                  .title = !shop.readable ? RestoreView::tr("A shop that cannot be read whole")
                           : shop.lastAt > 0
                               ? RestoreView::tr("%1, last worked on %2").arg(jobs, moment(shop.lastAt))
                               : jobs,
                  .detail = folderName(shop.folder) + u'\n' +
                            QLocale().formattedDataSize(static_cast<qint64>(shop.bytes)),
                  .mark = shop.readable ? QString() : wrongMark,
                  .on = std::filesystem::equivalent(shop.folder, store::currentShop(home), error)};
        if (line.on)
            line.detail += u'\n' + RestoreView::tr("The app opens it at its next start.");
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace undercowl::ui
