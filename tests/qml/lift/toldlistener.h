// A listener that hears what the test says.
#pragma once

#include "core/talk/parse.h"
#include "platform/listener/listener.h"

namespace undercowl::ui {

class ToldListener : public platform::Listener {
public:
    using Listener::Listener;

    void start() override { setState(State::Listening); }
    void stop() override {
        if (state() == State::Listening)
            setState(State::Thinking);
    }

    void setDeaf(bool on) override { deaf = on; }

    void call() { // the wake phrase
        setState(State::Listening);
        emit woken();
    }

    // As if the words had been said into the microphone; what the grammar does not have is not understood.
    void say(const std::string& words) {
        platform::Heard what;
        what.text = words;
        what.why = platform::NotHeard::Unsure;
        if (const auto meant = talk::parse(words))
            what.intent = *meant;
        setState(handsFree ? State::Listening : State::Idle);
        emit heard(what);
    }

    bool handsFree{};
    bool deaf{};

protected:
    void setHandsFree(bool on) override {
        if (on == handsFree)
            return;
        handsFree = on;
        setState(on ? State::Waiting : State::Idle);
    }
};

} // namespace undercowl::ui
