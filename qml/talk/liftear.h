// What was said at the lift becomes what a thumb would have done: one ear for every screen.
#pragma once

#include "core/talk/intent.h"
#include "platform/listener/listener.h"
#include "qml/talk/voice.h"

#include <QObject>
#include <QPointer>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// listener    the device's microphone and ear; null where there is none
// voice       says back what was taken; null: nothing is said
// active      whether the screen is looked at: several may stand on each other, and only one obeys
// takes       what has a meaning here: commands by their words, and "reading", "bag", "wire"
// sayBack     commands are said back too; not where what they do is heard anyway
// handsFree   the microphone is open for the wake phrase while this is active; else it opens while held
// listening, thinking, waiting   open for what may be said; what was said is being heard; open for the wake
// phrase wakePhrase  the English words heard       what was taken last, in the words of the screen; empty
// after anything else told        why nothing was taken, and what to do; else empty
//
// What has a meaning here is handed on by a signal, and then said back. Whoever takes it may refuse() it
// within the signal. Everything else changes nothing and is told.
class LiftEar : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::platform::Listener* listener READ listener WRITE setListener NOTIFY changed)
    Q_PROPERTY(undercowl::ui::Voice* voice READ voice WRITE setVoice NOTIFY changed)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY changed)
    Q_PROPERTY(QStringList takes MEMBER takes_ NOTIFY changed)
    Q_PROPERTY(bool sayBack MEMBER sayBack_ NOTIFY changed)
    Q_PROPERTY(bool handsFree READ handsFree WRITE setHandsFree NOTIFY changed)
    Q_PROPERTY(bool waiting READ waiting NOTIFY changed)
    Q_PROPERTY(QString wakePhrase READ wakePhrase CONSTANT)
    Q_PROPERTY(bool listening READ listening NOTIFY changed)
    Q_PROPERTY(bool thinking READ thinking NOTIFY changed)
    Q_PROPERTY(QString heard READ heard NOTIFY changed)
    Q_PROPERTY(QString told READ told NOTIFY changed)

public:
    explicit LiftEar(QObject* parent = nullptr) : QObject(parent) {}
    ~LiftEar() override;

    [[nodiscard]] platform::Listener* listener() const { return listener_; }
    void setListener(platform::Listener* listener);
    [[nodiscard]] Voice* voice() const { return voice_; }
    void setVoice(Voice* voice);
    [[nodiscard]] bool handsFree() const { return handsFree_; }
    void setHandsFree(bool handsFree);
    [[nodiscard]] bool waiting() const { return is(platform::Listener::State::Waiting); }
    [[nodiscard]] QString wakePhrase() const;
    [[nodiscard]] bool active() const { return active_; }
    void setActive(bool active); // going inactive closes the microphone
    [[nodiscard]] bool listening() const { return is(platform::Listener::State::Listening); }
    [[nodiscard]] bool thinking() const { return is(platform::Listener::State::Thinking); }
    [[nodiscard]] QString heard() const { return heard_; }
    [[nodiscard]] QString told() const;

    Q_INVOKABLE void press();
    Q_INVOKABLE void release();
    // Within one of the signals below: it cannot be taken, for this reason with its remedy.
    Q_INVOKABLE void refuse(const QString& why);
    // Within one of them: said after it, English, such as "outside".
    Q_INVOKABLE void remark(const QString& words);
    Q_INVOKABLE void forget(); // what was heard is no longer shown, for it was undone
    Q_INVOKABLE void sayAgain();

signals:
    void changed();
    void commanded(const QString& name); // "does not match"
    void reading(const QString& what, const QString& digits,
                 const QString& unit); // what by its words: "front tyre"
    void bag(int number);
    // tracer, terminal, size (mm) and function may be empty; the terminal as wiring::text writes its kind.
    void wire(const QString& base, const QString& tracer, const QString& terminal, const QString& size,
              const QString& function);

private:
    struct Tell;
    [[nodiscard]] bool is(platform::Listener::State state) const {
        return active_ && listener_ != nullptr && listener_->state() == state;
    }
    void attend(); // hands-free where it should be
    void hear(const platform::Heard& heard);
    void say(const QString& words);
    [[nodiscard]] QString hint() const;

    QPointer<platform::Listener> listener_;
    QPointer<Voice> voice_;
    bool active_{true};
    bool handsFree_{};
    bool attending_{};
    QStringList takes_;
    bool sayBack_{true};
    QString heard_, told_, remark_, said_;
};

} // namespace undercowl::ui
