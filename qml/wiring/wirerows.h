// The wires of one stroke, in order of place, as proposed and as far as the mechanic has confirmed them.
//
// Pure bookkeeping: what a row says to the journal is in strokesheet.h. Places count up along the rows; a row
// that shares its place holds the second wire of the one before it; an empty row stands for a place without a
// wire.
#pragma once

#include "core/sight/reading.h"
#include "core/wiring/map.h"

#include <QAbstractListModel>
#include <QByteArray>
#include <QPointF>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

namespace undercowl::ui {

struct Proposed {
    colour::WireColour wire;
    double probability{};
};

struct WireRow {
    std::vector<Proposed> candidates; // best first
    bool sure{};
    std::vector<sight::Doubt> doubts;
    std::optional<QPointF> at; // relative to the photo; none for a row that was put in by hand
    std::vector<QPointF> path; // relative
    double across{};           // width of the wire as a part of the photo's width; 0 where it was not seen
    bool empty{};              // the mechanic says that nothing is in this place
    bool sharesPlace{};        // second wire in the place of the row before
    std::optional<wiring::PlaceAnswer> confirmed;
    std::optional<wiring::PlaceKey> said; // where the journal has it

    [[nodiscard]] bool settled() const { return empty || confirmed.has_value(); }
    [[nodiscard]] std::optional<colour::WireColour> shown() const; // confirmed, or else the best candidate
};

// Where each row belongs. A second wire needs a first: the first row never shares, nor a row after one that
// shares or is empty.
[[nodiscard]] std::vector<wiring::PlaceKey> placesOf(const std::vector<WireRow>& rows, wiring::Half half,
                                                     int start = 1);

// Rows as JSON and back, for the draft; an unreadable one gives no rows.
[[nodiscard]] QByteArray toJson(const std::vector<WireRow>& rows);
[[nodiscard]] std::vector<WireRow> rowsFromJson(const QByteArray& json);

// Roles: number, slot, base, tracer, code words, sureness in words, reason in words, sure, found, empty,
// confirmed, place in words.
class WireRows : public QAbstractListModel {
    Q_OBJECT
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(int places READ places NOTIFY changed FINAL)
    Q_PROPERTY(int sureCount READ sureCount NOTIFY changed FINAL)
    Q_PROPERTY(int openCount READ openCount NOTIFY changed FINAL)
    QML_ANONYMOUS

public:
    enum Role {
        NumberRole = Qt::UserRole + 1,
        PlaceRole,
        BaseRole,
        TracerRole,
        WordsRole,
        SurenessRole,
        ReasonRole,
        SureRole,
        FoundRole,
        EmptyRole,
        ConfirmedRole,
    };

    explicit WireRows(QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int places() const;    // how many places the rows take
    [[nodiscard]] int sureCount() const; // proposed as sure and not yet confirmed
    [[nodiscard]] int openCount() const; // neither confirmed nor empty

    [[nodiscard]] const std::vector<WireRow>& rows() const { return rows_; }
    [[nodiscard]] const std::vector<wiring::PlaceKey>& keys() const { return keys_; }
    [[nodiscard]] bool holds(int row) const { return row >= 0 && row < count(); }
    // The first row at or after `from`, going round, that is neither confirmed nor empty; -1 if none.
    [[nodiscard]] int nextOpen(int from) const;
    Q_INVOKABLE int nextOpenFrom(int from) const { return nextOpen(from); }
    // The row whose wire lies nearest to the point, within `reach` (relative); -1 if none.
    [[nodiscard]] int nearest(QPointF point, double reach) const;

    void setHalf(wiring::Half half);
    void setStart(int number); // the place of the first row: the second row of cavities does not begin at 1
    [[nodiscard]] int start() const { return start_; }
    void reset(std::vector<WireRow> rows);
    void replace(int row, WireRow with);
    void insert(int row, WireRow with);
    void removeRow(int row);
    void reverse();

signals:
    void changed();

private:
    void renumber();

    std::vector<WireRow> rows_;
    std::vector<wiring::PlaceKey> keys_;
    wiring::Half half_{};
    int start_{1};
};

} // namespace undercowl::ui
