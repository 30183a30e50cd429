#include "qml/refit/readbackear.h"

#include "qml/shell/words.h"

namespace undercowl::ui {

namespace {

QString words(platform::NotHeard why) {
    using enum platform::NotHeard;
    switch (why) {
    case Silence: return ReadBackEar::tr("Nothing was heard. Hold, say it, then let go.");
    case Unsure: return ReadBackEar::tr("Not sure what that was. Say it again.");
    case Unknown: return ReadBackEar::tr("That is nothing that can be said here. Say it again.");
    case Implausible: return ReadBackEar::tr("That number is not believed. Say it again.");
    }
    return {};
}

} // namespace

ReadBackEar::~ReadBackEar() {
    if (listener_ != nullptr)
        listener_->stop();
}

void ReadBackEar::setListener(platform::Listener* listener) {
    if (listener == listener_)
        return;
    if (listener_ != nullptr)
        disconnect(listener_, nullptr, this, nullptr);
    listener_ = listener;
    if (listener_ != nullptr) {
        connect(listener_, &platform::Listener::stateChanged, this, &ReadBackEar::changed);
        connect(listener_, &platform::Listener::heard, this, &ReadBackEar::hear);
    }
    emit changed();
}

QString ReadBackEar::told() const {
    return listener_ != nullptr && !listener_->problem().isEmpty() ? listener_->problem() : told_;
}

void ReadBackEar::press() {
    if (listener_ != nullptr)
        listener_->start();
}

void ReadBackEar::release() {
    if (listener_ != nullptr)
        listener_->stop();
}

void ReadBackEar::hear(const platform::Heard& heard) {
    bool taken = false;
    if (!heard.accepted()) {
        told_ = words(heard.why);
    } else {
        const auto* command = std::get_if<talk::Command>(&*heard.intent);
        told_ = text(heard.text);
        taken = command != nullptr && obey(*command);
        if (!taken)
            told_ =
                tr("Heard \"%1\". Here say done, does not match, next, back, again, slower, undo or stop.")
                    .arg(told_);
    }
    emit changed();
    if (!taken)
        emit refused();
}

bool ReadBackEar::obey(talk::Command command) {
    if (wire_ == nullptr)
        return false;
    switch (command) {
    case talk::Command::Done: wire_->done(); return true;
    case talk::Command::DoesNotMatch: wire_->doesNotMatch(); return true;
    case talk::Command::Next: wire_->goOn(); return true;
    case talk::Command::Back: wire_->back(); return true;
    case talk::Command::Undo: wire_->session()->undoLast(); return true;
    case talk::Command::Again: emit again(); return true;
    case talk::Command::Slower: emit slower(); return true;
    case talk::Command::Stop: emit stop(); return true;
    case talk::Command::Photo:
    case talk::Command::Memo: return false;
    }
    return false;
}

} // namespace undercowl::ui
