#include "qml/shell/linemodel.h"

#include <algorithm>
#include <utility>

namespace undercowl::ui {

void LineModel::setLines(std::vector<Line> lines) {
    const auto sameId = [](const Line& a, const Line& b) { return a.id == b.id; };
    const auto common = std::min(lines_.size(), lines.size());
    const bool grownOnly = std::equal(lines_.begin(), lines_.begin() + static_cast<std::ptrdiff_t>(common),
                                      lines.begin(), sameId);
    if (!grownOnly || lines.size() < lines_.size()) {
        beginResetModel();
        lines_ = std::move(lines);
        endResetModel();
        emit countChanged();
        return;
    }
    for (std::size_t i = 0; i < common; ++i) {
        if (lines_[i] == lines[i])
            continue;
        lines_[i] = lines[i];
        const auto at = index(static_cast<int>(i));
        emit dataChanged(at, at);
    }
    if (lines.size() == common)
        return;
    beginInsertRows({}, static_cast<int>(common), static_cast<int>(lines.size()) - 1);
    lines_ = std::move(lines);
    endInsertRows();
    emit countChanged();
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
