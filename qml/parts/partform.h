// Everything about one part: supplier, numbers, price, what it is for, whether it fitted.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"

#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// The form's values: name, number, other, supplier, price, currency, note, about (id), state and fitted
// (indices), fit.
class PartForm : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString part MEMBER part_ REQUIRED)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(QStringList states READ states CONSTANT)
    Q_PROPERTY(QStringList fits READ fits CONSTANT)
    Q_PROPERTY(QStringList subjects READ subjects NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] const QUrl& photo() const { return photo_; } // the last one of it; empty if none
    [[nodiscard]] QStringList states() const;
    [[nodiscard]] QStringList fits() const;
    [[nodiscard]] const QStringList& subjects() const { return subjects_; } // findings, then steps

    Q_INVOKABLE QVariantMap known() const; // for the form
    Q_INVOKABLE QString subjectId(int index) const;
    Q_INVOKABLE int subjectIndex(const QString& id) const; // -1 for none
    Q_INVOKABLE void keep(undercowl::ui::FormDraft* draft);

signals:
    void kept(); // the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    QString part_, title_;
    QUrl photo_;
    QStringList subjects_;
    std::vector<Id> subjectIds_;
};

} // namespace undercowl::ui
