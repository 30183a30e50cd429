#include "qml/talk/voice.h"

namespace undercowl::ui {

Voice::~Voice() {
    if (speaker_ != nullptr && !sentence_.isEmpty())
        speaker_->stop();
}

void Voice::setSpeaker(platform::Speaker* speaker) {
    if (speaker == speaker_)
        return;
    if (speaker_ != nullptr)
        disconnect(speaker_, nullptr, this, nullptr);
    speaker_ = speaker;
    if (speaker_ != nullptr)
        connect(speaker_, &platform::Speaker::changed, this, &Voice::changed);
    emit changed();
}

void Voice::setSentence(const QString& sentence) {
    if (sentence == sentence_)
        return;
    sentence_ = sentence;
    emit changed();
    if (!sentence_.isEmpty())
        say(sentence_);
    else
        hush();
}

void Voice::hush() {
    if (speaker_ != nullptr)
        speaker_->stop();
}

void Voice::say(const QString& sentence) {
    if (speaker_ != nullptr && !sentence.isEmpty())
        speaker_->say(sentence, slowness_);
}

} // namespace undercowl::ui
