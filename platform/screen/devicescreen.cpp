#include "platform/screen/devicescreen.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

void DeviceScreen::keep(bool awake) {
    if (screen_ == nullptr) {
        if (!awake)
            return;
        QString missing;
        const auto* maker = pluginFor<ScreenMaker>(QStringLiteral("screen"), missing);
        if (maker == nullptr) {
            tell(missing);
            return;
        }
        screen_ = maker->systemScreen();
        connect(screen_.get(), &Screen::changed, this, [this] { tell(screen_->problem()); });
    }
    screen_->setAwake(awake);
}

} // namespace undercowl::platform
