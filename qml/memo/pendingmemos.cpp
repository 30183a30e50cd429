#include "qml/memo/pendingmemos.h"

#include "core/journal/say.h"
#include "qml/shell/pendingphotos.h"
#include "qml/shell/words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <memory>
#include <span>

namespace undercowl::ui {

namespace {

constexpr QLatin1String running("part"); // still being recorded
constexpr QLatin1String ended("wav");

constexpr qint64 headBytes = 44;
constexpr qint64 leastBytes = headBytes + 16000 * 2 * 3 / 10; // 0.3 s: shorter is a slip of the thumb

Entries keep(ShopStore& store, const MemoToKeep& memo, const Id& id) {
    QFile file(memo.file);
    if (!file.open(QIODevice::ReadOnly))
        return tl::unexpected(
            store::Problem{store::Fault::NotFound, "the memo's file is gone: " + utf8(file.errorString())});
    const QByteArray bytes = file.readAll();
    file.close();
    auto media = store.keepMedia(
        std::as_bytes(std::span(bytes.constData(), static_cast<std::size_t>(bytes.size()))), "wav");
    if (!media)
        return tl::unexpected(media.error());
    auto job = store.job(memo.job);
    if (!job)
        return tl::unexpected(job.error());
    Entries said = std::vector<journal::Entry>{};
    // One that was kept just before the end of the program is only tidied away.
    if (std::ranges::find(job->memos, media->name, &job::Memo::media) == job->memos.end()) {
        job::Memo kept;
        kept.id = id;
        kept.media = media->name;
        kept.about = memo.about;
        kept.marks = memo.marks;
        said = store.append(std::vector{journal::memoKept(memo.job, kept)});
    }
    if (said)
        QFile::remove(memo.file);
    return said;
}

} // namespace

QString memoName(const ShopSession& session, const MemoToKeep& memo) {
    const QString folder = takenFolder(session);
    return folder.isEmpty()
               ? QString()
               : QStringLiteral("%1/%2_memo_%3_%4.%5")
                     .arg(folder, text(memo.job), text(memo.about), text(session.newId()), running);
}

std::optional<MemoToKeep> memoOfName(const QString& file) {
    const QStringList pieces = QFileInfo(file).completeBaseName().split(u'_');
    if (pieces.size() != 4 || pieces[0].isEmpty() || pieces[1] != u"memo")
        return std::nullopt;
    return MemoToKeep{.file = file, .job = pieces[0].toStdString(), .about = pieces[2].toStdString()};
}

void keepMemo(ShopSession& session, const MemoToKeep& memo, std::function<void(bool kept)> then) {
    MemoToKeep last = memo;
    if (QFileInfo(memo.file).size() < leastBytes) {
        QFile::remove(memo.file);
        if (then)
            then(false);
        return;
    }
    // From now on it is for rescueMemos(), should this fail.
    last.file = QFileInfo(memo.file).path() + u'/' + QFileInfo(memo.file).completeBaseName() + u'.' + ended;
    if (!QFile::rename(memo.file, last.file))
        last.file = memo.file;
    session.sayFrom([last, id = session.newId()](ShopStore& store) { return keep(store, last, id); },
                    {.undoText = QCoreApplication::translate("Memos", "Memo kept"), .form = {}},
                    [then = std::move(then)](const Entries& said) {
                        if (then)
                            then(said.has_value());
                    });
}

void rescueMemos(ShopSession& session, bool cut, std::function<void(int)> then) {
    const QDir folder(takenFolder(session));
    QStringList wanted{QStringLiteral("*_memo_*.") + ended};
    if (cut)
        wanted += QStringLiteral("*_memo_*.") + running;
    std::vector<std::pair<MemoToKeep, Id>> memos;
    for (const QString& name : folder.entryList(wanted, QDir::Files, QDir::Name)) {
        const QString path = folder.filePath(name);
        if (auto memo = memoOfName(path); memo && QFileInfo(path).size() >= leastBytes)
            memos.emplace_back(std::move(*memo), session.newId());
    }
    if (memos.empty())
        return;
    session.ask(
        &session,
        [memos](ShopStore& store) {
            return static_cast<int>(std::ranges::count_if(
                memos, [&](const auto& one) { return keep(store, one.first, one.second).has_value(); }));
        },
        [&session, then = std::move(then)](int kept) {
            if (kept > 0)
                emit session.jobsChanged();
            if (then)
                then(kept);
        });
}

} // namespace undercowl::ui
