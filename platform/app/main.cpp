// The app. Everything that can be tested lives in libraries; here the parts are put together and started.
#include "platform/app/app.h"
#include "platform/app/shot.h"
#include "platform/data_folder.h"
#include "platform/early_fonts.h"

#include <QCommandLineParser>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>

#include <algorithm>
#include <cstdio>
#include <memory>
#include <optional>
#include <string_view>

Q_IMPORT_QML_PLUGIN(Undercowl_GalleryPlugin)

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

bool wantsHelp(int argc, char** argv) {
    return std::any_of(argv + 1, argv + argc, [](const char* argument) {
        const std::string_view word(argument);
        return word == "--help" || word == "-h" || word == "-?" || word == "--help-all" ||
               word == "--version" || word == "-v";
    });
}

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
    undercowl::platform::EarlyFonts fonts; // before all else: under way while the rest is made
    QCoreApplication::setApplicationName("undercowl");
    QCoreApplication::setApplicationVersion(UNDERCOWL_VERSION);
    // Help is also for those who have no display.
    const bool asks = wantsHelp(argc, argv);
    const std::unique_ptr<QCoreApplication> app =
        asks ? std::make_unique<QCoreApplication>(argc, argv) : std::make_unique<QGuiApplication>(argc, argv);

    const Options options;
    QCommandLineParser parser;
    parser.setApplicationDescription("A mechanic's memory: what was where, what held it, what was measured.");
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOptions({options.gallery, options.store, options.size, options.theme, options.textScale,
                       options.page, options.camera, options.pictures, options.shot});
    parser.process(*app);
    if (asks) { // taken for the value of another option: there is no display to go on with
        std::fprintf(stderr,
                     "undercowl: --help and --version stand alone; an option before them wants a value\n");
        return wrongUse;
    }

    QVariantMap look;
    if (!readLook(parser, options, look))
        return wrongUse;
    const bool gallery = parser.isSet(options.gallery);
    if (gallery && parser.isSet(options.page))
        look.insert("page", parser.value(options.page));
    std::unique_ptr<undercowl::platform::App> shop;
    std::optional<QQmlApplicationEngine> engine; // the shop has its own
    if (gallery) {
        engine.emplace();
        engine->addImportPath("qrc:/qt/qml");
        engine->setInitialProperties(look);
        engine->load(QUrl("qrc:/qt/qml/Undercowl/Gallery/Gallery.qml"));
    } else {
        shop = std::make_unique<undercowl::platform::App>(undercowl::platform::AppWanted{
            .store = parser.isSet(options.store)
                         ? std::filesystem::path(parser.value(options.store).toStdString())
                         : undercowl::platform::dataFolder(),
            .given = parser.isSet(options.store),
            .camera = parser.value(options.camera),
            .pictures = parser.value(options.pictures),
            .look = look,
            .fonts = &fonts});
    }
    QQuickWindow* window = shop ? shop->window() : nullptr;
    if (engine && !engine->rootObjects().isEmpty())
        window = qobject_cast<QQuickWindow*>(engine->rootObjects().first());
    if (!window)
        return wrongUse;
    if (parser.isSet(options.shot))
        undercowl::platform::shootAndQuit(*window, parser.value(options.shot), 600);
    return QGuiApplication::exec();
}
