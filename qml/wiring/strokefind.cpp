// Which wire a tap meant, the next one beside it, and wires that are proposed without a stroke.
#include "qml/wiring/strokeview.h"

#include <QLineF>

#include <algorithm>
#include <cmath>
#include <utility>

namespace undercowl::ui {

namespace {

constexpr double touches = 0.06; // a thumb beside an outline still means that one: parts of the photo

double distance(const std::vector<QPointF>& path, QPointF from) {
    double least = 1e9;
    for (const QPointF& point : path)
        least = std::min(least, QLineF(point, from).length());
    return least;
}

} // namespace

const WireRow* StrokeView::shown() const {
    if (firstTap_)
        return &first_;
    return rows_.holds(current_) ? &rows_.rows()[static_cast<std::size_t>(current_)] : nullptr;
}

QVariantList StrokeView::path() const {
    QVariantList list;
    if (const WireRow* wire = shown())
        for (const QPointF& point : wire->path)
            list.append(point);
    return list;
}

qreal StrokeView::across() const {
    const WireRow* wire = shown();
    return wire == nullptr ? 0 : wire->across;
}

bool StrokeView::named() const {
    const WireRow* wire = shown();
    return wire != nullptr && !wire->path.empty() && !wire->settled() && (firstTap_ || named_ == current_);
}

bool StrokeView::level() const {
    const WireRow* wire = shown();
    if (wire == nullptr || wire->path.size() < 2 || !wire->at)
        return false;
    // Where it was tapped: a wire may bend.
    const auto& path = wire->path;
    const auto nearest = std::min_element(path.begin(), path.end(), [&](QPointF a, QPointF b) {
        return QLineF(a, *wire->at).length() < QLineF(b, *wire->at).length();
    });
    const auto i = nearest - path.begin();
    const auto last = std::ssize(path) - 1;
    const QPointF along = path[static_cast<std::size_t>(std::min(last, i + 2))] -
                          path[static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, i - 2))];
    const QSize size = reader_.size();
    return std::abs(along.x() * size.width()) > std::abs(along.y() * size.height());
}

void StrokeView::answered(const sight::WireReading& reading) {
    if (!firstTap_) {
        // A step on to a wire that has a row of its own goes to that row.
        const QPointF at = reader_.relative(reading.at);
        const bool elsewhere = std::exchange(stepped_, false) && reading.found();
        for (int row = 0; elsewhere && row < rows_.count(); ++row) {
            const WireRow& other = rows_.rows()[static_cast<std::size_t>(row)];
            if (row != asked_ && distance(other.path, at) < other.across / 2) {
                asked_ = -1;
                setCurrent(row);
                named_ = row;
                emit currentChanged();
                return;
            }
        }
        reread(reading);
        return;
    }
    WireRow wire = rowFrom(reading);
    // The wire itself, not the place beside it where the thumb came down.
    if (const auto nearest = std::min_element(wire.path.begin(), wire.path.end(),
                                              [&](QPointF a, QPointF b) {
                                                  return QLineF(a, *wire.at).length() <
                                                         QLineF(b, *wire.at).length();
                                              });
        nearest != wire.path.end())
        wire.at = *nearest;
    if (asksForLast_) {
        stroke({*firstTap_, *wire.at});
        return;
    }
    if (reading.found())
        firstTap_ = wire.at;
    first_ = std::move(wire);
    emit currentChanged();
}

void StrokeView::step(bool forward) {
    const WireRow* wire = shown();
    if (wire == nullptr || !wire->at)
        return;
    asked_ = named_ = firstTap_ ? -1 : current_;
    stepped_ = true;
    reader_.beside(*wire->at, forward ? sight::Side::After : sight::Side::Before);
}

void StrokeView::findAll() {
    firstTap_.reset();
    fromMouth_ = false;
    emit currentChanged();
    reader_.propose();
}

void StrokeView::stopFinding() {
    proposal_.reset();
    emit currentChanged();
}

QVariantList StrokeView::outlines() const {
    QVariantList list;
    for (std::size_t i = 0; proposal_ && i < proposal_->wires.size(); ++i) {
        const WireRow row = rowFrom(proposal_->wires[i]);
        QVariantList points;
        for (const QPointF& point : row.path)
            points.append(point);
        list.append(QVariantMap{{QStringLiteral("points"), points},
                                {QStringLiteral("across"), row.across},
                                {QStringLiteral("accepted"), static_cast<bool>(accepted_[i])},
                                {QStringLiteral("perhaps"), proposal_->perhaps[i].has_value()}});
    }
    return list;
}

int StrokeView::acceptedCount() const {
    return proposal_ ? static_cast<int>(std::count(accepted_.begin(), accepted_.end(), true)) : 0;
}

QString StrokeView::findNote() const {
    if (!proposal_)
        return {};
    if (proposal_->wires.empty())
        return fromMouth_ ? tr("No wire could be followed from there. Stroke across the wires instead.")
                          : tr("No wire could be followed on this photo. Stroke across the wires.");
    QString note =
        fromMouth_ ? tr("Followed from the connector: %1, in their order. Touch each that belongs here.")
                         .arg(proposal_->wires.size())
                   : tr("Followed: %1. Touch each that belongs here, or draw a line across the connector's "
                        "mouth: then only its wires are left.")
                         .arg(proposal_->wires.size());
    if (!proposal_->unfollowed.empty())
        note += u' ' + tr("Where ? stands no wire could be followed: if one belongs here, stroke instead.");
    return note;
}

void StrokeView::accept(QPointF at) {
    std::size_t nearest = 0;
    double least = touches;
    for (std::size_t i = 0; i < accepted_.size(); ++i)
        if (const double away = distance(rowFrom(proposal_->wires[i]).path, at); away < least) {
            least = away;
            nearest = i;
        }
    if (least < touches)
        accepted_[nearest] = !accepted_[nearest];
    emit currentChanged();
}

void StrokeView::acceptAll() {
    for (std::size_t i = 0; i < accepted_.size(); ++i)
        accepted_[i] = !proposal_->perhaps[i];
    emit currentChanged();
}

void StrokeView::takeAccepted() {
    if (acceptedCount() == 0)
        return;
    std::vector<sight::WireReading> wires;
    for (std::size_t i = 0; i < accepted_.size(); ++i)
        if (accepted_[i])
            wires.push_back(proposal_->wires[i]);
    proposal_.reset();
    swept(wires);
}

} // namespace undercowl::ui
