// What a stroke, a tap and the mechanic's answers do to the rows.
#include "qml/wiring/strokeview.h"

#include "qml/wiring/words.h"

#include <QLineF>

#include <algorithm>
#include <utility>

namespace undercowl::ui {

namespace {

constexpr double reach = 0.08; // a thumb beside a wire still means that wire: parts of the photo
constexpr double sameWire = 0.02;
constexpr double whitePaper = 0.88; // reflectance, about: see core/sight/reader.h

} // namespace

void StrokeView::stroke(const QVariantList& points) {
    QList<QPointF> along;
    for (const QVariant& point : points)
        along.append(point.toPointF());
    firstTap_.reset();
    if (proposal_) { // of all wires: the line is the mouth of the connector
        fromMouth_ = true;
        reader_.propose(along);
        return;
    }
    asksForLast_ = false;
    along_ = along;
    emit currentChanged();
    reader_.sweep(along);
}

void StrokeView::tap(qreal x, qreal y) {
    const QPointF at(x, y);
    if (asksForCard_) {
        asksForCard_ = false;
        sweepAgain_ = !along_.isEmpty();
        reader_.setCard(at, whitePaper);
        emit currentChanged();
        return;
    }
    if (proposal_) {
        accept(at);
        return;
    }
    if (rows_.count() == 0) {
        asksForLast_ = firstTap_.has_value();
        if (!firstTap_) {
            firstTap_ = at;
            first_ = {};
        }
        stepped_ = false;
        reader_.tap(at);
        emit currentChanged();
        return;
    }
    // A row that was put in by hand gets the wire that is tapped; otherwise the nearest wire is meant.
    const bool missing = rows_.holds(current_) && !rows_.rows()[static_cast<std::size_t>(current_)].at;
    if (const int near = rows_.nearest(at, reach); !missing && near >= 0)
        setCurrent(near);
    asked_ = named_ = current_;
    stepped_ = false;
    reader_.tap(at);
}

void StrokeView::askForCard(bool ask) {
    asksForCard_ = ask;
    emit currentChanged();
}

void StrokeView::lookAgain() {
    if (!rows_.holds(current_))
        return;
    if (const auto& at = rows_.rows()[static_cast<std::size_t>(current_)].at) {
        asked_ = current_;
        reader_.tap(*at);
    }
}

WireRow StrokeView::rowFrom(const sight::WireReading& reading) const {
    WireRow row;
    for (const sight::Candidate& candidate : reading.candidates)
        row.candidates.push_back({candidate.wire, candidate.probability});
    row.sure = reading.sure;
    row.doubts = reading.doubts;
    row.at = reader_.relative(reading.at);
    row.across = reader_.relative({reading.widthPx, 0}).x();
    for (const sight::Point& point : reading.path)
        row.path.push_back(reader_.relative(point));
    return row;
}

void StrokeView::swept(const std::vector<sight::WireReading>& readings) {
    std::vector<WireRow> rows;
    for (const sight::WireReading& reading : readings) {
        WireRow row = rowFrom(reading);
        // What was confirmed at this very crossing stays confirmed.
        for (const WireRow& old : rows_.rows())
            if (old.confirmed && old.at && QLineF(*old.at, *row.at).length() < sameWire) {
                row.confirmed = old.confirmed;
                row.said = old.said;
            }
        rows.push_back(std::move(row));
    }
    const auto* known = gathering();
    if (known != nullptr && known->first && known->first->photo == photoId() && rows.size() > 1) {
        const QPointF first(known->first->x, known->first->y);
        if (QLineF(first, *rows.back().at).length() < QLineF(first, *rows.front().at).length())
            std::reverse(rows.begin(), rows.end());
    }
    previous_ = rows_.rows();
    rows_.reset(std::move(rows));
    current_ = rows_.count() == 0 ? -1 : std::max(0, rows_.nextOpen(0));
    named_ = -1;
    if (rows_.count() > 0)
        changedRows();
    emit currentChanged();
}

void StrokeView::reread(const sight::WireReading& reading) {
    const int row = std::exchange(asked_, -1);
    if (!rows_.holds(row))
        return;
    const WireRow& old = rows_.rows()[static_cast<std::size_t>(row)];
    WireRow now = rowFrom(reading);
    if (!reading.found()) {
        now.candidates = old.candidates; // what was read before is still the better guess
        now.sure = false;
    }
    now.sharesPlace = old.sharesPlace;
    now.confirmed = old.confirmed; // looking again takes nothing back
    now.said = old.said;
    rows_.replace(row, std::move(now));
    changedRows();
}

void StrokeView::settle(int row, colour::WireColour wire, wiring::HowKnown how, double probability) {
    WireRow now = rows_.rows()[static_cast<std::size_t>(row)];
    wiring::PlaceAnswer answer;
    if (now.confirmed) {
        answer = *now.confirmed;
    } else if (const auto* known = gathering()) { // its terminal and function were told before
        const auto* place = known->find(rows_.keys()[static_cast<std::size_t>(row)]);
        if (place != nullptr && place->answer(wiring::Answer::AsFound))
            answer.wire = place->answer(wiring::Answer::AsFound)->wire;
    }
    answer.entry.clear();
    answer.wire.colour = wire;
    answer.how = how;
    answer.probability = probability;
    if (now.at && !photoId().empty())
        answer.mark = wiring::PhotoMark{photoId(), now.at->x(), now.at->y()};
    now.confirmed = std::move(answer);
    now.empty = false;
    if (now.at)
        reader_.confirm(*now.at, wire);
    rows_.replace(row, std::move(now));
}

void StrokeView::settleCurrent(colour::WireColour wire, wiring::HowKnown how, double probability) {
    remember();
    settle(current_, wire, how, probability);
    sayChanges(tr("%1: %2").arg(words(rows_.keys()[static_cast<std::size_t>(current_)]), words(wire)));
    goOn();
    changedRows();
}

void StrokeView::confirm() {
    if (!rows_.holds(current_))
        return;
    const WireRow& row = rows_.rows()[static_cast<std::size_t>(current_)];
    if (!row.settled() && !row.candidates.empty())
        settleCurrent(row.candidates[0].wire, wiring::HowKnown::Read, row.candidates[0].probability);
}

void StrokeView::take(int choice) {
    if (!rows_.holds(current_) || choice < 0)
        return;
    const WireRow& row = rows_.rows()[static_cast<std::size_t>(current_)];
    const auto index = static_cast<std::size_t>(choice) + 1;
    if (index < row.candidates.size())
        settleCurrent(row.candidates[index].wire, wiring::HowKnown::RunnerUp,
                      row.candidates[index].probability);
}

void StrokeView::pick(const QString& base, const QString& tracer, bool heard) {
    const auto wire = wireColour(base, tracer);
    if (rows_.holds(current_) && wire)
        settleCurrent(*wire, heard ? wiring::HowKnown::Heard : wiring::HowKnown::Picked, 1);
}

void StrokeView::confirmSure() {
    remember();
    int settled = 0;
    for (int row = 0; row < rows_.count(); ++row) {
        const WireRow one = rows_.rows()[static_cast<std::size_t>(row)];
        if (!one.sure || one.settled() || one.candidates.empty())
            continue;
        settle(row, one.candidates[0].wire, wiring::HowKnown::Read, one.candidates[0].probability);
        ++settled;
    }
    if (settled == 0)
        return;
    sayChanges(tr("%n wires confirmed", nullptr, settled));
    goOn();
    changedRows();
}

void StrokeView::takeBack() {
    if (!rows_.holds(current_))
        return;
    WireRow row = rows_.rows()[static_cast<std::size_t>(current_)];
    if (!row.settled())
        return;
    remember();
    row.confirmed.reset();
    row.empty = false;
    rows_.replace(current_, std::move(row));
    sayChanges(tr("Not confirmed any more"));
    changedRows();
}

void StrokeView::reverse() {
    remember();
    rows_.reverse();
    if (rows_.holds(current_))
        current_ = rows_.count() - 1 - current_;
    sayChanges(tr("Turned round"));
    changedRows();
}

void StrokeView::removeWire() {
    if (!rows_.holds(current_))
        return;
    remember();
    rows_.removeRow(current_);
    current_ = std::min(current_, rows_.count() - 1);
    sayChanges(tr("Taken out"));
    changedRows();
}

void StrokeView::insertWire(bool after) {
    remember();
    const int row = current_ < 0 ? 0 : current_ + (after ? 1 : 0);
    rows_.insert(row, {});
    current_ = row;
    sayChanges(tr("Put in"));
    changedRows();
}

void StrokeView::setEmpty() {
    if (!rows_.holds(current_))
        return;
    WireRow row = rows_.rows()[static_cast<std::size_t>(current_)];
    remember();
    row.confirmed.reset();
    row.sharesPlace = false;
    row.empty = true;
    rows_.replace(current_, std::move(row));
    sayChanges(tr("Place empty"));
    goOn();
    changedRows();
}

void StrokeView::share() {
    if (!rows_.holds(current_) || current_ == 0)
        return;
    WireRow row = rows_.rows()[static_cast<std::size_t>(current_)];
    remember();
    row.sharesPlace = !row.sharesPlace;
    rows_.replace(current_, std::move(row));
    sayChanges(rows_.keys()[static_cast<std::size_t>(current_)].slot > 1
                   ? tr("Second wire of the place before")
                   : tr("In a place of its own"));
    changedRows();
}

void StrokeView::bringBack() {
    if (previous_.empty())
        return;
    remember();
    rows_.reset(std::exchange(previous_, {}));
    current_ = std::max(0, rows_.nextOpen(0));
    sayChanges(tr("Brought back"));
    changedRows();
}

void StrokeView::photoOpened() {
    for (const WireRow& row : rows_.rows())
        if (row.confirmed && row.at)
            reader_.confirm(*row.at, row.confirmed->wire.colour);
    if (std::exchange(sweepAgain_, false))
        reader_.sweep(along_);
}

} // namespace undercowl::ui
