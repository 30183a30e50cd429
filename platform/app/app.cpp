#include "platform/app/app.h"

#include "core/store/shops.h"
#include "platform/camera/devicecamera.h"
#include "platform/camera/filecamera.h"
#include "platform/early_fonts.h"
#include "platform/level/devicelevel.h"
#include "platform/listener/devicelistener.h"
#include "platform/memo/devicememo.h"
#include "platform/plugins/plugin.h"
#include "platform/screen/devicescreen.h"
#include "platform/signals/devicesignaller.h"
#include "platform/speaker/devicespeaker.h"
#include "platform/threads/across.h"
#include "qml/backup/rollingcopy.h"
#include "qml/backup/shopswitch.h"
#include "qml/language/catalogue.h"
#include "qml/memo/pendingmemos.h"
#include "qml/shell/pendingphotos.h"
#include "qml/shell/session.h"
#include "qml/style/typefaces.h"

#include <QCoreApplication>
#include <QEventLoopLocker>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QQuickWindow>
#include <QTimer>
#include <QtQml/qqmlextensionplugin.h>

#include <chrono>
#include <utility>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

namespace undercowl::platform {

namespace {

constexpr auto untilWarming = std::chrono::milliseconds(500);

} // namespace

class App::Run {
public:
    Run(const AppWanted& wanted, const std::filesystem::path& folder, ui::ShopSwitch& shops);

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

App::Run::Run(const AppWanted& wanted, const std::filesystem::path& folder, ui::ShopSwitch& shops)
    : session_(
          std::make_unique<ui::ShopSession>(ui::shopInFolder(folder, wanted.clock), folder, wanted.clock)) {
    // The screens' types are made by a thread of the engine, which takes the longest of all that a start
    // needs: it begins before the rest.
    const QUrl screens(QStringLiteral("qrc:/qt/qml/Undercowl/ShopWindow.qml"));
    engine_.addImportPath(QStringLiteral("qrc:/qt/qml"));
    const QQmlComponent early(&engine_, screens, QQmlComponent::Asynchronous);
    // What a former run shot and could not keep is kept before anything new is shot.
    QObject::connect(session_.get(), &ui::ShopSession::stateChanged, session_.get(),
                     [session = session_.get()] {
                         if (session->state() == ui::ShopSession::State::Ready && !session->readOnly()) {
                             ui::rescueTakenPhotos(*session);
                             ui::rescueMemos(*session, true);
                         }
                     });
    // Nor is one lost that was taken when the disk had no room for it.
    QObject::connect(session_.get(), &ui::ShopSession::diskFullChanged, session_.get(),
                     [session = session_.get()] {
                         if (!session->diskFull()) {
                             ui::rescueTakenPhotos(*session);
                             ui::rescueMemos(*session, false);
                         }
                     });
    ui::keepRollingCopies(*session_);
    ui::speak(ui::deviceLanguage()); // until the shop's settings are read
    QObject::connect(session_.get(), &ui::ShopSession::settingsChanged, &engine_, [this] {
        const QString chosen = session_->setting(QStringLiteral("language"));
        if (!ui::speak(chosen.isEmpty() ? ui::deviceLanguage() : chosen))
            return;
        engine_.retranslate();
        emit session_->languageChanged();
    });
    if (wanted.camera.isEmpty())
        camera_ = std::make_unique<DeviceCamera>();
    else
        camera_ = std::make_unique<FileCamera>(wanted.camera);
    level_ = std::make_unique<DeviceLevel>();
    speaker_ = std::make_unique<DeviceSpeaker>();
    listener_ = std::make_unique<DeviceListener>();
    recorder_ = std::make_unique<DeviceRecorder>();
    player_ = std::make_unique<DevicePlayer>();
    screen_ = std::make_unique<DeviceScreen>();
    signaller_ = std::make_unique<DeviceSignaller>();
    if (wanted.fonts != nullptr)
        wanted.fonts->wait();
    ui::Typefaces::load();
    QVariantMap properties = wanted.look;
    properties.insert(QStringLiteral("session"), QVariant::fromValue(session_.get()));
    properties.insert(QStringLiteral("camera"), QVariant::fromValue(camera_.get()));
    properties.insert(QStringLiteral("level"), QVariant::fromValue(static_cast<Level*>(level_.get())));
    properties.insert(QStringLiteral("listener"),
                      QVariant::fromValue(static_cast<Listener*>(listener_.get())));
    properties.insert(QStringLiteral("speaker"), QVariant::fromValue(static_cast<Speaker*>(speaker_.get())));
    properties.insert(QStringLiteral("recorder"),
                      QVariant::fromValue(static_cast<Recorder*>(recorder_.get())));
    properties.insert(QStringLiteral("player"), QVariant::fromValue(static_cast<Player*>(player_.get())));
    properties.insert(QStringLiteral("deviceScreen"),
                      QVariant::fromValue(static_cast<Screen*>(screen_.get())));
    properties.insert(QStringLiteral("signaller"),
                      QVariant::fromValue(static_cast<Signaller*>(signaller_.get())));
    properties.insert(QStringLiteral("pictures"), wanted.pictures);
    properties.insert(QStringLiteral("shops"), QVariant::fromValue(&shops));
    engine_.setInitialProperties(properties);
    engine_.load(screens);
    if (QQuickWindow* shown = window(); shown != nullptr) {
        // While the mechanic looks at the list: the first photo then need not wait for its libraries. One
        // after the other and not at once, since the list itself is still being drawn.
        QObject::connect(
            shown, &QQuickWindow::frameSwapped, shown,
            [] {
                QTimer::singleShot(untilWarming, qApp, [] {
                    offTouch([] {
                        for (const char* name :
                             {"camera", "eye", "speaker", "listener", "memo", "signals", "records", "level"})
                            warmPlugin(QString::fromLatin1(name));
                    });
                });
            },
            Qt::SingleShotConnection);
    }
}

QQuickWindow* App::Run::window() const {
    return engine_.rootObjects().isEmpty() ? nullptr
                                           : qobject_cast<QQuickWindow*>(engine_.rootObjects().first());
}

App::App(AppWanted wanted)
    : wanted_(std::move(wanted)), shops_(std::make_unique<ui::ShopSwitch>(wanted_.store, !wanted_.given)) {
    // Not at once: the screen that asks for it ends with the others.
    QObject::connect(shops_.get(), &ui::ShopSwitch::wanted, shops_.get(),
                     [this](const std::filesystem::path& folder) {
                         across(shops_.get(), [this, folder] { goOnWith(folder); });
                     });
    run_ = std::make_unique<Run>(wanted_, wanted_.given ? wanted_.store : store::currentShop(wanted_.store),
                                 *shops_);
    wanted_.fonts = nullptr; // have come
}

App::~App() = default;

void App::goOnWith(const std::filesystem::path& folder) {
    const QEventLoopLocker stays; // although its only window goes
    if (const QQuickWindow* before = window(); before != nullptr) {
        wanted_.look.insert(QStringLiteral("width"), before->width());
        wanted_.look.insert(QStringLiteral("height"), before->height());
    }
    run_.reset(); // what was given to the worker is done when this returns
    run_ = std::make_unique<Run>(wanted_, folder, *shops_);
}

QQuickWindow* App::window() const {
    return run_ == nullptr ? nullptr : run_->window();
}

} // namespace undercowl::platform
