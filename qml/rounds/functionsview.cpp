#include "qml/rounds/functionsview.h"

#include "core/job/complaints.h"
#include "core/journal/rounds.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

QString answerWords(const job::FunctionCheck& check) {
    const std::array words{FunctionsView::tr("works"), FunctionsView::tr("does not work"),
                           FunctionsView::tr("not tried")};
    const QString& word = words.at(static_cast<std::size_t>(check.answer));
    return check.note.empty() ? word : word + QStringLiteral(", ") + text(check.note);
}

} // namespace

void FunctionsView::componentComplete() {
    readList(journal::RoundUse::Functions);
}

void FunctionsView::show(const Snapshot& snapshot) {
    auto tries = list();
    const auto& functions = after_ ? snapshot.job.functionsAfter : snapshot.job.functions;
    // What was tried under a name that the shop's list no longer has is still shown.
    for (const job::FunctionCheck& tried : snapshot.job.functions)
        if (!tries.empty() && std::ranges::find(tries, tried.what, &job::RoundCheck::text) == tries.end()) {
            job::RoundCheck check;
            check.text = tried.what;
            tries.push_back(std::move(check));
        }
    // What the owner said is answered first, in the owner's words.
    std::vector<std::string> owners;
    if (after_ && !tries.empty())
        for (const job::Complaint& complaint : job::complaints(snapshot.job))
            if (complaint.owners) {
                job::RoundCheck check;
                check.text = complaint.answer == nullptr ? complaint.what : complaint.answer->what;
                std::erase_if(tries, [&](const auto& other) { return other.text == check.text; });
                tries.insert(tries.begin() + std::ssize(owners), check);
                owners.push_back(check.text);
            }
    std::vector<WalkedCheck> checks;
    for (const job::RoundCheck& check : tries) {
        WalkedCheck walked{knownWords(check.group), knownWords(check.text), {}, {}, check.text};
        const auto before = std::ranges::find(snapshot.job.functions, check.text, &job::FunctionCheck::what);
        if (after_ && before != snapshot.job.functions.end())
            walked.group = tr("when it came in: %1").arg(answerWords(*before));
        else if (std::ranges::find(owners, check.text) != owners.end())
            walked.group = tr("the owner said, when it came in");
        const auto tried = std::ranges::find(functions, check.text, &job::FunctionCheck::what);
        if (tried != functions.end()) {
            walked.answer = answerWords(*tried);
            walked.mark = text(job::code(tried->answer));
        }
        checks.push_back(std::move(walked));
    }
    walk(std::move(checks));
}

void FunctionsView::answer(int index, const QString& remark) {
    if (finished() || index < 0 || index > 2)
        return;
    job::FunctionCheck check;
    check.what = key().toStdString();
    check.answer = static_cast<job::FunctionAnswer>(index);
    check.note = utf8(remark);
    session()->say(
        {after_ ? journal::functionProved(jobId(), check) : journal::functionChecked(jobId(), check)},
        {.undoText = this->check(), .form = {}}, [this, self = QPointer(this)](const Entries& said) {
            if (said && self != nullptr)
                emit saidSo();
        });
}

} // namespace undercowl::ui
