#include "platform/level/levelplugin.h"

#include "platform/level/sensorlevel.h"

namespace undercowl::platform {

std::unique_ptr<Level> LevelPlugin::deviceLevel() const {
    return std::make_unique<SensorLevel>();
}

} // namespace undercowl::platform
