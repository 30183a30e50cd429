// What a stroke, a tap and the mechanic's answers do to the rows, and what of it is said.
#include "qml/wiring/strokeview.h"

#include "core/journal/say.h"
#include "qml/wiring/words.h"

#include <QLineF>
#include <QPointer>

#include <algorithm>
#include <utility>

namespace undercowl::ui {

namespace {

constexpr double reach = 0.08; // a thumb beside a wire still means that wire: parts of the photo
constexpr double sameWire = 0.02;
constexpr double whitePaper = 0.88; // reflectance, about: see core/sight/reader.h

// Answers are compared by what they say; a fresh one does not know its entry yet.
wiring::PlaceAnswer withoutEntry(wiring::PlaceAnswer answer) {
    answer.entry.clear();
    return answer;
}

} // namespace

void StrokeView::stroke(const QVariantList& points) {
    QList<QPointF> along;
    for (const QVariant& point : points)
        along.append(point.toPointF());
    firstTap_.reset();
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
    if (rows_.count() == 0) {
        if (firstTap_)
            stroke({*firstTap_, at});
        else
            firstTap_ = at;
        emit currentChanged();
        return;
    }
    // A row that was put in by hand gets the wire that is tapped; otherwise the nearest wire is meant.
    const bool missing = rows_.holds(current_) && !rows_.rows()[static_cast<std::size_t>(current_)].at;
    if (const int near = rows_.nearest(at, reach); !missing && near >= 0)
        setCurrent(near);
    asked_ = current_;
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

void StrokeView::pick(const QString& base, const QString& tracer) {
    const auto wire = wireColour(base, tracer);
    if (rows_.holds(current_) && wire)
        settleCurrent(*wire, wiring::HowKnown::Picked, 1);
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

// What the journal holds of these rows is compared with what the rows say now: a row that moved is answered
// in its new place and taken back in the old one, in one saying.
void StrokeView::sayChanges(const QString& undoText) {
    const auto* known = gathering();
    if (known == nullptr)
        return;
    Answers now;
    std::vector<journal::Draft> drafts;
    auto rows = rows_.rows();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto key = rows_.keys()[i];
        const auto said = rows[i].confirmed ? std::optional(key) : std::nullopt;
        if (said)
            now[key] = *rows[i].confirmed;
        if (rows[i].said != said) {
            rows[i].said = said;
            rows_.replace(static_cast<int>(i), rows[i]);
        }
    }
    const auto empty = [&](const wiring::PlaceKey& key) {
        drafts.push_back(journal::placeEmpty(jobId(), known->id, key, wiring::Answer::AsFound));
    };
    for (const auto& [key, answer] : said_)
        if (!now.contains(key))
            empty(key);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto* place = known->find(rows_.keys()[i]);
        if (rows[i].empty && !said_.contains(rows_.keys()[i]) && place != nullptr &&
            place->answer(wiring::Answer::AsFound))
            empty(rows_.keys()[i]);
    }
    for (const auto& [key, answer] : now) {
        const auto old = said_.find(key);
        if (old == said_.end() || old->second != answer)
            drafts.push_back(journal::wireAnswered(jobId(), known->id, key, wiring::Answer::AsFound, answer));
    }
    if (drafts.empty())
        return;
    // The photo and the first place belong to the map from the first wire on.
    if (!now.empty() && (known->photo.empty() || !known->first) && !photoId().empty()) {
        wiring::Gathering described = *known;
        described.photo = photoId();
        if (!described.first && rows_.start() == 1 && !rows.empty() && rows.front().at)
            described.first = wiring::PhotoMark{photoId(), rows.front().at->x(), rows.front().at->y()};
        if (described != *known)
            drafts.push_back(journal::gatheringDescribed(jobId(), described));
    }
    said_ = std::move(now);
    ++underway_;
    session()->say(std::move(drafts), {.undoText = undoText, .form = {}},
                   [self = QPointer(this)](const Entries& /*said*/) {
                       if (self == nullptr)
                           return;
                       // A refused saying is taken back here as well: what is shown is what is kept.
                       if (--self->underway_ == 0)
                           self->reconcile();
                   });
}

void StrokeView::remember() {
    rowsBefore_ = rows_.rows();
    saidBefore_ = said_;
}

StrokeView::Answers StrokeView::answersInJournal() const {
    Answers answers;
    if (const auto* known = gathering())
        for (const wiring::Place* place : wiring::placesOf(*known, half_, wiring::Answer::AsFound))
            answers[place->key] = withoutEntry(*place->answer(wiring::Answer::AsFound));
    return answers;
}

void StrokeView::reconcile() {
    const Answers journal = answersInJournal();
    if (journal == said_)
        return;
    if (!rowsBefore_.empty() && journal == saidBefore_) {
        // Undone as a whole: the rows are what they were, and bringing it back leads here again.
        auto rows = std::exchange(rowsBefore_, rows_.rows());
        saidBefore_ = std::exchange(said_, journal);
        rows_.reset(std::move(rows));
        current_ = std::clamp(current_, rows_.count() == 0 ? -1 : 0, rows_.count() - 1);
        reader_.open(); // what was confirmed by mistake must not go on calibrating the light
        changedRows();
        return;
    }
    for (int i = 0; i < rows_.count(); ++i) {
        WireRow row = rows_.rows()[static_cast<std::size_t>(i)];
        if (!row.said)
            continue;
        const auto found = journal.find(*row.said);
        if (found == journal.end()) {
            row.said.reset();
            row.confirmed.reset();
        } else if (row.confirmed != found->second) {
            row.confirmed = found->second;
            if (row.confirmed->mark && row.confirmed->mark->photo == photoId())
                row.at = QPointF(row.confirmed->mark->x, row.confirmed->mark->y);
        } else {
            continue;
        }
        rows_.replace(i, std::move(row));
    }
    said_.clear();
    for (const WireRow& row : rows_.rows())
        if (row.said && row.confirmed)
            said_[*row.said] = *row.confirmed;
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
