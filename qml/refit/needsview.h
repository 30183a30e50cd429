// What putting one part back takes: new parts, what goes on it, what is done afterwards, what is banned.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// step        whose needs these are; set by the screen
// suggested   nobody has looked at them yet: they follow from the words of the step
// bans        "Do not ride until this is done"
class NeedsView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString step READ step WRITE setStep NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(bool suggested READ suggested NOTIFY changed)
    Q_PROPERTY(QStringList renew READ renew NOTIFY changed)
    Q_PROPERTY(QString apply READ apply NOTIFY changed)
    Q_PROPERTY(QStringList afterwards READ afterwards NOTIFY changed)
    Q_PROPERTY(QStringList bans READ bans NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString step() const { return step_; }
    void setStep(const QString& step);
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] bool suggested() const { return suggested_; }
    [[nodiscard]] QStringList renew() const { return renew_; }
    [[nodiscard]] QString apply() const { return apply_; }
    [[nodiscard]] QStringList afterwards() const { return afterwards_; }
    [[nodiscard]] QStringList bans() const { return bans_; }

    // The form's values: renew and afterwards (one a line), apply, noStart and noRide ("yes").
    Q_INVOKABLE QVariantMap known() const;
    Q_INVOKABLE void keep(undercowl::ui::FormDraft* draft);

signals:
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    QString step_, title_, apply_;
    bool suggested_{};
    bool noStart_{};
    bool noRide_{};
    QStringList renew_, afterwards_, bans_;
};

} // namespace undercowl::ui
