#include "tests/e2e/hand.h"

#include <QDir>
#include <QLineF>
#include <QPointingDevice>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include <catch2/catch.hpp>

#include <array>

namespace undercowl::e2e {

namespace {

constexpr int patience = 60000; // milliseconds; the reader is slow where others work beside it
constexpr int trembling = 350;  // a second touch that comes sooner is ignored by the controls ...
constexpr int glance = 350;     // between touches at two places
constexpr double thumb = 60;    // ... at the same place, dp
constexpr double margin = 4;    // from the edge: where a thumb scrolls without touching anything

} // namespace

Hand::Hand(QQuickWindow& window, QString look)
    : window_(window), finger_(QTest::createTouchDevice()), look_(std::move(look)) {
    window_.requestActivate();
    REQUIRE(QTest::qWaitForWindowActive(&window_));
}

std::string Hand::screen() const {
    return textsOn(window_).join(QStringLiteral("\n  ")).toStdString();
}

bool Hand::offers(const QString& name) const {
    const auto found = touchables(window_, name);
    return !found.empty() && nameOf(*found.front()) == name;
}

bool Hand::shows(const QString& words) const {
    return !textsOn(window_).filter(words).isEmpty();
}

bool Hand::reads(const QString& words) const {
    return textsOn(window_).contains(words);
}

void Hand::sees(const QString& words) const {
    const bool seen = QTest::qWaitFor([&] { return shows(words); }, patience);
    if (!seen)
        picture(QStringLiteral("failed"));
    INFO("the screen shows:\n  " << screen());
    INFO("wanted: " << words.toStdString());
    REQUIRE(seen);
}

void Hand::seesNot(const QString& words) const {
    const bool gone = QTest::qWaitFor([&] { return !shows(words); }, patience);
    INFO("the screen shows:\n  " << screen());
    INFO("not wanted: " << words.toStdString());
    REQUIRE(gone);
}

QStringList Hand::read() const {
    constexpr int still = 250; // milliseconds
    QStringList texts;
    QStringList before;
    do {
        before = std::exchange(texts, textsOn(window_));
        QTest::qWait(still);
    } while (texts.isEmpty() || texts != before);
    return texts;
}

QQuickItem* Hand::find(const QString& name, Kind kind) const {
    const bool found = QTest::qWaitFor([&] { return !touchables(window_, name, kind).empty(); }, patience);
    INFO("the screen shows:\n  " << screen());
    INFO("nothing that is enabled is called: " << name.toStdString());
    REQUIRE(found);
    return touchables(window_, name, kind).front();
}

void Hand::drag(std::span<const QPointF> way) const {
    constexpr int steps = 12;
    auto touch = [&] { return QTest::touchEvent(&window_, finger_); };
    touch().press(0, way.front().toPoint(), &window_);
    for (std::size_t i = 1; i < way.size(); ++i)
        for (int step = 1; step <= steps; ++step) {
            const QPointF at = way[i - 1] + (way[i] - way[i - 1]) * step / steps;
            touch().move(0, at.toPoint(), &window_);
            QTest::qWait(8);
        }
    QTest::qWait(150); // lies still: dragged, not thrown
    touch().move(0, way.back().toPoint(), &window_);
    QTest::qWait(20);
    touch().release(0, way.back().toPoint(), &window_);
    QTest::qWait(50);
}

void Hand::bringIntoView(QQuickItem& item, const QString& name) const {
    INFO("to be touched: " << name.toStdString());
    for (int tries = 0; tries < 30; ++tries) {
        const QRectF area = areaOf(item);
        const QRectF seen = seenOf(item);
        if (seen.width() >= area.width() - 1 && seen.height() >= area.height() - 1)
            return;
        QQuickItem* scroller = scrollerOf(item);
        INFO("the screen shows:\n  " << screen());
        INFO("lies at " << area.x() << "," << area.y() << " " << area.width() << "x" << area.height());
        REQUIRE(scroller != nullptr); // cut off, and no scrolling would help
        const QRectF page = seenOf(*scroller);
        const bool sideways = area.width() > seen.width() + 1 && area.height() <= page.height() + 1 &&
                              (area.right() > page.right() + 1 || area.left() < page.left() - 1);
        if (!sideways && area.height() > page.height() && seen.contains(seen.center()) &&
            seen.height() >= page.height() - 1)
            return; // higher than the page: its middle part is in view
        const double room = (sideways ? page.width() : page.height()) * 0.7;
        const double wanted =
            sideways ? area.center().x() - page.center().x() : area.center().y() - page.center().y();
        const double way = std::clamp(wanted, -room, room);
        const QPointF from = sideways ? page.center() + QPointF(way / 2, 0)
                                      : QPointF(page.left() + margin, page.center().y() + way / 2);
        const QPointF to = from - (sideways ? QPointF(way, 0) : QPointF(0, way));
        const std::array<QPointF, 2> line{from, to};
        drag(line);
        const QRectF now = areaOf(item);
        REQUIRE(now != area); // at its end: the item cannot be brought into view
    }
    FAIL("does not come into view: " << name.toStdString());
}

void Hand::touch(const QString& name) {
    QQuickItem* item = find(name, Kind::Control);
    // Who looks before he touches again takes his time: at the same place more than a trembling thumb, whose
    // second tap is ignored, elsewhere until a sheet has closed and given the focus back.
    const bool there = item == touched_ || QLineF(seenOf(*item).center(), touchedAt_).length() < thumb;
    const int pause = there ? trembling : glance;
    if (sinceTouch_.isValid() && sinceTouch_.elapsed() < pause) {
        QTest::qWait(pause - static_cast<int>(sinceTouch_.elapsed()));
        item = find(name, Kind::Control); // what was touched may be gone by now, and another be called so
    }
    // What is being laid out, or makes room for a line that appears, is touched once it lies still in view.
    bool still = false;
    for (int tries = 0; tries < 5 && !still; ++tries) {
        QRectF before;
        REQUIRE(
            QTest::qWaitFor([&] { return std::exchange(before, areaOf(*item)) == areaOf(*item); }, patience));
        bringIntoView(*item, name);
        QTest::qWait(30);
        still = areaOf(*item) == before && !covered(window_, *item, seenOf(*item).center());
    }
    const QPointF at = seenOf(*item).center();
    INFO("the screen shows:\n  " << screen());
    INFO("to be touched: " << name.toStdString() << " at " << at.x() << "," << at.y());
    REQUIRE_FALSE(covered(window_, *item, at));
    QTest::touchEvent(&window_, finger_).press(0, at.toPoint(), &window_);
    QTest::qWait(30);
    QTest::touchEvent(&window_, finger_).release(0, at.toPoint(), &window_);
    QTest::qWait(30);
    touched_ = item;
    touchedAt_ = at;
    sinceTouch_.start();
}

void Hand::touchTool(const QString& name) {
    const auto more = QStringLiteral("More on this page");
    const auto there = [&] { return !touchables(window_, name).empty(); };
    const bool found = QTest::qWaitFor([&] { return there() || offers(more); }, patience);
    INFO("the screen shows:\n  " << screen());
    REQUIRE(found);
    if (!there())
        touch(more);
    touch(name);
}

void Hand::type(const QString& field, const QString& words) {
    touch(field);
    QQuickItem* focused = window_.activeFocusItem();
    REQUIRE(focused != nullptr);
    INFO("typed into: " << nameOf(*focused).toStdString());
    INFO("the screen shows:\n  " << screen());
    INFO("touched at " << touchedAt_.x() << "," << touchedAt_.y());
    REQUIRE(nameOf(*focused) == field);
    for (const QChar letter : words)
        QTest::sendKeyEvent(QTest::Click, &window_, QTest::asciiToKey(letter.toLatin1()), QString(letter),
                            Qt::NoModifier);
    REQUIRE(focused->property("text").toString() == words);
}

void Hand::press(Qt::Key key) {
    QTest::keyClick(&window_, key);
}

void Hand::stroke(const QString& name, QSize photo, std::span<const QPointF> points) {
    QQuickItem* item = find(name, Kind::Photo);
    bringIntoView(*item, name);
    const QRectF frame = areaOf(*item);
    const QSizeF shown = QSizeF(photo).scaled(frame.size(), Qt::KeepAspectRatio);
    const QPointF corner = frame.center() - QPointF(shown.width() / 2, shown.height() / 2);
    std::vector<QPointF> way;
    for (const QPointF& point : points) {
        way.emplace_back(corner.x() + point.x() / photo.width() * shown.width(),
                         corner.y() + point.y() / photo.height() * shown.height());
        INFO("stroked at " << way.back().x() << "," << way.back().y());
        REQUIRE_FALSE(covered(window_, *item, way.back()));
    }
    drag(way);
}

void Hand::picture(const QString& name) const {
    const QString folder = qEnvironmentVariable("UNDERCOWL_SHOTS");
    ++pictures_;
    if (folder.isEmpty())
        return;
    QTest::qWait(600); // photos and fonts arrive
    const QString file =
        QStringLiteral("%1-%2-%3.png").arg(pictures_, 2, 10, QLatin1Char('0')).arg(name, look_);
    REQUIRE(QDir().mkpath(folder));
    REQUIRE(window_.grabWindow().save(QDir(folder).filePath(file)));
}

} // namespace undercowl::e2e
