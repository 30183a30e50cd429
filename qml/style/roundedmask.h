// Four corners in the ground's colour, laid over a picture: rounds it without a shader.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// color: what lies around the picture. radius: of the corners, in dp.
class RoundedMask : public QQuickPaintedItem {
    Q_OBJECT
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY changed FINAL)
    Q_PROPERTY(qreal radius READ radius WRITE setRadius NOTIFY changed FINAL)
    QML_ELEMENT

public:
    explicit RoundedMask(QQuickItem* parent = nullptr);

    [[nodiscard]] QColor color() const { return color_; }
    void setColor(const QColor& color);
    [[nodiscard]] qreal radius() const { return radius_; }
    void setRadius(qreal radius);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QColor color_{Qt::black};
    qreal radius_ = 0;
};

} // namespace undercowl::ui
