#pragma once

#include "platform/screen/devicescreen.h"

#include <QObject>

namespace undercowl::platform {

class ScreenPlugin : public QObject, public ScreenMaker {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.screen")
    Q_INTERFACES(undercowl::platform::ScreenMaker)

public:
    [[nodiscard]] std::unique_ptr<Screen> systemScreen() const override;
};

} // namespace undercowl::platform
