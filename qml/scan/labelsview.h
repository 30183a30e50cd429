// The bags of the open job, and a sheet of labels for them.
#pragma once

#include "core/handover/labels.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

#include <set>
#include <vector>

namespace undercowl::ui {

// labels: id the bag, title the bag, detail what lies in it, more its steps, on: it is to be printed.
class LabelsView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* labels READ labels CONSTANT)
    Q_PROPERTY(int chosen READ chosen NOTIFY changed)
    Q_PROPERTY(QString file READ file NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* labels() { return &labels_; }
    [[nodiscard]] int chosen() const;
    [[nodiscard]] const QString& file() const { return file_; } // that was written

    Q_INVOKABLE void choose(const QString& bag); // or not
    // stock: 0 A4, 1 Letter. first: place on the sheet of the first label, as typed; empty is 1.
    Q_INVOKABLE void write(int stock, const QString& first);

protected:
    void show(const Snapshot& snapshot) override;

private:
    std::vector<handover::BagLabel> all_;
    std::set<QString> left_; // out
    QString file_;
    LineModel labels_;
};

} // namespace undercowl::ui
