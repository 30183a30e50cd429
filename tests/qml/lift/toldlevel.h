// A level that says what the test tells it.
#pragma once

#include "platform/level/level.h"

namespace undercowl::ui {

class ToldLevel : public platform::Level {
public:
    using Level::Level;

    void start() override { started = true; }
    void stop() override {
        started = false;
        tell(std::nullopt);
    }
    void say(double degrees) { tell(degrees); }

    bool started{};
};

} // namespace undercowl::ui
