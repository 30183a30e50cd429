// What of the rows is said, and how the rows follow what the journal then holds.
#include "qml/wiring/strokeview.h"

#include "core/journal/say.h"

#include <QPointer>

#include <algorithm>
#include <optional>
#include <utility>

namespace undercowl::ui {

namespace {

// Answers are compared by what they say; a fresh one does not know its entry yet.
wiring::PlaceAnswer withoutEntry(wiring::PlaceAnswer answer) {
    answer.entry.clear();
    return answer;
}

} // namespace

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
        const auto said = rows[i].settled() ? std::optional(key) : std::nullopt;
        if (said)
            now[key] = rows[i].empty ? std::nullopt : rows[i].confirmed;
        if (rows[i].said != said) {
            rows[i].said = said;
            rows_.replace(static_cast<int>(i), rows[i]);
        }
    }
    const auto empty = [&](const wiring::PlaceKey& key, bool seen) {
        drafts.push_back(journal::placeEmpty(jobId(), known->id, key, wiring::Answer::AsFound, seen));
    };
    for (const auto& [key, answer] : said_)
        if (!now.contains(key))
            empty(key, false);
    for (const auto& [key, answer] : now) {
        const auto old = said_.find(key);
        if (old != said_.end() && old->second == answer)
            continue;
        if (answer)
            drafts.push_back(
                journal::wireAnswered(jobId(), known->id, key, wiring::Answer::AsFound, *answer));
        else
            empty(key, true);
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
    const auto* known = gathering();
    if (known == nullptr)
        return answers;
    for (const wiring::Place* place : wiring::placesOf(*known, half_, wiring::Answer::AsFound))
        answers[place->key] = withoutEntry(*place->answer(wiring::Answer::AsFound));
    for (const wiring::Place& place : known->held)
        if (place.key.half == half_ && place.saidEmpty(wiring::Answer::AsFound))
            answers[place.key] = std::nullopt;
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
            row.empty = false;
        } else if (row.confirmed != found->second || row.empty == found->second.has_value()) {
            row.confirmed = found->second;
            row.empty = !found->second.has_value();
            if (row.confirmed && row.confirmed->mark && row.confirmed->mark->photo == photoId())
                row.at = QPointF(row.confirmed->mark->x, row.confirmed->mark->y);
        } else {
            continue;
        }
        rows_.replace(i, std::move(row));
    }
    said_.clear();
    for (const WireRow& row : rows_.rows())
        if (row.said && row.settled())
            said_[*row.said] = row.confirmed;
    changedRows();
}

} // namespace undercowl::ui
