#pragma once

#include "platform/eye/eye.h"

#include <QObject>

namespace undercowl::platform {

class EyePlugin : public QObject, public Eye {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.eye")
    Q_INTERFACES(undercowl::platform::Eye)

public:
    [[nodiscard]] tl::expected<std::unique_ptr<SeenPhoto>, std::string>
    open(const std::filesystem::path& file) const override;
};

} // namespace undercowl::platform
