#pragma once

#include "platform/memo/devicememo.h"

#include <QObject>

namespace undercowl::platform {

class MemoPlugin : public QObject, public MemoMaker {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.memo")
    Q_INTERFACES(undercowl::platform::MemoMaker)

public:
    [[nodiscard]] std::unique_ptr<Recorder> microphone() const override;
    [[nodiscard]] std::unique_ptr<Player> loudspeaker() const override;
};

} // namespace undercowl::platform
