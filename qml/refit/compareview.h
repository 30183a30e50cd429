// The wires after the work against the wires before it: a stroke on the after photo, compared with the map.
//
// What the mechanic has confirmed as found stands for the photo before: it is better known than any reading.
#pragma once

#include "core/sight/compare.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"
#include "qml/wiring/photoreader.h"

#include <QLineF>
#include <QSize>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// gathering, half   what is compared
// possible          at least two wires were confirmed as found on a photo; otherwise 'hint' says what to do
// before, after     photos; afters: those that may be chosen, newest first
// verdict           "same", "changed", "cannot tell" or empty before the stroke
// result            in words, with the places
// reasons           why it cannot tell, with remedies
// alignedBefore, alignedAfter   how each photo lies when the places of both stand above one another: x, y
// (what is in
//                    the middle, parts of the photo), turn (degrees), span (from the first to the last place
//                    that both have, part of the photo's width); empty while it is not known
// slope              of that line, degrees from level
// marksBefore, marksAfter   for PhotoFrame: the places that changed, or all that were read
class CompareView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString gathering MEMBER gatheringId_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QString half READ half WRITE setHalf NOTIFY changed)
    Q_PROPERTY(bool possible READ possible NOTIFY changed)
    Q_PROPERTY(QString hint READ hint NOTIFY changed)
    Q_PROPERTY(QUrl before READ before NOTIFY changed)
    Q_PROPERTY(QUrl after READ after NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* afters READ afters CONSTANT)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed)
    Q_PROPERTY(QString result READ result NOTIFY changed)
    Q_PROPERTY(QString reasons READ reasons NOTIFY changed)
    Q_PROPERTY(QVariantList marksBefore READ marksBefore NOTIFY changed)
    Q_PROPERTY(QVariantList marksAfter READ marksAfter NOTIFY changed)
    Q_PROPERTY(QVariantMap alignedBefore READ alignedBefore NOTIFY changed)
    Q_PROPERTY(QVariantMap alignedAfter READ alignedAfter NOTIFY changed)
    Q_PROPERTY(qreal slope READ slope NOTIFY changed)
    Q_PROPERTY(bool waitsForEnd READ waitsForEnd NOTIFY changed)
    Q_PROPERTY(undercowl::ui::PhotoReader* reader READ reader CONSTANT)

public:
    explicit CompareView(QObject* parent = nullptr);

    [[nodiscard]] QString half() const;
    void setHalf(const QString& code);
    [[nodiscard]] bool possible() const { return before_.size() > 1; }
    [[nodiscard]] QString hint() const;
    [[nodiscard]] QUrl before() const;
    [[nodiscard]] QUrl after() const;
    [[nodiscard]] LineModel* afters() { return &afters_; }
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString result() const;
    [[nodiscard]] QString reasons() const;
    [[nodiscard]] QVariantList marksBefore() const;
    [[nodiscard]] QVariantList marksAfter() const;
    [[nodiscard]] QVariantMap alignedBefore() const;
    [[nodiscard]] QVariantMap alignedAfter() const;
    [[nodiscard]] qreal slope() const;
    [[nodiscard]] bool waitsForEnd() const { return firstTap_.has_value(); }
    [[nodiscard]] PhotoReader* reader() { return &reader_; }

    Q_INVOKABLE void chooseAfter(const QString& photo);
    Q_INVOKABLE void stroke(const QVariantList& points); // place 1 first, parts of the after photo
    Q_INVOKABLE void tap(qreal x, qreal y);              // the first, then the last wire
    Q_INVOKABLE void reverse();                          // the stroke ran the other way
    Q_INVOKABLE void again();                            // another stroke

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const wiring::Gathering* find() const;
    void compareNow();
    [[nodiscard]] QVariantList marks(const std::vector<sight::WireReading>& row, bool isBefore) const;
    struct Lines {
        QLineF before;
        QLineF after;
    };
    // From the first to the last place that both photos have, in pixels; null lines while nothing is
    // compared.
    [[nodiscard]] Lines lines() const;
    // Where a wire would be that only the other photo shows.
    [[nodiscard]] QVariantList expected(bool isBefore) const;
    [[nodiscard]] QSize sizeOf(bool isBefore) const;
    [[nodiscard]] int placeAt(std::size_t row) const; // of the row-th wire before

    QString gatheringId_;
    wiring::Half half_{};
    std::vector<sight::WireReading> before_;
    std::vector<int> places_;
    std::string beforePhoto_;
    QString after_;
    std::vector<sight::WireReading> read_;
    std::optional<sight::Comparison> comparison_;
    std::optional<QPointF> firstTap_;
    LineModel afters_;
    PhotoReader reader_;
};

} // namespace undercowl::ui
