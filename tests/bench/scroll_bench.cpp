// How long a frame takes while the steps of a long job are scrolled: the app's own page of 500 steps, each
// with a photo of 12 megapixels, on a phone's window, moved from top to end and back as fast as a thumb
// throws it. The same page is moved through the same frames with a list of empty rows of the same height:
// bare items, of which nothing is drawn, and bare surfaces, the least that a row may be. The bar is a ratio
// of 2 against the bare surfaces.
//
// A frame is all that the touch thread does from one to the next: moving the list and making its rows, what
// comes from the thread that decodes photos, polishing, synchronising and drawing, which with the software
// renderer is done by this thread too. Its processor time is measured, so that what else runs on the machine
// does not count, and beside it the time that passes.
//
// usage: bench_scroll FOLDER [STEPS]
#include "platform/app/app.h"
#include "platform/early_fonts.h"
#include "qml/shell/session.h"
#include "tests/bench/shopmaker.h"

#include <QBuffer>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QGuiApplication>
#include <QImage>
#include <QQmlComponent>
#include <QQmlContext>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTimer>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <functional>
#include <vector>

namespace {

using namespace undercowl;

constexpr double pixelsAFrame = 40; // 2,400 dp a second
constexpr int frameTime = 16;       // ms at 60 frames a second
constexpr int patience = 20'000;    // ms

[[noreturn]] void fail(const char* what) {
    std::fprintf(stderr, "bench_scroll: %s\n", what);
    std::exit(1);
}

double processorTime() { // ms of this thread
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

// Handles what comes for so long, sleeping where nothing does.
void rest(int ms) {
    if (ms <= 0) {
        QCoreApplication::processEvents();
        return;
    }
    QEventLoop loop;
    QTimer::singleShot(ms, Qt::PreciseTimer, &loop, &QEventLoop::quit);
    loop.exec();
}

bool comes(const std::function<bool()>& what) {
    QElapsedTimer timer;
    timer.start();
    while (!what() && timer.elapsed() < patience)
        rest(frameTime);
    return what();
}

QQuickItem* find(QQuickItem& under, const std::function<bool(const QQuickItem&)>& fits) {
    if (!under.isVisible())
        return nullptr;
    if (fits(under))
        return &under;
    for (QQuickItem* child : under.childItems())
        if (auto* found = find(*child, fits))
            return found;
    return nullptr;
}

// Photos that are in view, and those of them that are shown by now.
struct Photos {
    int inView{};
    int shown{};

    void look(const QQuickItem& item, const QRectF& window) {
        if (item.inherits("QQuickImage") &&
            item.mapRectToScene(QRectF(0, 0, item.width(), item.height())).intersects(window)) {
            ++inView;
            shown += item.property("status").toInt() == 1 ? 1 : 0; // Image.Ready
        }
        for (const QQuickItem* child : item.childItems())
            look(*child, window);
    }
};

struct Times {
    std::vector<double> processor, passed; // ms, one for each frame
    Photos photos;

    static double at(std::vector<double> times, double share) {
        std::sort(times.begin(), times.end());
        return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
    }
};

class Page {
public:
    explicit Page(QQuickWindow& window) : window_(window) {
        const auto isList = [](const QQuickItem& item) {
            return item.inherits("QQuickListView") && item.property("doneWord").isValid();
        };
        if (!comes([&] {
                list_ = find(*window.contentItem(), isList);
                return list_ != nullptr && list_->property("count").toInt() > 0;
            }))
            fail("the page with the steps did not come");
        settle();
    }

    [[nodiscard]] int count() const { return list_->property("count").toInt(); }
    [[nodiscard]] double rowHeight() const {
        const double spacing = list_->property("spacing").toDouble();
        return (list_->property("contentHeight").toDouble() + spacing) / count() - spacing;
    }
    [[nodiscard]] QVariant rows() const { return list_->property("delegate"); }
    void setRows(const QVariant& rows) {
        list_->setProperty("delegate", rows);
        list_->setProperty("contentY", list_->property("originY"));
        settle();
    }

    void scroll(Times& times) {
        for (const int way : {1, -1}) {
            while (moveBy(way * pixelsAFrame, times)) {
            }
        }
    }

private:
    void draw() { // now and not when the platform's timer says
        QEvent update(QEvent::UpdateRequest);
        QCoreApplication::sendEvent(&window_, &update);
    }

    void settle() {
        for (int frame = 0; frame < 60; ++frame) {
            draw();
            rest(frameTime);
        }
    }

    // One frame; false at the end.
    bool moveBy(double way, Times& times) {
        const double first = list_->property("originY").toDouble();
        const double last = std::max(first, first + list_->property("contentHeight").toDouble() +
                                                list_->property("bottomMargin").toDouble() - list_->height());
        const double from = list_->property("contentY").toDouble();
        const double to = std::clamp(from + way, first, last);
        if (std::abs(to - from) < 1) // it stands on whole pixels
            return false;
        QElapsedTimer timer;
        timer.start();
        const double before = processorTime();
        list_->setProperty("contentY", to);
        draw();
        times.passed.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
        rest(frameTime - static_cast<int>(timer.elapsed()));
        times.processor.push_back(processorTime() - before);
        times.photos.look(*list_, QRectF(QPointF(0, 0), QSizeF(window_.size())));
        return true;
    }

    QQuickWindow& window_;
    QQuickItem* list_{};
};

// A photo as a phone takes it, of 12 megapixels.
std::string photo() {
    const QImage image(QStringLiteral(UNDERCOWL_PHOTOS "/switch-before.jpg"));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (image.isNull() ||
        !image.scaled(4000, 3000, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).save(&buffer, "JPEG", 85))
        fail("no photo was made");
    return bytes.toStdString();
}

void tell(const char* what, const Times& times) {
    const auto at = Times::at;
    std::printf(
        "%-16s %5zu frames  processor %6.2f %6.2f %6.2f %6.2f ms   passed %6.2f %6.2f %6.2f %6.2f ms\n", what,
        times.processor.size(), at(times.processor, 0.5), at(times.processor, 0.95),
        at(times.processor, 0.99), at(times.processor, 1), at(times.passed, 0.5), at(times.passed, 0.95),
        at(times.passed, 0.99), at(times.passed, 1));
}

void compare(const char* what, const Times& rows, const Times& others) {
    const auto ratio = [&](double share) {
        return Times::at(rows.processor, share) / Times::at(others.processor, share);
    };
    std::printf("against %-16s median %.2f, p95 %.2f, p99 %.2f\n", what, ratio(0.5), ratio(0.95),
                ratio(0.99));
}

} // namespace

int main(int argc, char* argv[]) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    qputenv("QT_QPA_UPDATE_IDLE_TIME", "10000"); // every frame is asked for here
    const platform::EarlyFonts fonts;
    const QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("undercowl"));
    if (argc != 2 && argc != 3) {
        std::fprintf(stderr, "usage: bench_scroll FOLDER [STEPS]\n");
        return 2;
    }
    (void)std::setvbuf(stdout, nullptr, _IOLBF, 0);
    const auto folder = std::filesystem::path(argv[1]) / "undercowl-scroll-bench";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    const auto shop = bench::makeLongStrip(
        folder / "shop", argc > 2 ? static_cast<std::size_t>(std::atoi(argv[2])) : 500, photo());
    {
        const platform::App app(
            {.store = shop.folder, .camera = {}, .pictures = {}, .look = {{"width", 412}, {"height", 915}}});
        if (app.window() == nullptr)
            fail("the app did not start");
        auto* session = app.window()->property("session").value<ui::ShopSession*>();
        if (!comes([&] { return session->state() == ui::ShopSession::State::Ready; }))
            fail("the shop was not opened");
        rest(3000); // the plugins are loaded by then
        session->openJob(QString::fromStdString(shop.open.front()));
        QMetaObject::invokeMethod(app.window(), "show", Q_ARG(QString, QStringLiteral("StepsPage")),
                                  Q_ARG(QVariant, QVariantMap()));
        Page page(*app.window());
        const QVariant real = page.rows();
        QQmlComponent bare(qmlEngine(app.window()));
        QQmlComponent surface(qmlEngine(app.window()));
        const auto height = QByteArray::number(page.rowHeight());
        bare.setData(
            "import QtQuick\nItem { width: ListView.view.width - 24; x: 12; height: " + height + " }", {});
        surface.setData("import QtQuick\nimport Undercowl.Style\nRectangle { width: ListView.view.width - "
                        "24; x: 12; color: Theme.panel; radius: Theme.corner; height: " +
                            height + " }",
                        {});
        std::printf("%d steps of %s dp, window 412 x 915, %.0f dp a frame\n", page.count(),
                    height.constData(), pixelsAFrame);
        Times rows;
        Times items;
        Times surfaces;
        for (int round = 0; round < 2; ++round) { // turn and turn about
            page.setRows(QVariant::fromValue(&bare));
            page.scroll(items);
            page.setRows(QVariant::fromValue(&surface));
            page.scroll(surfaces);
            page.setRows(real);
            page.scroll(rows);
        }
        std::printf(
            "%-29s of the touch thread: median, p95, p99, most; time until the frame is drawn: the same\n",
            "");
        tell("bare items", items);
        tell("bare surfaces", surfaces);
        tell("steps", rows);
        compare("bare items:", rows, items);
        compare("bare surfaces:", rows, surfaces);
        std::printf("photos shown of those in view: %.1f %%\n",
                    100.0 * rows.photos.shown / std::max(1, rows.photos.inView));
    }
    std::filesystem::remove_all(folder);
    return 0;
}
