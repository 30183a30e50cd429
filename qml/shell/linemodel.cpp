#include "qml/shell/linemodel.h"

#include <algorithm>
#include <utility>

namespace undercowl::ui {

void LineModel::setLines(std::vector<Line> lines) {
    const auto sameId = [](const Line& a, const Line& b) { return a.id == b.id; };
    const auto before = std::ssize(lines_);
    // Between a beginning and an end that keep their ids lies what came, went or changed its place.
    const auto first = std::ranges::mismatch(lines_, lines, sameId).in1 - lines_.begin();
    const auto kept =
        std::mismatch(lines_.rbegin(), lines_.rend() - first, lines.rbegin(), lines.rend() - first, sameId);
    const auto end = lines_.rend() - kept.first;
    const auto newEnd = lines.rend() - kept.second;
    const bool allNew = first == 0 && end == before && newEnd == std::ssize(lines);
    if (moveOne(lines, first, end, newEnd)) {
        // its content may have changed with its place
    } else if (allNew && before > 0 && newEnd > 0) {
        beginResetModel();
        lines_ = std::move(lines);
        endResetModel();
        emit countChanged();
        return;
    } else {
        replace(lines, first, end, newEnd);
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (lines_[i] == lines[i])
            continue;
        lines_[i] = std::move(lines[i]);
        const auto at = index(static_cast<int>(i));
        emit dataChanged(at, at);
    }
    if (before != count())
        emit countChanged();
}

bool LineModel::moveOne(const std::vector<Line>& lines, std::ptrdiff_t first, std::ptrdiff_t end,
                        std::ptrdiff_t newEnd) {
    if (end != newEnd || end - first < 2)
        return false;
    const auto at = lines_.begin() + first;
    const auto last = lines_.begin() + end;
    const auto now = lines.begin() + first;
    const auto same = [](auto from, auto to, auto other) {
        return std::equal(from, to, other, [](const Line& a, const Line& b) { return a.id == b.id; });
    };
    const bool down = same(at + 1, last, now) && at->id == lines[static_cast<std::size_t>(end - 1)].id;
    const bool up = !down && same(at, last - 1, now + 1) && (last - 1)->id == now->id;
    if (!down && !up)
        return false;
    const auto from = static_cast<int>(down ? first : end - 1);
    beginMoveRows({}, from, from, {}, static_cast<int>(down ? end : first));
    std::rotate(at, down ? at + 1 : last - 1, last);
    endMoveRows();
    return true;
}

void LineModel::replace(const std::vector<Line>& lines, std::ptrdiff_t first, std::ptrdiff_t end,
                        std::ptrdiff_t newEnd) {
    if (first < end) {
        beginRemoveRows({}, static_cast<int>(first), static_cast<int>(end) - 1);
        lines_.erase(lines_.begin() + first, lines_.begin() + end);
        endRemoveRows();
    }
    if (first < newEnd) {
        beginInsertRows({}, static_cast<int>(first), static_cast<int>(newEnd) - 1);
        lines_.insert(lines_.begin() + first, lines.begin() + first, lines.begin() + newEnd);
        endInsertRows();
    }
}

int LineModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant LineModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= count())
        return {};
    const auto& line = lines_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case LineId: return line.id;
    case Qt::DisplayRole:
    case Title: return line.title;
    case Detail: return line.detail;
    case More: return line.more;
    case Aside: return line.aside;
    case Mark: return line.mark;
    case Picture: return line.picture;
    case On: return line.on;
    case Group: return line.group;
    default: return {};
    }
}

QHash<int, QByteArray> LineModel::roleNames() const {
    return {{LineId, "lineId"}, {Title, "title"},     {Detail, "detail"}, {More, "more"},  {Aside, "aside"},
            {Mark, "mark"},     {Picture, "picture"}, {On, "on"},         {Group, "group"}};
}

} // namespace undercowl::ui
