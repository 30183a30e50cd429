#include "qml/memo/jobmemolist.h"

#include "core/journal/say.h"
#include "qml/shell/words.h"

#include <QCoreApplication>
#include <QPointer>

namespace undercowl::ui {

namespace {

constexpr std::size_t mostMemos = 5;

struct Memos {
    Q_DECLARE_TR_FUNCTIONS(Memos)
};

// What the memo is about, as the job names it.
QString aboutOf(const job::Job& job, const job::Memo& memo) {
    if (const auto* step = job::findStep(job, memo.about))
        return text(step->title);
    if (const auto* photo = job::findPhoto(job, memo.about))
        return Memos::tr("photo, %1").arg(words(photo->purpose));
    return {};
}

} // namespace

void JobMemoList::show(const Snapshot& snapshot) {
    std::vector<Line> lines;
    const auto& memos = snapshot.job.memos;
    for (auto memo = memos.rbegin(); memo != memos.rend() && lines.size() < mostMemos; ++memo)
        if (!memo->text.empty() || !memo->media.empty())
            lines.push_back({.id = text(memo->id),
                             .title = memo->text.empty() ? Memos::tr("Spoken memo") : text(memo->text),
                             .detail = aboutOf(snapshot.job, *memo),
                             .aside = when(memo->said.at, session()->now()) + QStringLiteral(", ") +
                                      session()->mechanicName(memo->said.mechanic),
                             .on = !memo->media.empty()});
    memos_.setLines(std::move(lines));
}

void JobMemoList::keep(FormDraft* draft, const QString& about) {
    job::Memo memo;
    memo.id = session()->newId();
    memo.text = utf8(draft->text(QStringLiteral("text")));
    memo.about = about.toStdString();
    if (memo.text.empty() || jobId().empty())
        return;
    session()->say({journal::memoKept(jobId(), memo)},
                   {.undoText = tr("Memo kept"), .form = draft->property("form").toString()},
                   [this, self = QPointer(this), draft = QPointer(draft)](const Entries& said) {
                       if (!said || self == nullptr || draft == nullptr)
                           return;
                       draft->said();
                       emit kept();
                   });
}

} // namespace undercowl::ui
