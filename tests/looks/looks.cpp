// Takes pictures of every page of the app on the demo shop and lays them side by side on contact sheets, or
// walks over every page and measures what a look may miss. See DEVELOPERS.md.
#include "appwindow.h"
#include "pages.h"
#include "sheet.h"
#include "shop.h"
#include "spoken.h"
#include "walk.h"

#include "platform/memo/level.h"
#include "qml/language/catalogue.h"
#include "qml/refit/compareview.h"
#include "qml/wiring/strokeview.h"

#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtQml/qqmlextensionplugin.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <utility>

Q_IMPORT_QML_PLUGIN(Undercowl_StylePlugin)
Q_IMPORT_QML_PLUGIN(Undercowl_GalleryPlugin)
Q_IMPORT_QML_PLUGIN(UndercowlPlugin)

namespace undercowl::looks {
namespace {

constexpr int hintTime = 700;      // ms in which what is said of a picture comes and holds
constexpr int readingTime = 30000; // ms that the reader of wires may take

// What goes wrong beyond what is seen: complaints of the QML engine, words that cannot be touched.
QStringList troubles;

void listen(QtMsgType type, const QMessageLogContext& /*context*/, const QString& message) {
    std::fprintf(stderr, "%s\n", qPrintable(message));
    if (type == QtFatalMsg)
        std::abort();
    if (message.startsWith(QStringLiteral("qrc:")))
        troubles += message;
}

struct Wanted {
    std::vector<QSize> sizes;
    QStringList themes;
    QStringList pages;    // empty: all
    QStringList contrast; // the themes in which words are held against their ground
    qreal textScale{1};
    bool walk{};
    bool left{};
    QString language; // code; empty: the texts as they are in the sources
    QString folder;   // of the pictures; empty: none are kept
};

// Draws the demo's stroke over the photo, as a thumb would, and waits until the wires are read.
void stroke(ui::AppWindow& app) {
    auto* view = app.view<ui::StrokeView>();
    if (view == nullptr ||
        !QTest::qWaitFor([&] { return view->reader()->state() == ui::PhotoReader::State::Ready; },
                         readingTime))
        qFatal("the photo was not read");
    auto* frame = app.having("drawn");
    QFile file(QStringLiteral(UNDERCOWL_PHOTOS "/wiring.json"));
    if (frame == nullptr || !file.open(QIODevice::ReadOnly))
        qFatal("no photo to stroke, or no wiring.json");
    QTest::qWait(300); // the picture is decoded off the touch thread
    const QSize photo = view->reader()->size();
    const qreal scale = std::min(frame->width() / photo.width(), frame->height() / photo.height());
    const QPointF origin = frame->mapToScene(
        {(frame->width() - scale * photo.width()) / 2, (frame->height() - scale * photo.height()) / 2});
    QList<QPointF> along;
    for (const QJsonValue value :
         QJsonDocument::fromJson(file.readAll()).object()[u"before"][u"along"].toArray())
        along.append(origin +
                     QPointF(value.toArray().at(0).toDouble(), value.toArray().at(1).toDouble()) * scale);
    app.drag(along);
    if (!QTest::qWaitFor([&] { return view->rows()->count() > 1; }, readingTime))
        qFatal("no wires were read along the stroke");
}

// Compares the wires as they are now with those before, along the demo's stroke.
void compare(ui::CompareView& view) {
    QFile file(QStringLiteral(UNDERCOWL_PHOTOS "/wiring.json"));
    if (!file.open(QIODevice::ReadOnly) ||
        !QTest::qWaitFor([&] { return view.reader()->state() == ui::PhotoReader::State::Ready; },
                         readingTime))
        qFatal("no photo to compare, or no wiring.json");
    const QSize photo = view.reader()->size();
    const QJsonObject plan = QJsonDocument::fromJson(file.readAll()).object();
    QVariantList along;
    for (const QJsonValue value : plan[u"after"][u"along"].toArray())
        along.append(QPointF(value.toArray().at(0).toDouble() / photo.width(),
                             value.toArray().at(1).toDouble() / photo.height()));
    view.stroke(along);
    if (!QTest::qWaitFor([&] { return !view.verdict().isEmpty(); }, readingTime))
        qFatal("the photos were not compared");
}

// Waits until the photo's reader has answered, where the page has one.
void readerRests(ui::AppWindow& app) {
    auto* view = app.view<ui::StrokeView>();
    const auto* reader = view == nullptr ? nullptr : view->reader();
    if (reader != nullptr && !QTest::qWaitFor([&] { return !reader->busy(); }, readingTime))
        qFatal("the photo is still being read");
}

struct Shops {
    explicit Shops(const QString& folder) {
        const QDir dir(folder);
        made = makeShop(dir.filePath("demo").toStdString());
        job = sessionOn(dir.filePath("demo").toStdString(), made.job);
        job->set("backup-place", QString::fromStdString(made.cut.parent_path().string()));
        empty = sessionOn(dir.filePath("empty").toStdString(), {});
        noMachine = sessionOn(dir.filePath("named").toStdString(), {});
        noMachine->nameMechanic("Tove");
        if (!QTest::qWaitFor([&] { return noMachine->state() == ui::ShopSession::State::Ready; }))
            qFatal("no mechanic was named");
    }

