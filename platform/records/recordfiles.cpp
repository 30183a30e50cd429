#include "platform/records/recordsplugin.h"

#include "core/sight/metadata.h"
#include "core/store/archive.h"
#include "platform/printing.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace undercowl::platform {

namespace {

constexpr auto cancelled = "cancelled: the files that were written stay";

store::Result<void> save(const QString& file, std::span<const std::byte> bytes) {
    QSaveFile whole(file);
    const auto size = static_cast<qint64>(bytes.size());
    if (!whole.open(QIODevice::WriteOnly) ||
        whole.write(reinterpret_cast<const char*>(bytes.data()), size) != size || !whole.commit())
        return tl::unexpected(store::Problem{
            store::Fault::InputOutput, file.toStdString() + ": cannot be written: " +
                                           whole.errorString().toStdString() + "; choose another folder"});
    return {};
}

store::Result<void> makeFolder(const QString& folder) {
    if (QDir().mkpath(folder))
        return {};
    return tl::unexpected(
        store::Problem{store::Fault::InputOutput,
                       folder.toStdString() + ": this folder cannot be made; choose another one"});
}

// The page stands alone: its pictures are in it.
std::string dataUri(const store::Store& store, const std::string& media) {
    const auto path = store.media(media);
    QFile file(path ? QString::fromStdString(path->string()) : QString());
    if (!path || !file.open(QIODevice::ReadOnly))
        return {};
    QByteArray bytes = file.readAll();
    // The owner's page says nothing of where a photo was taken, whatever the shop keeps.
    if (const auto without = sight::withoutLocation(
            std::as_bytes(std::span(bytes.constData(), static_cast<std::size_t>(bytes.size())))))
        bytes = QByteArray(reinterpret_cast<const char*>(without->data()),
                           static_cast<qsizetype>(without->size()));
    const bool png = media.ends_with(".png");
    return std::string("data:image/") + (png ? "png" : "jpeg") + ";base64," + bytes.toBase64().toStdString();
}

// A job's number is what was typed: nothing of it but letters, digits and hyphens gets into a file's name.
QString safeName(const std::string& number) {
    QString name;
    for (const QChar letter : QString::fromStdString(number))
        name += letter.isLetterOrNumber() || letter == u'-' ? letter : QChar(u'-');
    return name.isEmpty() ? QStringLiteral("job") : name.left(60);
}

} // namespace

store::Result<RecordFiles> RecordsPlugin::write(const std::filesystem::path& folderOfStore, const job::Id& id,
                                                const QString& folder, const RecordLanguage& language,
                                                const std::function<bool(double)>& told) const {
    const auto stop = [] { return tl::unexpected(store::Problem{store::Fault::Refused, cancelled}); };
    auto store = store::Store::open(folderOfStore);
    if (!store)
        return tl::unexpected(store.error());
    const auto job = store->job(id);
    if (!job)
        return tl::unexpected(job.error());
    const auto machine = store->machine(job->machine);
    const auto owner = store->owner(job->owner);
    const auto mechanics = store->mechanics();
    if (!mechanics)
        return tl::unexpected(mechanics.error());
    const auto document = handover::ownersRecord(*job, machine.value_or(job::Machine{}),
                                                 owner.value_or(job::Owner{}), *mechanics);
    if (const auto made = makeFolder(folder); !made)
        return tl::unexpected(made.error());
    if (!told(0.1))
        return stop();
    const auto mediaFile = [&](const std::string& media) {
        return store->media(media).value_or(std::filesystem::path{});
    };
    const auto paper = pdf(document, language.words, mediaFile);
    if (!paper)
        return tl::unexpected(store::Problem{store::Fault::InputOutput, paper.error()});
    if (!told(0.6))
        return stop();
    const QString stem = safeName(job->number);
    RecordFiles files{folder, {}};
    const auto keep = [&](const QString& name, std::span<const std::byte> bytes) {
        files.names << name;
        return save(QDir(folder).filePath(name), bytes);
    };
    if (const auto done = keep(stem + QStringLiteral(".pdf"), *paper); !done)
        return tl::unexpected(done.error());
    const std::string page = handover::html(
        document, language.words, [&](const std::string& m) { return dataUri(*store, m); }, language.code);
    if (const auto done = keep(stem + QStringLiteral(".html"), std::as_bytes(std::span(page))); !done)
        return tl::unexpected(done.error());
    if (!told(0.8))
        return stop();
    const QString archive = stem + QStringLiteral(".zip");
    const auto exported = store::exportJob(*store, id, QDir(folder).filePath(archive).toStdString(), *paper);
    if (!exported)
        return tl::unexpected(exported.error());
    files.names << archive;
    told(1);
    return files;
}

store::Result<RecordFiles>
RecordsPlugin::writeDocument(const handover::Document& document, const QString& folder, const QString& stem,
                             const handover::Words& words,
                             const std::vector<std::pair<QString, std::string>>& texts) const {
    if (const auto made = makeFolder(folder); !made)
        return tl::unexpected(made.error());
    const auto paper = pdf(document, words, [](const std::string&) { return std::filesystem::path{}; });
    if (!paper)
        return tl::unexpected(store::Problem{store::Fault::InputOutput, paper.error()});
    RecordFiles files{folder, {}};
    const auto keep = [&](const QString& suffix, std::span<const std::byte> bytes) {
        files.names << stem + u'.' + suffix;
        return save(QDir(folder).filePath(files.names.back()), bytes);
    };
    if (const auto done = keep(QStringLiteral("pdf"), *paper); !done)
        return tl::unexpected(done.error());
    for (const auto& [suffix, text] : texts)
        if (const auto done = keep(suffix, std::as_bytes(std::span(text))); !done)
            return tl::unexpected(done.error());
    return files;
}

store::Result<RecordFiles> RecordsPlugin::writeLabels(const std::vector<handover::BagLabel>& labels,
                                                      LabelStock stock, int first, const QString& folder,
                                                      const QString& stem) const {
    if (const auto made = makeFolder(folder); !made)
        return tl::unexpected(made.error());
    const auto sheet = labelSheet(labels, stock, first);
    if (!sheet)
        return tl::unexpected(store::Problem{store::Fault::Refused, sheet.error()});
    const QString name = stem + QStringLiteral(".pdf");
    if (const auto done = save(QDir(folder).filePath(name), *sheet); !done)
        return tl::unexpected(done.error());
    return RecordFiles{folder, {name}};
}

} // namespace undercowl::platform
