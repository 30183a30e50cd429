#include "platform/speaker/systemvoice.h"

#include <QTextToSpeech>

#include <algorithm>

namespace undercowl::platform {

SystemVoice::SystemVoice(QObject* parent) : Speaker(parent) {}

SystemVoice::~SystemVoice() = default;

void SystemVoice::open() {
    // Named, since the speech dispatcher that Qt would prefer on Linux waits seconds for modules that are not
    // there.
    const QString offline = QStringLiteral("flite");
    const QStringList engines = QTextToSpeech::availableEngines();
    voice_ = engines.contains(offline) ? std::make_unique<QTextToSpeech>(offline)
                                       : std::make_unique<QTextToSpeech>();
    connect(voice_.get(), &QTextToSpeech::stateChanged, this, [this](QTextToSpeech::State state) {
        if (state == QTextToSpeech::Error)
            tell(false, tr("The voice failed. Read it on the screen."));
        else
            tell(state == QTextToSpeech::Speaking);
    });
}

void SystemVoice::say(const QString& sentence, double slowness) {
    if (voice_ == nullptr)
        open();
    if (voice_->state() == QTextToSpeech::Error || voice_->availableVoices().isEmpty()) {
        tell(false, tr("This device has no voice. Install one in its settings, or read it on the screen."));
        return;
    }
    voice_->stop();
    voice_->setRate(-std::clamp(slowness, 0.0, 1.0));
    voice_->say(sentence);
}

void SystemVoice::stop() {
    if (voice_ != nullptr)
        voice_->stop();
}

} // namespace undercowl::platform
