// The app. Everything that can be tested lives in libraries; here the parts are put together and started.
#include "platform/app/shot.h"
#include "platform/camera/devicecamera.h"
#include "platform/camera/filecamera.h"
#include "platform/data_folder.h"
#include "qml/shell/session.h"

#include <QCommandLineParser>
#include <QFile>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>

#include <cstdio>
#include <filesystem>
#include <memory>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(Undercowl_GalleryPlugin)
#ifdef UNDERCOWL_SCREENS
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)
#endif

namespace {

constexpr int wrongUse = 2;

struct Options {
    QCommandLineOption gallery{"gallery", "Show every control in every state and theme."};
    QCommandLineOption store{"store", "Keep jobs in this folder instead of the usual one.", "DIR"};
    QCommandLineOption size{"size", "Open the window at this size in dp.", "WIDTHxHEIGHT"};
    QCommandLineOption theme{"theme", "night, day or sun.", "NAME"};
    QCommandLineOption textScale{"text-scale", "Size of the text, 1 to 2.", "FACTOR"};
    QCommandLineOption page{"page", "Open this page of the gallery.", "NAME"};
    QCommandLineOption camera{"camera", "Take photos from the JPEG files of this folder.", "DIR"};
    QCommandLineOption pictures{"pictures", "Start in this folder when a photo is chosen from a file.",
                                "DIR"};
    QCommandLineOption shot{"shot", "Save a picture of the window and quit.", "FILE"};
};

// What was asked for about the window, as initial properties of its QML; nothing where an option is
// malformed.
bool readLook(const QCommandLineParser& parser, const Options& options, QVariantMap& look) {
    if (parser.isSet(options.theme))
        look.insert("theme", parser.value(options.theme));
    if (parser.isSet(options.textScale)) {
        bool ok = false;
        const double factor = parser.value(options.textScale).toDouble(&ok);
        if (!ok || factor < 1 || factor > 2) {
            std::fprintf(stderr, "undercowl: --text-scale wants a factor from 1 to 2, such as 1.5\n");
            return false;
        }
        look.insert("textScale", factor);
    }
    if (parser.isSet(options.size)) {
        const QStringList parts = parser.value(options.size).split('x');
        const int width = parts.value(0).toInt();
        const int height = parts.value(1).toInt();
        if (parts.size() != 2 || width < 320 || height < 320) {
            std::fprintf(stderr,
                         "undercowl: --size wants WIDTHxHEIGHT, each at least 320, such as 360x640\n");
            return false;
        }
        look.insert("width", width);
        look.insert("height", height);
    }
    return true;
}

} // namespace

int main(int argc, char* argv[]) {
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName("undercowl");
    QGuiApplication::setApplicationVersion(UNDERCOWL_VERSION);

    const Options options;
    QCommandLineParser parser;
    parser.setApplicationDescription("A mechanic's memory: what was where, what held it, what was measured.");
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOptions({options.gallery, options.store, options.size, options.theme, options.textScale,
                       options.page, options.camera, options.pictures, options.shot});
    parser.process(app);

    QVariantMap properties;
    if (!readLook(parser, options, properties))
        return wrongUse;
    const bool gallery = parser.isSet(options.gallery);
    if (gallery && parser.isSet(options.page))
        properties.insert("page", parser.value(options.page));
    const QString file =
        gallery ? ":/qt/qml/Undercowl/Gallery/Gallery.qml" : ":/qt/qml/Undercowl/ShopWindow.qml";
    if (!QFile::exists(file)) {
        std::fprintf(stderr,
                     "undercowl: this build has no screens, only the gallery of controls (--gallery)\n");
        return wrongUse;
    }
    std::unique_ptr<undercowl::ui::ShopSession> session;
    std::unique_ptr<undercowl::platform::Camera> camera;
    if (!gallery) {
        const std::filesystem::path folder =
            parser.isSet(options.store) ? std::filesystem::path(parser.value(options.store).toStdString())
                                        : undercowl::platform::dataFolder();
        session = std::make_unique<undercowl::ui::ShopSession>(undercowl::ui::shopInFolder(folder), folder);
        if (parser.isSet(options.camera))
            camera = std::make_unique<undercowl::platform::FileCamera>(parser.value(options.camera));
        else
            camera = std::make_unique<undercowl::platform::DeviceCamera>();
        properties.insert("session", QVariant::fromValue(session.get()));
        properties.insert("camera", QVariant::fromValue(camera.get()));
        properties.insert("pictures", parser.value(options.pictures));
    }
    // After those that its screens use, so that the screens end first.
    QQmlApplicationEngine engine;
    engine.addImportPath("qrc:/qt/qml");
    engine.setInitialProperties(properties);
    engine.load(QUrl("qrc" + file));
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    if (!window)
        return wrongUse;
    if (parser.isSet(options.shot))
        undercowl::platform::shootAndQuit(*window, parser.value(options.shot), 600);
    return QGuiApplication::exec();
}
