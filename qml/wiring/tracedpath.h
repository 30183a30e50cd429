// A line drawn over a photo, light in dark so that it shows on any picture: the finger's stroke, or the wire
// that was followed.
#pragma once

#include <QColor>
#include <QPolygonF>
#include <QQuickPaintedItem>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// points: in the item's own coordinates; fewer than two draw nothing.
// across: of what is outlined, dp: its two rims are drawn as well; 0 for a bare line.
// light, dark: the line and its rim. thickness: of the line, dp.
class TracedPath : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList points READ points WRITE setPoints NOTIFY pointsChanged)
    Q_PROPERTY(qreal across MEMBER across_ NOTIFY lookChanged)
    Q_PROPERTY(QColor light MEMBER light_ NOTIFY lookChanged)
    Q_PROPERTY(QColor dark MEMBER dark_ NOTIFY lookChanged)
    Q_PROPERTY(qreal thickness MEMBER thickness_ NOTIFY lookChanged)

public:
    explicit TracedPath(QQuickItem* parent = nullptr);

    [[nodiscard]] QVariantList points() const;
    void setPoints(const QVariantList& points);
    void paint(QPainter* painter) override;

signals:
    void pointsChanged();
    void lookChanged();

private:
    QPolygonF points_;
    qreal across_{};
    QColor light_{Qt::white};
    QColor dark_{Qt::black};
    qreal thickness_{3};
};

} // namespace undercowl::ui
