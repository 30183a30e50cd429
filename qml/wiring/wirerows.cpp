#include "qml/wiring/wirerows.h"

#include "qml/wiring/words.h"

#include <QLineF>

#include <algorithm>
#include <utility>

namespace undercowl::ui {

std::optional<colour::WireColour> WireRow::shown() const {
    if (confirmed) {
        return confirmed->wire.colour;
    }
    return candidates.empty() ? std::nullopt : std::optional(candidates.front().wire);
}

std::vector<wiring::PlaceKey> placesOf(const std::vector<WireRow>& rows, wiring::Half half, int start) {
    std::vector<wiring::PlaceKey> keys;
    keys.reserve(rows.size());
    int number = start - 1;
    bool mayShare = false;
    for (const WireRow& row : rows) {
        const bool shares = row.sharesPlace && mayShare && !row.empty;
        number += shares ? 0 : 1;
        keys.push_back({half, number, shares ? 2 : 1});
        mayShare = !shares && !row.empty;
    }
    return keys;
}

WireRows::WireRows(QObject* parent) : QAbstractListModel(parent) {}

int WireRows::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant WireRows::data(const QModelIndex& index, int role) const {
    if (!holds(index.row())) {
        return {};
    }
    const auto at = static_cast<std::size_t>(index.row());
    const WireRow& row = rows_[at];
    const auto shown = row.empty ? std::nullopt : row.shown();
    switch (role) {
    case NumberRole: return keys_[at].number;
    case PlaceRole: return words(keys_[at]);
    case BaseRole: return shown ? baseCode(*shown) : QString();
    case TracerRole: return shown ? tracerCode(*shown) : QString();
    case WordsRole: return row.empty ? tr("empty") : shown ? words(*shown) : tr("no wire found");
    case SurenessRole: {
        if (row.settled()) {
            return row.empty ? tr("empty") : tr("confirmed");
        }
        std::vector<sight::Candidate> candidates;
        for (const Proposed& one : row.candidates) {
            candidates.push_back({one.wire, one.probability});
        }
        // A photo shows one side: a tracer that is turned away is not to be seen on it.
        return row.sure && shown && !shown->tracer ? tr("sure, of the side that is seen")
                                                   : sureness(candidates, row.sure);
    }
    case ReasonRole: {
        QStringList reasons;
        for (const sight::Doubt doubt : row.settled() ? std::vector<sight::Doubt>{} : row.doubts) {
            reasons += words(doubt);
        }
        if (row.sure && !row.settled() && shown && !shown->tracer) {
            reasons += tr("turn the wire, a tracer may lie on its other side");
        }
        return reasons.join(QStringLiteral("; "));
    }
    case SureRole: return row.sure;
    case FoundRole: return !row.candidates.empty();
    case EmptyRole: return row.empty;
    case ConfirmedRole: return row.confirmed.has_value();
    default: return {};
    }
}

QHash<int, QByteArray> WireRows::roleNames() const {
    return {{NumberRole, "number"}, {PlaceRole, "place"},        {BaseRole, "base"},
            {TracerRole, "tracer"}, {WordsRole, "words"},        {SurenessRole, "sureness"},
            {ReasonRole, "reason"}, {SureRole, "sure"},          {FoundRole, "found"},
            {EmptyRole, "empty"},   {ConfirmedRole, "confirmed"}};
}

int WireRows::places() const {
    return keys_.empty() ? 0 : keys_.back().number - start_ + 1;
}

int WireRows::sureCount() const {
    return static_cast<int>(
        std::ranges::count_if(rows_, [](const WireRow& row) { return row.sure && !row.settled(); }));
}

int WireRows::openCount() const {
    return static_cast<int>(std::ranges::count_if(rows_, [](const WireRow& row) { return !row.settled(); }));
}

int WireRows::nextOpen(int from) const {
    for (int step = 0; step < count(); ++step) {
        const int row = (std::max(from, 0) + step) % count();
        if (!rows_[static_cast<std::size_t>(row)].settled()) {
            return row;
        }
    }
    return -1;
}

int WireRows::nearest(QPointF point, double reach) const {
    int best = -1;
    double least = reach;
    for (int row = 0; row < count(); ++row) {
        const WireRow& candidate = rows_[static_cast<std::size_t>(row)];
        auto points = candidate.path;
        if (candidate.at) {
            points.push_back(*candidate.at);
        }
        for (const QPointF& one : points) {
            if (const double distance = QLineF(one, point).length(); distance < least) {
                least = distance;
                best = row;
            }
        }
    }
    return best;
}

void WireRows::setHalf(wiring::Half half) {
    half_ = half;
    renumber();
}

void WireRows::setStart(int number) {
    start_ = number;
    renumber();
}

// Numbers depend on all rows before, so that every change tells of all rows; there are at most some dozens.
void WireRows::renumber() {
    keys_ = placesOf(rows_, half_, start_);
    if (!rows_.empty()) {
        emit dataChanged(index(0), index(count() - 1));
    }
    emit changed();
}

void WireRows::reset(std::vector<WireRow> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    keys_ = placesOf(rows_, half_, start_);
    endResetModel();
    emit changed();
}

void WireRows::replace(int row, WireRow with) {
    rows_.at(static_cast<std::size_t>(row)) = std::move(with);
    renumber();
}

void WireRows::insert(int row, WireRow with) {
    const int at = std::clamp(row, 0, count());
    beginInsertRows({}, at, at);
    rows_.insert(rows_.begin() + at, std::move(with));
    keys_ = placesOf(rows_, half_, start_);
    endInsertRows();
    renumber();
}

void WireRows::removeRow(int row) {
    beginRemoveRows({}, row, row);
    rows_.erase(rows_.begin() + row);
    keys_ = placesOf(rows_, half_, start_);
    endRemoveRows();
    renumber();
}

void WireRows::reverse() {
    // A pair that shares a place stays a pair: the second of it was read after the first, now before it.
    beginResetModel();
    const auto keys = placesOf(rows_, half_, start_);
    std::vector<WireRow> turned;
    for (std::size_t at = rows_.size(); at-- > 0;) {
        WireRow row = rows_[at];
        const bool paired = at + 1 < rows_.size() && keys[at + 1].slot == 2;
        row.sharesPlace = paired;
        turned.push_back(std::move(row));
    }
    rows_ = std::move(turned);
    keys_ = placesOf(rows_, half_, start_);
    endResetModel();
    emit changed();
}

} // namespace undercowl::ui
