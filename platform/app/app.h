// The app put together: the session on the shop's folder, a camera, the window. main() starts it, and so does
// the end-to-end test, so that what is tested is what ships.
#pragma once

#include "core/store/store.h"

#include <QQmlApplicationEngine>
#include <QString>
#include <QVariantMap>

#include <filesystem>
#include <memory>

class QQuickWindow;

namespace undercowl::ui {
class ShopSession;
}

namespace undercowl::platform {

class Camera;
class DeviceLevel;
class DeviceListener;
class DevicePlayer;
class DeviceRecorder;
class DeviceScreen;
class DeviceSignaller;
class DeviceSpeaker;
class EarlyFonts;

struct AppWanted {
    std::filesystem::path store; // folder of the shop, made where there is none
    QString camera;              // folder whose JPEG files are the camera's; empty: the device's camera
    QString pictures;            // folder in which choosing a picture begins; empty: the user's
    QVariantMap look;            // initial properties of the window: width, height, theme, textScale
    EarlyFonts* fonts{};         // waited for before fonts are needed; may be null; only used meanwhile
    store::WallClock clock = store::systemClock(); // injected so that tests set the time
};

// Lives as long as the window is wanted; what was entered is in the store when it has gone.
class App {
public:
    // Needs a QGuiApplication. window() is null when the screens cannot be loaded.
    explicit App(const AppWanted& wanted);
    ~App();
    App(const App&) = delete;
    App& operator=(const App&) = delete;
    App(App&&) = delete;
    App& operator=(App&&) = delete;

    [[nodiscard]] QQuickWindow* window() const;

private:
    std::unique_ptr<ui::ShopSession> session_;
    std::unique_ptr<Camera> camera_;
    std::unique_ptr<DeviceLevel> level_;
    std::unique_ptr<DeviceSpeaker> speaker_;
    std::unique_ptr<DeviceListener> listener_;
    std::unique_ptr<DeviceRecorder> recorder_;
    std::unique_ptr<DevicePlayer> player_;
    std::unique_ptr<DeviceScreen> screen_;
    std::unique_ptr<DeviceSignaller> signaller_;
    QQmlApplicationEngine engine_; // after those that its screens use, so that the screens end first
};

} // namespace undercowl::platform
