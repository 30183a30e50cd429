// The app put together: the session on the shop's folder, a camera, the window. main() starts it, and so does
// the end-to-end test, so that what is tested is what ships.
#pragma once

#include "core/store/store.h"

#include <QString>
#include <QVariantMap>

#include <filesystem>
#include <memory>

class QQuickWindow;

namespace undercowl::ui {
class ShopSwitch;
}

namespace undercowl::platform {

class EarlyFonts;

struct AppWanted {
    std::filesystem::path store; // folder of the shop, made where there is none
    bool given{};                // named for this run: else the shop that was chosen beside it is opened
    QString camera;              // folder whose JPEG files are the camera's; empty: the device's camera
    QString pictures;            // folder in which choosing a picture begins; empty: the user's
    QVariantMap look;            // initial properties of the window: width, height, theme, textScale
    EarlyFonts* fonts{};         // waited for before fonts are needed; may be null; only used meanwhile
    store::WallClock clock = store::systemClock(); // injected so that tests set the time
};

// Lives as long as the window is wanted; what was entered is in the store when it has gone. When another shop
// of this device is chosen, session, screens and devices end, in that order from the last to the first, and
// begin anew on that shop.
class App {
public:
    // Needs a QGuiApplication. window() is null when the screens cannot be loaded.
    explicit App(AppWanted wanted);
    ~App();
    App(const App&) = delete;
    App& operator=(const App&) = delete;
    App(App&&) = delete;
    App& operator=(App&&) = delete;

    [[nodiscard]] QQuickWindow* window() const; // another one after another shop was chosen

private:
    class Run; // on one shop
    void goOnWith(const std::filesystem::path& folder);

    AppWanted wanted_;
    std::unique_ptr<ui::ShopSwitch> shops_;
    std::unique_ptr<Run> run_;
};

} // namespace undercowl::platform
