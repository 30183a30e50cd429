// Rechecks of all jobs that are due by a day, the latest first: a reminder for the shop.
#pragma once

#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// lines: id the job, title what, detail machine and day, mark "due" when it is late.
class DueView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)
    Q_PROPERTY(int late READ late NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)

public:
    explicit DueView(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] LineModel* lines() { return &lines_; }
    [[nodiscard]] int late() const { return late_; }
    [[nodiscard]] bool ready() const { return ready_; }

signals:
    void changed();

private:
    ShopSession* session_{};
    LineModel lines_;
    int late_{};
    bool ready_{};
};

} // namespace undercowl::ui
