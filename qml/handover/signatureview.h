// The owner's signature under the record.
#pragma once

#include "qml/handover/signaturepad.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

class SignatureView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString owner READ owner NOTIFY changed)
    Q_PROPERTY(QString signedBy READ signedBy NOTIFY changed)
    Q_PROPERTY(QUrl picture READ picture NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] const QString& owner() const { return owner_; }
    [[nodiscard]] const QString& signedBy() const { return signedBy_; } // with the day; empty: not signed yet
    [[nodiscard]] const QUrl& picture() const { return picture_; }

    // The form's value: name. Refused without one, or with an empty pad.
    Q_INVOKABLE void keep(undercowl::ui::SignaturePad* pad, undercowl::ui::FormDraft* draft);

signals:
    void kept(); // the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    QString owner_, signedBy_;
    QUrl picture_;
};

} // namespace undercowl::ui
