// Where the owner signs with a finger. Strokes are kept as they are drawn; the picture is made when it is
// wanted.
#pragma once

#include <QColor>
#include <QImage>
#include <QPolygonF>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace undercowl::ui {

class SignaturePad : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY inkChanged)
    Q_PROPERTY(bool empty READ empty NOTIFY drawn)

public:
    explicit SignaturePad(QQuickItem* parent = nullptr);

    [[nodiscard]] bool empty() const { return strokes_.empty(); }
    // Black on white, 800 pixels wide; null while nothing was drawn.
    [[nodiscard]] QImage picture() const;

    Q_INVOKABLE void clear();

    void paint(QPainter* painter) override;

signals:
    void inkChanged();
    void drawn();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

private:
    void draw(QPainter& painter, const QColor& ink, qreal scale) const;

    std::vector<QPolygonF> strokes_;
    QColor ink_{Qt::black};
};

} // namespace undercowl::ui
