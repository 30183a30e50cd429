// Composes text as a phone's keyboard does, which Qt Quick Test cannot.
#pragma once

#include <QGuiApplication>
#include <QInputMethodEvent>
#include <QObject>
#include <QString>

class Typist : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    // Shows `text` as being composed at the cursor of the focused field.
    Q_INVOKABLE void compose(const QString& text) { send(text, {}); }
    // Ends composing with `text`.
    Q_INVOKABLE void commit(const QString& text) { send({}, text); }

private:
    static void send(const QString& preedit, const QString& commit) {
        QInputMethodEvent event(preedit, {});
        event.setCommitString(commit);
        QGuiApplication::sendEvent(QGuiApplication::focusObject(), &event);
    }
};
