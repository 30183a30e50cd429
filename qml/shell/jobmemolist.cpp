#include "qml/shell/jobmemolist.h"

#include "core/journal/say.h"
#include "qml/shell/words.h"

#include <QPointer>

namespace undercowl::ui {

namespace {

constexpr std::size_t mostMemos = 5;

} // namespace

void JobMemoList::show(const Snapshot& snapshot) {
    std::vector<Line> lines;
    const auto& memos = snapshot.job.memos;
    for (auto memo = memos.rbegin(); memo != memos.rend() && lines.size() < mostMemos; ++memo)
        if (!memo->text.empty())
            lines.push_back({.id = text(memo->id),
                             .title = text(memo->text),
                             .aside = when(memo->said.at, session()->now()) + QStringLiteral(", ") +
                                      session()->mechanicName(memo->said.mechanic)});
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
