// Not built or tried yet (README.md).
#include "platform/signals/vibration.h"

#import <UIKit/UIKit.h>

#include <utility>

namespace undercowl::platform {

namespace {

// The system's own three notices; a recording begins with one heavy knock.
class Vibration : public Signaller {
public:
    explicit Vibration(std::unique_ptr<Signaller> tones) : tones_(std::move(tones)) {}

    void give(Signal signal) override {
        tones_->give(signal);
        UINotificationFeedbackGenerator* notice = [[UINotificationFeedbackGenerator alloc] init];
        switch (signal) {
        case Signal::Listening:
            [[[UIImpactFeedbackGenerator alloc] initWithStyle:UIImpactFeedbackStyleLight] impactOccurred];
            break;
        case Signal::Recording:
            [[[UIImpactFeedbackGenerator alloc] initWithStyle:UIImpactFeedbackStyleHeavy] impactOccurred];
            break;
        case Signal::Saved: [notice notificationOccurred:UINotificationFeedbackTypeSuccess]; break;
        case Signal::Refused: [notice notificationOccurred:UINotificationFeedbackTypeError]; break;
        }
    }

private:
    std::unique_ptr<Signaller> tones_;
};

} // namespace

std::unique_ptr<Signaller> withVibration(std::unique_ptr<Signaller> tones) {
    return std::make_unique<Vibration>(std::move(tones));
}

} // namespace undercowl::platform
