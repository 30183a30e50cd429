#include "qml/rounds/roundview.h"

#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <algorithm>

namespace undercowl::ui {

namespace {

QString answerWords(const job::Job& job, const job::RoundCheck& check) {
    switch (*check.answer) {
    case job::CheckAnswer::Fine: return RoundView::tr("fine");
    case job::CheckAnswer::NotDone: return RoundView::tr("not done");
    case job::CheckAnswer::Found: break;
    }
    const auto* finding = job::findFinding(job, check.finding);
    return finding == nullptr ? RoundView::tr("finding")
                              : RoundView::tr("finding: %1").arg(text(finding->text));
}

} // namespace

void RoundView::show(const Snapshot& snapshot) {
    const auto round = std::ranges::find(snapshot.job.rounds, round_.toStdString(), &job::Round::id);
    if (round == snapshot.job.rounds.end())
        return walk({});
    title_ = roundTitle(round->title);
    std::vector<WalkedCheck> checks;
    for (const job::RoundCheck& check : round->checks) {
        WalkedCheck walked{knownWords(check.group), knownWords(check.text), {}, {}, check.text};
        if (check.answer) {
            walked.answer = answerWords(snapshot.job, check);
            walked.mark = text(job::code(*check.answer));
        }
        checks.push_back(std::move(walked));
    }
    walk(std::move(checks));
}

void RoundView::answer(job::CheckAnswer answer, const QString& undoText) {
    if (finished())
        return;
    session()->say({journal::checkAnswered(jobId(), round_.toStdString(), key().toStdString(), answer)},
                   {.undoText = undoText, .form = {}});
}

void RoundView::fine() {
    answer(job::CheckAnswer::Fine, tr("Fine: %1").arg(check()));
}

void RoundView::notDone() {
    answer(job::CheckAnswer::NotDone, tr("Not done: %1").arg(check()));
}

} // namespace undercowl::ui
