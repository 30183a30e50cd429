// Read-back by voice: what was said becomes what a thumb would have done.
#pragma once

#include "platform/listener/listener.h"
#include "qml/refit/readbackview.h"

#include <QObject>
#include <QPointer>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// listener    the device's microphone and ear; null where there is none
// wire        what the commands act on
// listening, thinking   the microphone is open; what was said is being heard
// told        what was heard, or why nothing was, and what to do; empty before the first sentence
//
// done, does not match, back, next and undo act on the wire at once, each undoable. again, slower and stop
// are for the voice. Whatever else is said changes nothing and is told.
class ReadBackEar : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::platform::Listener* listener READ listener WRITE setListener NOTIFY changed)
    Q_PROPERTY(undercowl::ui::ReadBackView* wire MEMBER wire_ NOTIFY changed)
    Q_PROPERTY(bool listening READ listening NOTIFY changed)
    Q_PROPERTY(bool thinking READ thinking NOTIFY changed)
    Q_PROPERTY(QString told READ told NOTIFY changed)

public:
    explicit ReadBackEar(QObject* parent = nullptr) : QObject(parent) {}
    ~ReadBackEar() override;

    [[nodiscard]] platform::Listener* listener() const { return listener_; }
    void setListener(platform::Listener* listener);
    [[nodiscard]] bool listening() const { return is(platform::Listener::State::Listening); }
    [[nodiscard]] bool thinking() const { return is(platform::Listener::State::Thinking); }
    [[nodiscard]] QString told() const;

    Q_INVOKABLE void press();
    Q_INVOKABLE void release();

signals:
    void changed();
    void again();   // say it once more
    void slower();  // and more slowly
    void stop();    // no more reading aloud
    void refused(); // nothing was understood: told says why

private:
    [[nodiscard]] bool is(platform::Listener::State state) const {
        return listener_ != nullptr && listener_->state() == state;
    }
    void hear(const platform::Heard& heard);
    [[nodiscard]] bool obey(talk::Command command); // whether it has a meaning here

    QPointer<platform::Listener> listener_;
    QPointer<ReadBackView> wire_;
    QString told_;
};

} // namespace undercowl::ui
