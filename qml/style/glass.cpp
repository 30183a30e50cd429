#include "qml/style/glass.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineF>
#include <QMouseEvent>
#include <QPointingDevice>
#include <QTouchEvent>

#include <algorithm>
#include <utility>

namespace undercowl::ui {

namespace {

constexpr int fingersOfAPalm = 3;
constexpr qreal samePlace = 48; // dp: a smallest target apart is another place
constexpr int msOfAMinute = 60000;

// A drop of water presses no key of the device's case.
bool isOfTheCase(int key) {
    return key == Qt::Key_VolumeUp || key == Qt::Key_VolumeDown || key == Qt::Key_Camera;
}

bool isDeed(int key) {
    return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space || key == Qt::Key_Select;
}

} // namespace

bool isPalmContact(QSizeF contact) {
    return std::max(contact.width(), contact.height()) > palmLength;
}

bool isPalm(const QList<QEventPoint>& points) {
    int down = 0;
    for (const QEventPoint& point : points) {
        if (point.state() == QEventPoint::Released)
            continue;
        ++down;
        if (isPalmContact(point.ellipseDiameters()))
            return true;
    }
    return down >= fingersOfAPalm;
}

Glass::Glass(QObject* parent) : QObject(parent) {
    patience_.setSingleShot(true);
    connect(&patience_, &QTimer::timeout, this, [this] {
        dimmed_ = true;
        emit dimmedChanged();
    });
}

void Glass::setWindow(QQuickWindow* window) {
    if (window == window_)
        return;
    if (window_ != nullptr)
        window_->removeEventFilter(this);
    window_ = window;
    if (window_ != nullptr)
        window_->installEventFilter(this);
    emit windowChanged();
}

void Glass::setLocked(bool locked) {
    if (locked == locked_)
        return;
    locked_ = locked;
    emit lockedChanged();
}

void Glass::setDimAfter(double minutes) {
    if (minutes == dimAfter_)
        return;
    dimAfter_ = minutes;
    emit dimAfterChanged();
    stir();
}

void Glass::stir() {
    (void)wake();
}

bool Glass::wake() {
    if (dimAfter_ > 0)
        patience_.start(static_cast<int>(dimAfter_ * msOfAMinute));
    else
        patience_.stop();
    if (!dimmed_)
        return false;
    dimmed_ = false;
    emit dimmedChanged();
    return true;
}

void Glass::letThrough(QQuickItem* item) {
    std::erase_if(through_, [](const QPointer<QQuickItem>& each) { return each.isNull(); });
    through_.emplace_back(item);
}

std::vector<QQuickItem*> Glass::letThroughNow() const {
    std::vector<QQuickItem*> now;
    for (const QPointer<QQuickItem>& item : through_)
        if (item != nullptr && item->isVisible() && item->isEnabled() && item->window() == window_)
            now.push_back(item);
    return now;
}

bool Glass::opens(QPointF at) const {
    const auto now = letThroughNow();
    return std::any_of(now.begin(), now.end(),
                       [at](const QQuickItem* item) { return item->contains(item->mapFromScene(at)); });
}

bool Glass::takes(QQuickItem* item, int guard) {
    if (locked_) {
        const auto now = letThroughNow();
        if (std::find(now.begin(), now.end(), item) == now.end())
            return false;
    }
    if (guard <= 0)
        return true;
    const bool again = item == lastItem_ ||
                       (byPointer_ && lastByPointer_ && QLineF(pressedAt_, lastAt_).length() < samePlace);
    if (again && sinceLast_.isValid() && sinceLast_.elapsed() < guard)
        return false;
    lastItem_ = item;
    lastAt_ = pressedAt_;
    lastByPointer_ = byPointer_;
    sinceLast_.start();
    return true;
}

// Watches nothing but its window, which may be half destroyed by now: then it is a QQuickWindow no more.
bool Glass::eventFilter(QObject* /*watched*/, QEvent* event) {
    if (cancelling_)
        return false;
    switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd: return touched(*static_cast<QTouchEvent*>(event));
    case QEvent::TouchCancel: swallowing_ = false; return false;
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick:
    case QEvent::MouseMove:
    case QEvent::MouseButtonRelease: return clicked(*static_cast<QMouseEvent*>(event));
    case QEvent::Wheel: return wake() || locked_;
    case QEvent::KeyPress:
    case QEvent::KeyRelease: return keyed(*static_cast<QKeyEvent*>(event));
    default: return false;
    }
}

bool Glass::touched(QTouchEvent& event) {
    const bool begins = event.type() == QEvent::TouchBegin;
    if (begins)
        swallowing_ = false; // whatever was lost of the touch before
    const bool woke = begins && wake();
    bool stray = false;
    for (const QEventPoint& point : event.points())
        if (point.state() == QEventPoint::Pressed) {
            byPointer_ = true;
            pressedAt_ = point.position();
            stray = stray || (locked_ && !opens(point.position()));
        }
    // More fingers than one on what unlocks is a hand, or water.
    stray = stray || (locked_ && event.points().size() > 1);
    if (!swallowing_ && (woke || stray || isPalm(event.points()))) {
        swallowing_ = true;
        if (!begins)
            cancel(event);
    }
    if (stray)
        emit strayed();
    if (!swallowing_)
        return false;
    if (event.type() == QEvent::TouchEnd)
        swallowing_ = false;
    event.accept();
    return true;
}

void Glass::cancel(const QTouchEvent& event) {
    QTouchEvent ended(QEvent::TouchCancel, event.pointingDevice(), event.modifiers(), event.points());
    cancelling_ = true;
    QCoreApplication::sendEvent(window_, &ended);
    cancelling_ = false;
}

bool Glass::clicked(QMouseEvent& event) {
    if (event.type() == QEvent::MouseMove)
        return mouseSwallow_;
    if (event.type() == QEvent::MouseButtonRelease)
        return std::exchange(mouseSwallow_, false);
    const bool woke = wake();
    byPointer_ = true;
    pressedAt_ = event.position();
    const bool stray = locked_ && !opens(event.position());
    if (stray)
        emit strayed();
    mouseSwallow_ = woke || stray;
    return mouseSwallow_;
}

bool Glass::keyed(QKeyEvent& event) {
    if (event.type() == QEvent::KeyRelease) {
        const auto now = letThroughNow();
        return locked_ && !isOfTheCase(event.key()) &&
               std::find(now.begin(), now.end(), window_->activeFocusItem()) == now.end();
    }
    const bool woke = wake();
    byPointer_ = false;
    if (woke)
        return true;
    if (!locked_ || isOfTheCase(event.key()))
        return false;
    if (event.key() == Qt::Key_Tab || event.key() == Qt::Key_Backtab) {
        moveFocus(event.key() == Qt::Key_Backtab);
        return true;
    }
    const auto now = letThroughNow();
    return !isDeed(event.key()) || event.isAutoRepeat() ||
           std::find(now.begin(), now.end(), window_->activeFocusItem()) == now.end();
}

void Glass::moveFocus(bool back) {
    const auto now = letThroughNow();
    if (now.empty())
        return;
    const auto at = std::find(now.begin(), now.end(), window_->activeFocusItem());
    const auto count = static_cast<std::ptrdiff_t>(now.size());
    const auto index = at == now.end() ? (back ? 0 : -1) : at - now.begin();
    now[static_cast<std::size_t>((index + (back ? count - 1 : 1)) % count)]->forceActiveFocus(
        back ? Qt::BacktabFocusReason : Qt::TabFocusReason);
}

} // namespace undercowl::ui
