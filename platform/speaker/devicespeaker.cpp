#include "platform/speaker/devicespeaker.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

void DeviceSpeaker::say(const QString& sentence, double slowness) {
    if (voice_ == nullptr) {
        QString missing;
        const auto* maker = pluginFor<SpeakerMaker>(QStringLiteral("speaker"), missing);
        if (maker == nullptr) {
            tell(false, missing);
            return;
        }
        voice_ = maker->systemVoice();
        connect(voice_.get(), &Speaker::changed, this,
                [this] { tell(voice_->speaking(), voice_->problem()); });
    }
    voice_->say(sentence, slowness);
}

void DeviceSpeaker::stop() {
    if (voice_ != nullptr)
        voice_->stop();
}

} // namespace undercowl::platform
