// A length of insulation: base colour, tracer running round it, light from above.
#pragma once

#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>

#include "core/colour/insulation.h"

namespace undercowl::ui {

// base, tracer: codes as in core/colour ("GY", "LBU"), in any case; an empty or unknown tracer draws none, an
// empty or
//   unknown base draws an empty outline, which says that the colour is not known.
// edge: the outline's colour, so that black stands out from a dark ground and white from paper.
// hatched: the colours' hatching over the right third, as in the picker.
// gap: how wide the middle is that a sleeve covers; the tracer's bands are placed to show on both sides of
// it.
class WireStretch : public QQuickPaintedItem {
    Q_OBJECT
    Q_PROPERTY(QString base READ base WRITE setBase NOTIFY changed FINAL)
    Q_PROPERTY(QString tracer READ tracer WRITE setTracer NOTIFY changed FINAL)
    Q_PROPERTY(QColor edge READ edge WRITE setEdge NOTIFY changed FINAL)
    Q_PROPERTY(bool hatched READ hatched WRITE setHatched NOTIFY changed FINAL)
    Q_PROPERTY(qreal radius READ radius WRITE setRadius NOTIFY changed FINAL)
    Q_PROPERTY(qreal gap READ gap WRITE setGap NOTIFY changed FINAL)
    QML_ELEMENT

public:
    explicit WireStretch(QQuickItem* parent = nullptr);

    [[nodiscard]] QString base() const { return base_; }
    void setBase(const QString& code);
    [[nodiscard]] QString tracer() const { return tracer_; }
    void setTracer(const QString& code);
    [[nodiscard]] QColor edge() const { return edge_; }
    void setEdge(const QColor& edge);
    [[nodiscard]] bool hatched() const { return hatched_; }
    void setHatched(bool hatched);
    [[nodiscard]] qreal radius() const { return radius_; }
    void setRadius(qreal radius);
    [[nodiscard]] qreal gap() const { return gap_; }
    void setGap(qreal gap);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    template<typename Value>
    void set(Value& member, const Value& value);
    void paintTracer(QPainter& painter, const QRectF& body, colour::Insulation tracer) const;

    QString base_;
    QString tracer_;
    QColor edge_{Qt::black};
    bool hatched_ = false;
    qreal radius_ = 10;
    qreal gap_ = 0;
};

} // namespace undercowl::ui
