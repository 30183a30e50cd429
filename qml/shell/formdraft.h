// What is being entered in a form, kept in the store on each change until it is said or discarded.
//
// A form names it ("finding/JOB"), sets values as they are typed and shows 'values'. It survives leaving the
// screen, leaving the app and a kill: the next start finds it under the same name.
#pragma once

#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

class FormDraft : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(QString form READ form WRITE setForm NOTIFY formChanged REQUIRED)
    Q_PROPERTY(QString title MEMBER title_ REQUIRED)
    Q_PROPERTY(QString jobId MEMBER jobId_)
    Q_PROPERTY(QVariantMap values READ values NOTIFY valuesChanged)
    Q_PROPERTY(bool ready READ ready NOTIFY readyChanged)
    Q_PROPERTY(bool begun READ begun NOTIFY valuesChanged)
    Q_PROPERTY(QString restoredFrom READ restoredFrom NOTIFY readyChanged)
    Q_PROPERTY(bool canBringBack READ canBringBack NOTIFY valuesChanged)

public:
    explicit FormDraft(QObject* parent = nullptr) : QObject(parent) {}
    ~FormDraft() override; // has it written; leaving a screen loses nothing

    void classBegin() override {}
    void componentComplete() override; // asks the store for what was entered before

    [[nodiscard]] const QString& form() const { return form_; }
    // When the job was not read yet at first, what was entered of the form with its name is asked for now.
    void setForm(const QString& form);
    [[nodiscard]] const QVariantMap& values() const { return values_; }
    [[nodiscard]] bool ready() const { return ready_; } // the store has answered
    // Something has been entered that is not what fill() showed.
    [[nodiscard]] bool begun() const { return !values_.isEmpty() && values_ != filled_; }
    [[nodiscard]] QString restoredFrom() const {
        return restored_;
    } // "14:32"; empty when it was begun just now
    [[nodiscard]] bool canBringBack() const { return !discarded_.isEmpty(); }

    // Shows what is known already: no draft, until something is set.
    Q_INVOKABLE void fill(const QVariantMap& known);
    Q_INVOKABLE void set(const QString& name, const QVariant& value);
    Q_INVOKABLE QString text(const QString& name) const; // empty when it was not entered
    // All of them at once, such as those of before a change that is undone.
    void replace(const QVariantMap& values);
    Q_INVOKABLE void discard(); // undone by bringBack()
    Q_INVOKABLE void bringBack();
    Q_INVOKABLE void said(); // it was said: the session has dropped it, the form is empty again

signals:
    void formChanged();
    void valuesChanged();
    void readyChanged();

private:
    void keep();
    void restore();

    ShopSession* session_{};
    QString form_;
    QString title_;
    QString jobId_;
    QVariantMap values_;
    QVariantMap filled_;
    QVariantMap discarded_;
    QString restored_;
    bool complete_{};
    bool askedWithoutJob_{};
    bool ready_{};
};

} // namespace undercowl::ui
