// A list on the screen: lines that all look alike. One model class for all lists that hold no more than this.
#pragma once

#include <QAbstractListModel>
#include <QString>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <cstddef>
#include <vector>

namespace undercowl::ui {

struct Line {
    QString id{};
    QString title{};
    QString detail{}; // second line; may be empty
    QString more{};   // third line
    QString aside{};  // at the end of the first line: a time, a state
    QString mark{};   // "unsafe", "soon", "note", "waiting", "done" ...: told by shape and word; empty: none
    QUrl picture{};   // empty: none
    bool on{};        // ticked, settled, chosen
    QString group{};  // heading over it and those that follow it; empty where none begins

    friend bool operator==(const Line&, const Line&) = default;
};

class LineModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("View models own their lists")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    enum Role { LineId = Qt::UserRole, Title, Detail, More, Aside, Mark, Picture, On, Group };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int count() const { return static_cast<int>(lines_.size()); }
    [[nodiscard]] const std::vector<Line>& lines() const { return lines_; }
    // Lines whose id stays are changed where they are, and one that changes its place is moved there, so that
    // a list keeps its position and its rows.
    void setLines(std::vector<Line> lines);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();

private:
    // What lies from 'first' to 'end' is what in 'lines' lies from there to 'newEnd'. The first of the two
    // does so only where one line has changed its place, otherwise nothing.
    [[nodiscard]] bool moveOne(const std::vector<Line>& lines, std::ptrdiff_t first, std::ptrdiff_t end,
                               std::ptrdiff_t newEnd);
    void replace(const std::vector<Line>& lines, std::ptrdiff_t first, std::ptrdiff_t end,
                 std::ptrdiff_t newEnd);

    std::vector<Line> lines_;
};

} // namespace undercowl::ui