    [[nodiscard]] ui::ShopSession& of(Shop which) const {
        return which == Shop::Demo ? *job : which == Shop::Empty ? *empty : *noMachine;
    }

    MadeShop made;
    std::unique_ptr<ui::ShopSession> job;
    std::unique_ptr<ui::ShopSession> empty;
    std::unique_ptr<ui::ShopSession> noMachine;
};

// Twelve seconds of something like speech: louder and quieter.
std::vector<short> murmur() {
    std::vector<short> samples(std::size_t{12} * platform::memoRate);
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double at = static_cast<double>(i) / platform::memoRate;
        samples[i] = static_cast<short>(
            std::lround(9000 * std::sin(900 * at) * std::abs(std::sin(5 * at) * std::sin(1.3 * at))));
    }
    return samples;
}

// The camera of that device; for the plain one the window makes its own.
std::unique_ptr<platform::Camera> cameraOf(Camera camera) {
    if (camera == Camera::Plain)
        return nullptr;
    if (camera == Camera::None)
        return std::make_unique<platform::FileCamera>(QStringLiteral("none"));
    return std::make_unique<platform::FileCamera>(
        QStringLiteral(UNDERCOWL_PHOTOS),
        platform::CameraAbilities{.focus = camera == Camera::Unclear, .torch = true, .mostZoom = 4});
}

// Takes back what a page said: the shop is the same for the next one.
void takeBack(ui::ShopSession& session) {
    const auto rests = [&] { return session.saving() != ui::ShopSession::Saving::Underway; };
    while (QTest::qWaitFor(rests, readingTime) && !session.takeBackText().isEmpty())
        session.takeBack();
}

// The page in a window of its own, as it is once it has settled.
std::unique_ptr<ui::AppWindow> shown(const Page& page, ui::ShopSession& session, QSize size,
                                     const Wanted& wanted, const QString& theme) {
    session.set("theme", theme);
    session.set("voice", "off");
    session.set("hand", wanted.left ? "left" : "right");
    session.set("text-scale", QString::number(wanted.textScale));
    // What another page left unfinished is no part of this one.
    for (const auto& draft : std::vector(session.waitingDrafts()))
        session.dropDraft(draft.form);
    auto app = std::make_unique<ui::AppWindow>(session, size, cameraOf(page.camera));
    if (!page.page.isEmpty())
        app->show(page.page.toLatin1(), page.properties);
    if (auto* compared = app->view<ui::CompareView>(); page.stroked && compared != nullptr)
        compare(*compared);
    else if (page.stroked)
        stroke(*app);
    readerRests(*app);
    if (auto* view = app->view<ui::StrokeView>(); page.tapped && view != nullptr) {
        view->tap(page.tapped->x(), page.tapped->y());
        readerRests(*app);
    }
    for (const QString& words : page.touches) {
        const bool optional = words.startsWith(optionalTouch);
        const QStringList all = spoken(words.mid(optional ? 1 : 0), wanted.language);
        if (optional && std::all_of(all.begin(), all.end(),
                                    [&](const QString& each) { return app->button(each) == nullptr; }))
            continue;
        if (std::none_of(all.begin(), all.end(), [&](const QString& each) { return app->touch(each); }))
            troubles += QStringLiteral("\"%1\" cannot be touched").arg(words);
        readerRests(*app);
    }
    if (!page.said.isEmpty())
        app->listener().say(page.said.toStdString());
    if (page.camera == Camera::Able || page.camera == Camera::Unclear) {
        app->level().say(page.camera == Camera::Able ? 0.5 : -6);
        QTest::qWait(hintTime);
    }
    if (app->recorder().state() == platform::Recorder::State::Recording)
        app->recorder().give(murmur());
    for (const QChar letter : page.typed)
        QTest::keyClick(&app->window(), letter.toLatin1());
    for (const int down : {4, 2})                                   // the first move may be swallowed
        QTest::mouseMove(&app->window(), {size.width() / 2, down}); // off what would light up under it
    QTest::qWait(wanted.folder.isEmpty() ? 150 : 600);              // photos come off the touch thread
    return app;
}

// What is wrong with the page as it is shown. Sizes are the same in every theme, colours are not.
QStringList walkOver(ui::AppWindow& app, ui::ShopSession& session, const Page& page, QSize size,
                     const Wanted& wanted) {
    QStringList faults =
        faultsOf(app.window(), measuresOf(isAtTheLift(page), size)) + std::exchange(troubles, {});
    if (wanted.textScale <= 1)
        faults += unreachedOf(app.window());
    if (wanted.textScale <= 1 && isAtTheLift(page))
        faults += faultsWhileTyping(app.window(), measuresOf(true, size));
    for (const QString& theme : wanted.contrast) {
        session.set("theme", theme);
        QTest::qWait(50);
        for (const QString& fault : palenessOf(app.window(), theme == u"sun" ? 10 : 7))
            faults += theme + ": " + fault;
    }
    return faults;
}

// Every page at one size in one theme; the number of faults.
int look(const Shops& shops, QSize size, const QString& theme, const Wanted& wanted) {
    const QString set = QStringLiteral("%1x%2-%3").arg(size.width()).arg(size.height()).arg(theme);
    std::vector<Picture> pictures;
    int faults = 0;
    for (const Page& page : allPages(shops.made)) {
        if (!wanted.pages.isEmpty() && !wanted.pages.contains(page.name))
            continue;
        ui::ShopSession& session = shops.of(page.shop);
        const auto app = shown(page, session, size, wanted, theme);
        if (wanted.walk)
            for (const QString& fault : walkOver(*app, session, page, size, wanted)) {
                std::printf("%s %s: %s\n", qPrintable(page.name), qPrintable(set), qPrintable(fault));
                ++faults;
            }
        if (!wanted.folder.isEmpty()) {
            pictures.push_back({page.name, app->window().grabWindow()});
            pictures.back().image.save(QDir(wanted.folder).filePath(page.name + '-' + set + ".png"));
        }
        app->window().close(); // and with it any sheet
        takeBack(session);
    }
    // Few enough to a sheet that words can still be read on it.
    const std::size_t each = size.width() > size.height() ? 6 : 10;
    for (std::size_t from = 0; from < pictures.size(); from += each) {
        const auto first = pictures.begin() + static_cast<std::ptrdiff_t>(from);
        const auto last =
            pictures.begin() + static_cast<std::ptrdiff_t>(std::min(from + each, pictures.size()));
        const QString file =
            QDir(wanted.folder).filePath(QStringLiteral("sheet-%1-%2.png").arg(set).arg(from / each + 1));
        if (!sheetOf({first, last}, size.width() > size.height() ? 2620 : 5 * (size.width() + 12) + 12)
                 .save(file))
            qFatal("cannot write %s", qPrintable(file));
        std::printf("%s\n", qPrintable(file));
    }
    return faults;
}

void gallery(QSize size, const QString& theme, const Wanted& wanted) {
    std::vector<Picture> pictures;
    for (const QString& page : galleryPages()) {
        QQmlApplicationEngine engine;
        engine.addImportPath("qrc:/qt/qml");
        engine.setInitialProperties({{"page", page},
                                     {"theme", theme},
                                     {"textScale", wanted.textScale},
                                     {"width", size.width()},
                                     {"height", size.height()}});
        engine.load(QUrl("qrc:/qt/qml/Undercowl/Gallery/Gallery.qml"));
        auto* window = engine.rootObjects().isEmpty()
                           ? nullptr
                           : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
        if (window == nullptr)
            qFatal("the gallery was not made");
        QTest::qWait(300);
        pictures.push_back({page, window->grabWindow()});
    }
    const QString file =
        QDir(wanted.folder)
            .filePath(
                QStringLiteral("controls-%1x%2-%3.png").arg(size.width()).arg(size.height()).arg(theme));
    if (!sheetOf(pictures, 3 * (size.width() + 12) + 12).save(file))
        qFatal("cannot write %s", qPrintable(file));
    std::printf("%s\n", qPrintable(file));
}

std::vector<QSize> sizesOf(const QString& text) {
    std::vector<QSize> sizes;
    for (const QString& each : text.split(',')) {
        const QStringList parts = each.split('x');
        const QSize size(parts.value(0).toInt(), parts.value(1).toInt());
        if (parts.size() != 2 || size.width() < 320 || size.height() < 320)
            qFatal("--sizes wants WIDTHxHEIGHT,... each at least 320, such as 360x640");
        sizes.push_back(size);
    }
    return sizes;
}

Wanted readLine(const QCoreApplication& app) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        "Pictures of every page on contact sheets; or, with --walk, what is cut, too small or outside.");
    parser.addHelpOption();
    parser.addPositionalArgument("FOLDER", "where the pictures go; optional with --walk");
    parser.addOptions({{"sizes", "Window sizes in dp.", "WxH,...", "360x640,412x915,1280x800"},
                       {"themes", "Of night, day and sun.", "NAME,...", "night,day"},
                       {"pages", "Only these pages, and no controls.", "NAME,..."},
                       {"text-scale", "Size of the text, 1 to 2.", "FACTOR", "1"},
                       {"left", "As a left-handed mechanic has it."},
                       {"language", "en, de, it, fr or es.", "CODE"},
                       {"walk", "Measure every page; exit 1 when something is wrong."},
                       {"contrast", "With --walk: measure contrast too, in these themes.", "NAME,..."}});
    parser.process(app);
    Wanted wanted;
    wanted.sizes = sizesOf(parser.value("sizes"));
    wanted.themes = parser.value("themes").split(',');
    if (parser.isSet("pages"))
        wanted.pages = parser.value("pages").split(',');
    wanted.textScale = std::clamp(parser.value("text-scale").toDouble(), 1.0, 2.0);
    wanted.walk = parser.isSet("walk");
    if (parser.isSet("contrast"))
        wanted.contrast = parser.value("contrast").split(',');
    wanted.left = parser.isSet("left");
    wanted.language = parser.value("language");
    if (!wanted.language.isEmpty() && !ui::languageCodes().contains(wanted.language))
        qFatal("--language wants one of %s", qPrintable(ui::languageCodes().join(", ")));
    wanted.folder = parser.positionalArguments().value(0);
    if (wanted.folder.isEmpty() && !wanted.walk)
        parser.showHelp(2);
    if (!wanted.folder.isEmpty() && !QDir().mkpath(wanted.folder))
        qFatal("the folder %s cannot be made", qPrintable(wanted.folder));
    return wanted;
}

int run(const QCoreApplication& app) {
    const Wanted wanted = readLine(app);
    if (!wanted.language.isEmpty())
        ui::speak(wanted.language);
    const QTemporaryDir folder;
    const Shops shops(folder.path());
    int faults = 0;
    for (const QSize size : wanted.sizes)
        for (const QString& theme : wanted.themes) {
            faults += look(shops, size, theme, wanted);
            if (!wanted.folder.isEmpty() && wanted.pages.isEmpty())
                gallery(size, theme, wanted);
        }
    if (wanted.walk)
        std::printf("%d faults\n", faults);
    return faults > 0 ? 1 : 0;
}

} // namespace
} // namespace undercowl::looks

int main(int argc, char* argv[]) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    if (!qEnvironmentVariableIsSet("QT_QUICK_BACKEND"))
        qputenv("QT_QUICK_BACKEND", "software");
    const QGuiApplication app(argc, argv);
    qInstallMessageHandler(undercowl::looks::listen);
    return undercowl::looks::run(app);
}
