#include "qml/refit/readbackwalk.h"

#include "core/talk/readback.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

QString ReadBackWalk::checked() const {
    const auto known = open() ? outcome(index_) : std::nullopt;
    return known ? text(job::code(*known)) : QString();
}

int ReadBackWalk::counted(std::optional<job::MatchOutcome> wanted) const {
    int found = 0;
    for (int i = 0; i < count(); ++i)
        found += outcome(i) == wanted ? 1 : 0;
    return found;
}

QString ReadBackWalk::namesOf(std::optional<job::MatchOutcome> wanted) const {
    QStringList names;
    for (int i = 0; i < count(); ++i)
        if (outcome(i) == wanted)
            names += offered(i);
    return names.join(u'\n');
}

QStringList ReadBackWalk::otherPlaces() const {
    QStringList all;
    for (int i = 0; open() && i < count(); ++i)
        if (i != index_)
            all += offered(i);
    return all;
}

QString ReadBackWalk::sentence() const {
    if (open())
        return spoken();
    return over() ? text(talk::english(talk::endSentence(failing(), counted(std::nullopt)))) : QString();
}

void ReadBackWalk::say(std::vector<journal::Draft> drafts, const QString& undoText, bool goesOn) {
    saying_ = true;
    emit changed();
    session()->say(std::move(drafts), {.undoText = undoText, .form = {}},
                   [self = QPointer(this), goesOn](const Entries& said) {
                       if (self == nullptr)
                           return;
                       self->saying_ = false;
                       if (said)
                           self->said_.push_back({self->index_, self->outcome(self->index_)});
                       if (said && goesOn)
                           ++self->index_;
                       emit self->changed();
                   });
}

void ReadBackWalk::done() {
    if (!open() || mustChoose() || saying_)
        return;
    mismatch_ = false;
    say(saysMatch(), tr("%1 matches").arg(place()), true);
}

void ReadBackWalk::doesNotMatch() {
    if (!open() || mustChoose() || saying_)
        return;
    mismatch_ = true;
    say(saysMismatch({}), tr("%1 does not match").arg(place()), false);
}

void ReadBackWalk::swappedWith(int place) {
    const QStringList others = otherPlaces();
    if (!open() || place < 0 || place >= others.size())
        return;
    const int at = place < index_ ? place : place + 1; // this one is not among them
    const QString with = named(at);
    say(saysMismatch(utf8(tr("swapped with %1").arg(with))),
        tr("%1 swapped with %2").arg(this->place(), with), false);
}

void ReadBackWalk::goTo(int index) {
    index_ = std::clamp(index, 0, count());
    mismatch_ = false;
    emit changed();
}

void ReadBackWalk::beginAnew() {
    said_.clear();
    goTo(0);
}

void ReadBackWalk::followUndo() {
    int back = -1;
    while (!saying_ && !said_.empty() &&
           (said_.back().index >= count() || outcome(said_.back().index) != said_.back().outcome)) {
        back = said_.back().index;
        said_.pop_back();
    }
    if (back < 0)
        return;
    const bool here = back == index_;
    goTo(back);
    if (here)
        emit stays();
}

void ReadBackWalk::lookAgain() {
    goTo(index_);
}

void ReadBackWalk::goOn() {
    goTo(index_ + 1);
}

void ReadBackWalk::back() {
    goTo(index_ - 1);
}

void ReadBackWalk::again() {
    goTo(0);
}

} // namespace undercowl::ui
