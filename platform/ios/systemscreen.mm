#include "platform/ios/systemscreen.h"

#import <UIKit/UIKit.h>

namespace undercowl::platform {

void SystemScreen::keep(bool awake) {
    UIApplication.sharedApplication.idleTimerDisabled = awake ? YES : NO; // the touch thread is UIKit's
}

} // namespace undercowl::platform
