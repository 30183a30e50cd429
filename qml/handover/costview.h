// What the job costs, and what was expected.
#pragma once

#include "core/job/cost.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// rows: title what, detail minutes, aside the sum. lines: what the mechanic added, id its place.
// The terms' values: currency, rate, tax; the line's: what, sum.
class CostView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* rows READ rows CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)
    Q_PROPERTY(QString net READ net NOTIFY changed)
    Q_PROPERTY(QString tax READ tax NOTIFY changed)
    Q_PROPERTY(QString gross READ gross NOTIFY changed)
    Q_PROPERTY(QString expected READ expected NOTIFY changed)
    Q_PROPERTY(QString spent READ spent NOTIFY changed)
    Q_PROPERTY(QStringList doubts READ doubts NOTIFY changed)
    Q_PROPERTY(bool reckoned READ reckoned NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* rows() { return &rows_; }
    [[nodiscard]] LineModel* lines() { return &lines_; }
    [[nodiscard]] const QString& net() const { return net_; }
    [[nodiscard]] const QString& tax() const { return tax_; }
    [[nodiscard]] const QString& gross() const { return gross_; }
    [[nodiscard]] const QString& expected() const { return expected_; } // minutes and the approved sums
    [[nodiscard]] const QString& spent() const { return spent_; }
    [[nodiscard]] const QStringList& doubts() const { return doubts_; }
    [[nodiscard]] bool reckoned() const { return reckoned_; } // the terms were said

    Q_INVOKABLE QVariantMap known() const; // the terms of the job, else of the settings
    // Says the terms, and keeps them in the settings for the next job.
    Q_INVOKABLE void settle(undercowl::ui::FormDraft* draft);
    Q_INVOKABLE void addLine(undercowl::ui::FormDraft* draft);
    Q_INVOKABLE void dropLine(int place);

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] job::CostTerms terms() const;
    void say(const job::CostTerms& terms, const QString& undoText, FormDraft* draft);

    LineModel rows_, lines_;
    QString net_, tax_, gross_, expected_, spent_;
    QStringList doubts_;
    bool reckoned_{};
};

} // namespace undercowl::ui
