#include "qml/prove/proveview.h"

#include "core/job/complaints.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

QString againstWords(const job::ToProve& proof) {
    QStringList all;
    for (const job::Message& each : proof.against)
        all += words(each);
    return all.join(QStringLiteral("; "));
}

QString ownCheck(const job::ToProve& proof) {
    return proof.kind == job::ProofKind::Torque  ? QStringLiteral("torque")
           : proof.kind == job::ProofKind::Wires ? QStringLiteral("wires")
                                                 : QString();
}

const job::ToProve* ProveView::asked() const {
    return finished() ? nullptr : &due_[static_cast<std::size_t>(current())];
}

QString ProveView::against() const {
    return asked() == nullptr ? QString() : againstWords(*asked());
}

QString ProveView::way() const {
    return asked() == nullptr ? QString() : ownCheck(*asked());
}

QString ProveView::subject() const {
    return asked() == nullptr ? QString() : text(asked()->subject);
}

void ProveView::show(const Snapshot& snapshot) {
    due_ = job::toProve(snapshot.job);
    unanswered_ =
        static_cast<int>(std::ranges::count_if(job::complaints(snapshot.job), &job::Complaint::open));
    apart_ = static_cast<int>(std::ranges::count(due_, true, &job::ToProve::apart));
    std::erase_if(due_, [](const job::ToProve& proof) { return proof.apart; });
    std::vector<WalkedCheck> checks;
    std::vector<Line> seconds;
    forEyes_.clear();
    for (const job::ToProve& proof : due_) {
        WalkedCheck walked{text(proof.title), words(proof.words)};
        if (proof.state == job::ToProve::State::Proved) {
            walked.answer = proof.note.empty() ? tr("proved") : tr("proved: %1").arg(text(proof.note));
            walked.mark = QStringLiteral("proved");
        } else if (proof.state == job::ToProve::State::LeftOut) {
            walked.answer = tr("left out: %1").arg(text(proof.note));
            walked.mark = QStringLiteral("not done");
        }
        checks.push_back(std::move(walked));
        if (!proof.secondEyes)
            continue;
        forEyes_.push_back(proof);
        seconds.push_back({.id = QString::number(seconds.size()),
                           .title = words(proof.words),
                           .detail = proof.secondedBy.empty()
                                         ? tr("not signed")
                                         : tr("signed by %1").arg(text(proof.secondedBy)),
                           .on = !proof.secondedBy.empty()});
    }
    seconds_.setLines(std::move(seconds));
    walk(std::move(checks));
}

void ProveView::answer(bool leftOut, const std::string& note, const QString& undoText) {
    if (asked() == nullptr)
        return;
    const auto& proof = *asked();
    setErrors({});
    const auto draft = proof.kind == job::ProofKind::Afterwards
                           ? journal::refitSeenTo(jobId(), proof.subject, proof.what, leftOut, note)
                           : journal::proofGiven(jobId(), {proof.subject, proof.what, leftOut, note, {}});
    session()->say({draft}, {.undoText = undoText, .form = {}},
                   [this, self = QPointer(this)](const Entries& said) {
                       if (said && self != nullptr)
                           emit saidSo();
                   });
}

void ProveView::proved(const QString& how) {
    if (const auto* proof = asked(); proof != nullptr && !proof->against.empty()) {
        setErrors({{QStringLiteral("reason"),
                    tr("Not proved while this stands: %1. Put it right, or type why it is left out.")
                        .arg(againstWords(*proof))}});
        return;
    } else if (proof != nullptr && proof->needsHow && utf8(how).empty()) {
        setErrors({{QStringLiteral("reason"),
                    tr("No reading shows the torque: measure it, or type how it was tightened.")}});
        return;
    }
    answer(false, utf8(how), tr("Proved"));
}

void ProveView::leaveOut(const QString& reason) {
    if (utf8(reason).empty()) {
        setErrors({{QStringLiteral("reason"),
                    tr("Type why it is left out, such as \"no road test before the tyres are here\".")}});
        return;
    }
    answer(true, utf8(reason), tr("Left out"));
}

int ProveView::toSign() const {
    return static_cast<int>(std::ranges::count(seconds_.lines(), false, &Line::on));
}

void ProveView::second(int line, const QString& by) {
    if (line < 0 || line >= static_cast<int>(forEyes_.size()))
        return;
    if (utf8(by).empty()) {
        setErrors({{QStringLiteral("by"), tr("Type the name of the one who looked.")}});
        return;
    }
    setErrors({});
    const auto& proof = forEyes_[static_cast<std::size_t>(line)];
    session()->say({journal::secondEyesGiven(jobId(), {proof.subject, proof.what, utf8(by), {}})},
                   {.undoText = tr("Signed by %1").arg(by.trimmed()), .form = {}},
                   [this, self = QPointer(this)](const Entries& said) {
                       if (said && self != nullptr)
                           emit saidSo();
                   });
}

} // namespace undercowl::ui
