#pragma once

#include "platform/level/devicelevel.h"

#include <QObject>

namespace undercowl::platform {

class LevelPlugin : public QObject, public LevelMaker {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.level")
    Q_INTERFACES(undercowl::platform::LevelMaker)

public:
    [[nodiscard]] std::unique_ptr<Level> deviceLevel() const override;
};

} // namespace undercowl::platform
