// A few points that say more as a curve: voltage at rest, idle and revs; pressure over days.
#pragma once

#include "core/trade/result.h"

#include <QList>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace undercowl::ui {

// across, up    places of the points, 0 to 1, up from below;  labels  one for each;  spoken  all of them
// low, high     the expected band, -1 where there is none;  lowText, highText
class Curve : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("View models own their plots")
    Q_PROPERTY(QList<double> across READ across NOTIFY changed)
    Q_PROPERTY(QList<double> up READ up NOTIFY changed)
    Q_PROPERTY(QStringList labels READ labels NOTIFY changed)
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed)
    Q_PROPERTY(double low READ low NOTIFY changed)
    Q_PROPERTY(double high READ high NOTIFY changed)
    Q_PROPERTY(QString lowText READ lowText NOTIFY changed)
    Q_PROPERTY(QString highText READ highText NOTIFY changed)

public:
    using QObject::QObject;

    void set(const std::optional<trade::Plot>& plot);

    [[nodiscard]] QList<double> across() const { return across_; }
    [[nodiscard]] QList<double> up() const { return up_; }
    [[nodiscard]] QStringList labels() const { return labels_; }
    [[nodiscard]] QString spoken() const { return labels_.join(QStringLiteral(", ")).replace(u'\n', u' '); }
    [[nodiscard]] double low() const { return low_; }
    [[nodiscard]] double high() const { return high_; }
    [[nodiscard]] QString lowText() const { return lowText_; }
    [[nodiscard]] QString highText() const { return highText_; }

signals:
    void changed();

private:
    QList<double> across_, up_;
    QStringList labels_;
    double low_{-1}, high_{-1};
    QString lowText_, highText_;
};

} // namespace undercowl::ui
