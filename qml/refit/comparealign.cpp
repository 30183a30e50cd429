// How the photos before and after are laid above one another: by the line through their places.
#include "qml/refit/compareview.h"

#include <algorithm>

namespace undercowl::ui {

namespace {

// The first and the last of a row, those left out that the other photo does not have.
QLineF lineThrough(const std::vector<sight::WireReading>& row, const std::vector<sight::Change>& changes,
                   sight::ChangeKind onlyHere) {
    std::vector<QPointF> places;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const bool alone = std::ranges::any_of(changes, [&](const sight::Change& change) {
            return change.kind == onlyHere &&
                   std::ranges::find(change.places, static_cast<int>(i) + 1) != change.places.end();
        });
        if (!alone)
            places.emplace_back(row[i].at.x, row[i].at.y);
    }
    return places.size() < 2 ? QLineF() : QLineF(places.front(), places.back());
}

QVariantMap laid(const QLineF& line, QSize photo, qreal turn) {
    if (line.isNull() || photo.isEmpty())
        return {};
    return {{QStringLiteral("x"), line.center().x() / photo.width()},
            {QStringLiteral("y"), line.center().y() / photo.height()},
            {QStringLiteral("turn"), turn},
            {QStringLiteral("span"), line.length() / photo.width()}};
}

} // namespace

QVariantList CompareView::expected(bool isBefore) const {
    const Lines both = lines();
    const QSize photo = sizeOf(isBefore);
    QVariantList list;
    if (both.before.isNull() || photo.isEmpty())
        return list;
    const QLineF& from = isBefore ? both.after : both.before;
    const QLineF& to = isBefore ? both.before : both.after;
    const qreal turn = to.angle() - from.angle();
    const auto& others = isBefore ? read_ : before_;
    const auto kind = isBefore ? sight::ChangeKind::Extra : sight::ChangeKind::Missing;
    for (const sight::Change& change : comparison_->changes)
        for (const int place : change.places) {
            const auto row = static_cast<std::size_t>(place) - 1;
            if (change.kind != kind || row >= others.size())
                continue;
            QLineF towards(from.p1(), {others[row].at.x, others[row].at.y});
            towards.setAngle(towards.angle() + turn);
            towards.setLength(towards.length() * to.length() / from.length());
            towards.translate(to.p1() - from.p1());
            list.append(QVariantMap{
                {QStringLiteral("x"), towards.x2() / photo.width()},
                {QStringLiteral("y"), towards.y2() / photo.height()},
                {QStringLiteral("label"), QStringLiteral("%1?").arg(isBefore ? place : placeAt(row))}});
        }
    return list;
}

CompareView::Lines CompareView::lines() const {
    if (!comparison_)
        return {};
    const Lines lines{lineThrough(before_, comparison_->changes, sight::ChangeKind::Missing),
                      lineThrough(read_, comparison_->changes, sight::ChangeKind::Extra)};
    return lines.before.isNull() || lines.after.isNull() ? Lines{} : lines;
}

QSize CompareView::sizeOf(bool isBefore) const {
    const auto now = snapshot();
    const auto* photo =
        now == nullptr ? nullptr : job::findPhoto(now->job, isBefore ? beforePhoto_ : after_.toStdString());
    return photo == nullptr ? QSize() : QSize(photo->width, photo->height);
}

QVariantMap CompareView::alignedBefore() const {
    return laid(lines().before, sizeOf(true), 0);
}

QVariantMap CompareView::alignedAfter() const {
    const Lines both = lines();
    // QLineF counts against the clock, a turn on the screen goes with it.
    return laid(both.after, sizeOf(false),
                both.before.isNull() ? 0 : both.after.angle() - both.before.angle());
}

qreal CompareView::slope() const {
    const QLineF before = lines().before;
    return before.isNull() ? 0 : before.angle();
}

} // namespace undercowl::ui
