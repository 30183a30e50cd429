// A player that only remembers, over sounds that it reads as the device would.
#pragma once

#include "platform/memo/memosound.h"
#include "platform/memo/player.h"

namespace undercowl::ui {

class HeardPlayer : public platform::Player {
public:
    using Player::Player;

    void stop() override { tell(false, milliseconds()); }
    void outline(const QString& file) override {
        const auto sound = platform::readMemo(file);
        emit outlined(file, sound.milliseconds(), platform::outlineOf(sound, platform::outlineParts));
    }
    void reach(int milliseconds) { tell(true, milliseconds); }

    QList<int> from;
    QList<double> paces;

protected:
    void begin(const QString& /*file*/, int fromMilliseconds, double pace) override {
        from += fromMilliseconds;
        paces += pace;
        tell(true, fromMilliseconds);
    }
};

} // namespace undercowl::ui
