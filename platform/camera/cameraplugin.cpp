#include "platform/camera/cameraplugin.h"

#include "platform/camera/multimediacamera.h"

namespace undercowl::platform {

std::unique_ptr<Camera> CameraPlugin::deviceCamera() const {
    return std::make_unique<MultimediaCamera>();
}

} // namespace undercowl::platform
