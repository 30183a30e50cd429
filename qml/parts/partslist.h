// The parts of a job: asked for, on order, here, wrong, fitted.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// parts: title name, detail number and note, aside state in words, mark state's code; those that are missing
// first.
class PartsList : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* parts READ parts CONSTANT)
    Q_PROPERTY(QStringList states READ states CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* parts() { return &parts_; }
    [[nodiscard]] QStringList states() const; // in words, in the order of setState's index

    Q_INVOKABLE void add(undercowl::ui::FormDraft* draft); // values: name, number, note
    Q_INVOKABLE int stateOf(const QString& part) const;    // -1 for an unknown part
    Q_INVOKABLE void setState(const QString& part, int state);

signals:
    void added();

protected:
    void show(const Snapshot& snapshot) override;

private:
    LineModel parts_;
};

} // namespace undercowl::ui
