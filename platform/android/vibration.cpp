// Not built and not tried: no Android kit was at hand.
#include "platform/signals/vibration.h"

#include <QCoreApplication>
#include <QJniEnvironment>
#include <QJniObject>

#include <utility>
#include <vector>

namespace undercowl::platform {

namespace {

// Pauses and strokes in turn, ms, as Vibrator.vibrate() takes them.
std::vector<jlong> patternOf(Signaller::Signal signal) {
    switch (signal) {
    case Signaller::Signal::Listening: return {0, 30};
    case Signaller::Signal::Recording: return {0, 150};
    case Signaller::Signal::Saved: return {0, 40, 80, 40};
    case Signaller::Signal::Refused: return {0, 80, 80, 80, 80, 80};
    }
    return {};
}

// Told apart by how often: listening once and briefly, recording once and long, saved twice, refused three
// times. The manifest asks for VIBRATE, which nobody has to allow.
class Vibration : public Signaller {
public:
    explicit Vibration(std::unique_ptr<Signaller> tones) : tones_(std::move(tones)) {}

    void give(Signal signal) override;

private:
    std::unique_ptr<Signaller> tones_;
};

void Vibration::give(Signal signal) {
    tones_->give(signal);
    const QJniObject activity(QNativeInterface::QAndroidApplication::context());
    const QJniObject vibrator =
        activity.callObjectMethod("getSystemService", "(Ljava/lang/String;)Ljava/lang/Object;",
                                  QJniObject::fromString(QStringLiteral("vibrator")).object());
    if (!vibrator.isValid() || !vibrator.callMethod<jboolean>("hasVibrator"))
        return;
    const std::vector<jlong> pattern = patternOf(signal);
    QJniEnvironment java;
    jlongArray times = java->NewLongArray(static_cast<jsize>(pattern.size()));
    java->SetLongArrayRegion(times, 0, static_cast<jsize>(pattern.size()), pattern.data());
    vibrator.callMethod<void>("vibrate", "([JI)V", times, -1); // once
    java->DeleteLocalRef(times);
}

} // namespace

std::unique_ptr<Signaller> withVibration(std::unique_ptr<Signaller> tones) {
    return std::make_unique<Vibration>(std::move(tones));
}

} // namespace undercowl::platform
