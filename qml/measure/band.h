// A judged value against its limits, as places on a line from 0 to 1: what a small plot draws.
#pragma once

#include "core/verdict/decide.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace undercowl::ui {

// shown                 there is something to draw
// low, high             the limits; -1 where there is none
// acceptFrom, acceptTo  the guard band's inner ends; -1 where there is none
// value                 the measured value;  half  the expanded uncertainty's width, to each side
// lowText, highText, valueText   as read beside the plot
class Band : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("View models own their plots")
    Q_PROPERTY(bool shown READ shown NOTIFY changed)
    Q_PROPERTY(double low READ low NOTIFY changed)
    Q_PROPERTY(double high READ high NOTIFY changed)
    Q_PROPERTY(double acceptFrom READ acceptFrom NOTIFY changed)
    Q_PROPERTY(double acceptTo READ acceptTo NOTIFY changed)
    Q_PROPERTY(double value READ value NOTIFY changed)
    Q_PROPERTY(double half READ half NOTIFY changed)
    Q_PROPERTY(QString lowText READ lowText NOTIFY changed)
    Q_PROPERTY(QString highText READ highText NOTIFY changed)
    Q_PROPERTY(QString valueText READ valueText NOTIFY changed)

public:
    using QObject::QObject;

    void set(const std::optional<verdict::Verdict>& verdict);

    [[nodiscard]] bool shown() const { return shown_; }
    [[nodiscard]] double low() const { return low_; }
    [[nodiscard]] double high() const { return high_; }
    [[nodiscard]] double acceptFrom() const { return acceptFrom_; }
    [[nodiscard]] double acceptTo() const { return acceptTo_; }
    [[nodiscard]] double value() const { return value_; }
    [[nodiscard]] double half() const { return half_; }
    [[nodiscard]] QString lowText() const { return lowText_; }
    [[nodiscard]] QString highText() const { return highText_; }
    [[nodiscard]] QString valueText() const { return valueText_; }

signals:
    void changed();

private:
    bool shown_{};
    double low_{-1}, high_{-1}, acceptFrom_{-1}, acceptTo_{-1}, value_{}, half_{};
    QString lowText_, highText_, valueText_;
};

} // namespace undercowl::ui
