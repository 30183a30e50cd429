#include "platform/listener/listenerplugin.h"

#include "platform/listener/microphonelistener.h"

namespace undercowl::platform {

std::unique_ptr<Listener> ListenerPlugin::microphone() const {
    return std::make_unique<MicrophoneListener>();
}

} // namespace undercowl::platform
