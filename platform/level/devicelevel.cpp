#include "platform/level/devicelevel.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

void DeviceLevel::start() {
    if (driver_ == nullptr) {
        QString problem;
        const auto* maker = pluginFor<LevelMaker>(QStringLiteral("level"), problem);
        if (maker == nullptr)
            return;
        driver_ = maker->deviceLevel();
        connect(driver_.get(), &Level::changed, this,
                [this] { tell(driver_->known() ? std::optional(driver_->tilt()) : std::nullopt); });
    }
    driver_->start();
}

void DeviceLevel::stop() {
    if (driver_ != nullptr)
        driver_->stop();
}

} // namespace undercowl::platform
