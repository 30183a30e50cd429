#include "platform/android/systemscreen.h"

#include <QCoreApplication>
#include <QJniObject>

namespace undercowl::platform {

namespace {

constexpr jint keepScreenOn = 128; // WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON

} // namespace

void SystemScreen::keep(bool awake) {
    // Views belong to Android's own thread.
    QNativeInterface::QAndroidApplication::runOnAndroidMainThread([awake] {
        const QJniObject activity(QNativeInterface::QAndroidApplication::context());
        const QJniObject window = activity.callObjectMethod("getWindow", "()Landroid/view/Window;");
        if (window.isValid())
            window.callMethod<void>(awake ? "addFlags" : "clearFlags", "(I)V", keepScreenOn);
    });
}

} // namespace undercowl::platform
