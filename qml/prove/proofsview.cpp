#include "qml/prove/proofsview.h"

#include "core/job/needs.h"
#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "qml/prove/proveview.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

QString idOf(const job::ToProve& proof) {
    return text(proof.subject) + u'|' + text(proof.what);
}

QString howProved(const job::ToProve& proof) {
    if (proof.state == job::ToProve::State::LeftOut)
        return ProofsView::tr("left out: %1").arg(text(proof.note));
    if (!proof.note.empty())
        return ProofsView::tr("proved: %1").arg(text(proof.note));
    switch (proof.kind) {
    case job::ProofKind::Torque: return ProofsView::tr("proved by its reading, or said");
    case job::ProofKind::Wires: return ProofsView::tr("proved wire by wire, or said");
    default: return ProofsView::tr("proved");
    }
}

} // namespace

void ProofsView::show(const Snapshot& snapshot) {
    std::vector<Line> guarded;
    std::vector<Line> others;
    std::vector<Line> proved;
    open_.clear();
    apart_ = 0;
    for (const job::ToProve& proof : job::toProve(snapshot.job)) {
        if (proof.apart) {
            ++apart_;
            continue;
        }
        Line line{.id = idOf(proof), .title = words(proof.words), .detail = againstWords(proof)};
        if (proof.state != job::ToProve::State::Open) {
            line.detail = howProved(proof);
            if (!proof.against.empty())
                line.detail += u'\n' + againstWords(proof);
            line.on = proof.state == job::ToProve::State::Proved;
            proved.push_back(std::move(line));
            continue;
        }
        open_.push_back(proof);
        line.mark = ownCheck(proof);
        line.on = wanted_.contains(line.id);
        const auto* step = job::findStep(snapshot.job, proof.subject);
        const job::RefitNeeds needs = step == nullptr ? job::RefitNeeds{} : job::needsOf(*step);
        const bool heavy = proof.secondEyes || needs.doNotRide || needs.doNotStart;
        (heavy ? guarded : others).push_back(std::move(line));
    }
    ticked_.clear();
    for (const job::ToProve& proof : open_)
        if (wanted_.contains(idOf(proof)))
            ticked_ += idOf(proof);
    guarded_.setLines(std::move(guarded));
    others_.setLines(std::move(others));
    proved_.setLines(std::move(proved));
}

void ProofsView::setTicked(const QStringList& ids) {
    if (wanted_ == ids)
        return;
    wanted_ = ids;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

const job::ToProve* ProofsView::find(const QString& id) const {
    const auto at = std::ranges::find(open_, id, idOf);
    return at == open_.end() ? nullptr : &*at;
}

QStringList ProofsView::toggled(const QString& id) const {
    QStringList ids = ticked_;
    if (!ids.removeOne(id) && find(id) != nullptr)
        ids += id;
    return ids;
}

QString ProofsView::subjectOf(const QString& id) const {
    const auto* proof = find(id);
    return proof == nullptr ? QString() : text(proof->subject);
}

void ProofsView::keep(FormDraft* draft) {
    if (draft == nullptr || ticked_.isEmpty())
        return;
    const std::string how = utf8(draft->text(QStringLiteral("how")));
    std::vector<journal::Draft> said;
    for (const job::ToProve& proof : open_)
        if (ticked_.contains(idOf(proof)))
            said.push_back(proof.kind == job::ProofKind::Afterwards
                               ? journal::refitSeenTo(jobId(), proof.subject, proof.what, false, how)
                               : journal::proofGiven(jobId(), {proof.subject, proof.what, false, how, {}}));
    session()->say(std::move(said),
                   {.undoText = tr("%n proved", "", static_cast<int>(ticked_.size())), .form = draft->form()},
                   [this, self = QPointer(this), kept = QPointer(draft)](const Entries& entries) {
                       if (!entries || self == nullptr)
                           return;
                       if (kept != nullptr)
                           kept->said();
                       emit this->kept();
                   });
}

} // namespace undercowl::ui
