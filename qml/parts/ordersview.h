// One list of everything to order, over all jobs in the shop.
#pragma once

#include "core/handover/orders.h"
#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace undercowl::ui {

// lines: mark "supplier": title its name, detail the sum; else title the part, detail numbers, more machine
// and price.
class OrdersView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(QString asText READ asText NOTIFY changed)
    Q_PROPERTY(QString folder READ folder NOTIFY changed)
    Q_PROPERTY(QStringList files READ files NOTIFY changed)

public:
    explicit OrdersView(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] LineModel* lines() { return &lines_; }
    [[nodiscard]] bool ready() const { return ready_; }
    [[nodiscard]] QString asText() const; // to be copied or sent
    [[nodiscard]] const QString& folder() const { return folder_; }
    [[nodiscard]] const QStringList& files() const { return files_; } // that were written

    Q_INVOKABLE void copy() const; // the text, to the clipboard
    Q_INVOKABLE void write();      // text, spreadsheet and PDF, off the touch thread

signals:
    void changed();

private:
    void show(std::vector<handover::OrderGroup> groups);

    ShopSession* session_{};
    std::vector<handover::OrderGroup> groups_;
    bool ready_{};
    bool writing_{};
    QString folder_;
    QStringList files_;
    LineModel lines_;
};

} // namespace undercowl::ui
