// The device's microphone and loudspeaker for memos. What drives them is loaded when they are used first, not
// with the program.
#pragma once

#include "platform/memo/player.h"
#include "platform/memo/recorder.h"

#include <QtPlugin>

#include <memory>

namespace undercowl::platform {

// The plugin "memo".
class MemoMaker {
public:
    virtual ~MemoMaker() = default;
    [[nodiscard]] virtual std::unique_ptr<Recorder> microphone() const = 0;
    [[nodiscard]] virtual std::unique_ptr<Player> loudspeaker() const = 0;
};

class DeviceRecorder : public Recorder {
    Q_OBJECT

public:
    using Recorder::Recorder;

    void start(const QString& file) override; // Failed where the plugin is missing
    void stop() override;

private:
    std::unique_ptr<Recorder> driver_; // null before the first start()
};

class DevicePlayer : public Player {
    Q_OBJECT

public:
    using Player::Player;

    void stop() override;
    void outline(const QString& file) override;

protected:
    void begin(const QString& file, int fromMilliseconds, double pace) override;

private:
    [[nodiscard]] bool load(); // else problem() says why not

    std::unique_ptr<Player> driver_;
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::MemoMaker, "undercowl.memo")
