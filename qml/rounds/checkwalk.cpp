#include "qml/rounds/checkwalk.h"

#include "qml/shell/words.h"

#include <algorithm>

namespace undercowl::ui {

QString roundTitle(const std::string& title) {
    QStringList parts = text(title).split(QStringLiteral(", "));
    for (QString& part : parts)
        part = knownWords(part.toStdString());
    return parts.join(QStringLiteral(", "));
}

int CheckWalk::open() const {
    return static_cast<int>(
        std::ranges::count_if(checks_, [](const WalkedCheck& check) { return check.answer.isEmpty(); }));
}

QString CheckWalk::group() const {
    return finished() ? QString() : checks_[static_cast<std::size_t>(place_)].group;
}

QString CheckWalk::check() const {
    return finished() ? QString() : checks_[static_cast<std::size_t>(place_)].text;
}

QString CheckWalk::key() const {
    return finished() ? QString() : QString::fromStdString(checks_[static_cast<std::size_t>(place_)].key);
}

QString CheckWalk::answered() const {
    return finished() ? QString() : checks_[static_cast<std::size_t>(place_)].answer;
}

// After 'from' first, then those that were passed over.
int CheckWalk::nextOpen(int from) const {
    for (int step = 1; step <= count(); ++step) {
        const int place = (from + step) % count();
        if (checks_[static_cast<std::size_t>(place)].answer.isEmpty())
            return place;
    }
    return -1;
}

void CheckWalk::goTo(int place) {
    place_ = place >= 0 && place < count() ? place : -1;
    looking_ = place_ >= 0 && !answered().isEmpty();
    emit changed();
}

void CheckWalk::back() {
    goTo(finished() ? count() - 1 : std::max(0, place_ - 1));
}

void CheckWalk::on() {
    goTo(nextOpen(finished() ? -1 : place_));
}

void CheckWalk::readList(journal::RoundUse use) {
    session()->ask(
        this, [](ShopStore& store) { return store.roundLists(); },
        [this, use](const Result<std::vector<journal::RoundList>>& lists) {
            if (!lists)
                return session()->report(lists.error());
            list_ = journal::checksOf(*lists, use);
            JobScreen::componentComplete();
            emit changed();
        });
}

void CheckWalk::walk(std::vector<WalkedCheck> checks) {
    const QString before = answered();
    const QString asked = check();
    checks_ = std::move(checks);
    std::vector<Line> lines;
    for (const WalkedCheck& check : checks_)
        lines.push_back({.id = QString::number(lines.size()),
                         .title = check.text,
                         .detail = check.group,
                         .more = check.answer,
                         .mark = check.mark,
                         .on = !check.answer.isEmpty()});
    lines_.setLines(std::move(lines));
    if (place_ >= count())
        place_ = -1;
    if (!begun_ && count() > 0) {
        begun_ = true;
        place_ = nextOpen(-1);
    } else if (!finished() && check() == asked && !answered().isEmpty() &&
               (!looking_ || answered() != before)) {
        place_ = nextOpen(place_);
        looking_ = false;
    }
}

} // namespace undercowl::ui
