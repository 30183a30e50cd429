// Rechecks of all jobs that are due by a day, the latest first: a reminder for the shop.
#pragma once

#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

#include <cstddef>
#include <vector>

namespace undercowl::ui {

// active: it may be read; what is shown first waits for nothing.
// lines: id the job, title what, detail machine and day, mark "due" when it is late.
class DueView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)
    Q_PROPERTY(int late READ late NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)

public:
    explicit DueView(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] bool active() const { return active_; }
    void setActive(bool active);
    [[nodiscard]] LineModel* lines() { return &lines_; }
    [[nodiscard]] int late() const { return late_; }
    [[nodiscard]] bool ready() const { return ready_; }

    // Looks again. A few jobs at a time: whatever else is asked of the store meanwhile comes in between.
    Q_INVOKABLE void read();

    struct Due {
        job::TimeMs at{};
        Line line;
    };

signals:
    void changed();

private:
    void readOn(std::vector<store::JobLine> jobs, std::size_t from, std::vector<Due> found);
    void show(std::vector<Due> found);

    ShopSession* session_{};
    bool active_{true};
    bool complete_{};
    bool reading_{};
    LineModel lines_;
    int late_{};
    bool ready_{};
};

} // namespace undercowl::ui
