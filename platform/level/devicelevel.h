// The device's own level. What reads it is loaded with the first start(), not with the program.
#pragma once

#include "platform/level/level.h"

#include <QtPlugin>

#include <memory>

namespace undercowl::platform {

// The plugin "level".
class LevelMaker {
public:
    virtual ~LevelMaker() = default;
    [[nodiscard]] virtual std::unique_ptr<Level> deviceLevel() const = 0;
};

class DeviceLevel : public Level {
    Q_OBJECT

public:
    using Level::Level;

    void start() override; // tells nothing where the plugin is missing: photos are taken without it
    void stop() override;

private:
    std::unique_ptr<Level> driver_; // null before the first start()
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::LevelMaker, "undercowl.level")
