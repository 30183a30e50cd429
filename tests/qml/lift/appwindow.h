// The app's own window on a shop, driven by touch at what is visible on it.
#pragma once

#include "heardplayer.h"
#include "heardspeaker.h"
#include "liftshop.h"
#include "rememberingdevice.h"
#include "toldlevel.h"
#include "toldlistener.h"

#include "platform/camera/filecamera.h"
#include "tests/platform/memo/givenrecorder.h"
#include "tests/qml/settling.h"

#include <QPointingDevice>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include <algorithm>
#include <memory>
#include <utility>

namespace undercowl::ui {

class AppWindow {
public:
    // Without a camera of its own it gets one that takes the demo's photos and can do nothing besides.
    explicit AppWindow(ShopSession& session, QSize size = {360, 640},
                       std::unique_ptr<platform::Camera> camera = nullptr)
        : camera_(camera != nullptr
                      ? std::move(camera)
                      : std::make_unique<platform::FileCamera>(QStringLiteral(UNDERCOWL_PHOTOS))),
          finger_(QTest::createTouchDevice()) {
        engine_.addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine_.setInitialProperties(
            {{QStringLiteral("session"), QVariant::fromValue(&session)},
             {QStringLiteral("camera"), QVariant::fromValue(camera_.get())},
             {QStringLiteral("level"), QVariant::fromValue(static_cast<platform::Level*>(&level_))},
             {QStringLiteral("listener"), QVariant::fromValue(static_cast<platform::Listener*>(&listener_))},
             {QStringLiteral("speaker"), QVariant::fromValue(static_cast<platform::Speaker*>(&speaker_))},
             {QStringLiteral("recorder"), QVariant::fromValue(static_cast<platform::Recorder*>(&recorder_))},
             {QStringLiteral("player"), QVariant::fromValue(static_cast<platform::Player*>(&player_))},
             {QStringLiteral("deviceScreen"), QVariant::fromValue(static_cast<platform::Screen*>(&screen_))},
             {QStringLiteral("signaller"),
              QVariant::fromValue(static_cast<platform::Signaller*>(&signaller_))},
             {QStringLiteral("width"), size.width()},
             {QStringLiteral("height"), size.height()}});
        engine_.load(QUrl(QStringLiteral("qrc:/qt/qml/Undercowl/ShopWindow.qml")));
        window_ = engine_.rootObjects().isEmpty()
                      ? nullptr
                      : qobject_cast<QQuickWindow*>(engine_.rootObjects().first());
        if (window_ == nullptr)
            qFatal("the window was not made");
        // The tests know what comes, and touch it without looking at it first.
        settles(0);
        (void)QTest::qWaitForWindowExposed(window_);
    }

    [[nodiscard]] platform::Camera& camera() { return *camera_; }
    [[nodiscard]] ToldLevel& level() { return level_; }
    [[nodiscard]] HeardSpeaker& speaker() { return speaker_; }
    [[nodiscard]] ToldListener& listener() { return listener_; }
    [[nodiscard]] platform::GivenRecorder& recorder() { return recorder_; }
    [[nodiscard]] HeardPlayer& player() { return player_; }
    [[nodiscard]] RememberingScreen& screen() { return screen_; }
    [[nodiscard]] RememberingSignaller& signaller() { return signaller_; }
    [[nodiscard]] QPointingDevice& finger() const { return *finger_; }
    [[nodiscard]] QQuickWindow& window() const { return *window_; }

    // So many milliseconds a button ignores touches after what it acts on has changed; 0: none.
    void settles(int ms) { settleFor(engine_, ms); }

    void show(const char* page, const QVariantMap& properties = {}) {
        QMetaObject::invokeMethod(window_, "show", Q_ARG(QString, QString::fromLatin1(page)),
                                  Q_ARG(QVariant, QVariant(properties)));
        QTest::qWait(50);
    }

    // The view model of the page that is shown.
    template<typename View>
    [[nodiscard]] View* view() const {
        View* view = nullptr;
        (void)find(*window_->contentItem(), [&view](const QQuickItem& item) {
            view = item.template findChild<View*>(QString(), Qt::FindDirectChildrenOnly);
            return view != nullptr;
        });
        return view;
    }

    // The item that has the property and is seen; null if there is none.
    [[nodiscard]] QQuickItem* having(const char* property) const {
        return find(*window_->contentItem(), [property](const QQuickItem& item) {
            return item.metaObject()->indexOfProperty(property) >= 0;
        });
    }

    // The text field with this example in it.
    [[nodiscard]] QQuickItem* field(const QString& example) const {
        return find(*window_->contentItem(), [&example](const QQuickItem& item) {
            return item.property("placeholderText").toString() == example &&
                   item.metaObject()->indexOfProperty("cursorPosition") >= 0;
        });
    }

    // A text with these words; null while none is seen.
    [[nodiscard]] QQuickItem* label(const QString& words) const {
        return find(*window_->contentItem(), [&words](const QQuickItem& item) {
            return item.inherits("QQuickText") && item.property("text").toString() == words;
        });
    }

    // A button whose words are these, or else begin with them; null while none can be touched.
    [[nodiscard]] QQuickItem* button(const QString& words) const {
        QQuickItem* best = nullptr;
        for (const bool exactly : {true, false}) {
            const auto fits = [&](const QQuickItem& item) {
                if (item.metaObject()->indexOfSignal("triggered()") < 0 || !item.isEnabled())
                    return false;
                for (const char* name : {"text", "title"}) {
                    const QString shown = item.property(name).toString();
                    if (exactly ? shown == words : shown.startsWith(words))
                        return true;
                }
                return false;
            };
            if (best == nullptr)
                best = find(*window_->contentItem(), fits);
        }
        return best;
    }

    // Waits for the button and touches it in its middle; false when it does not come.
    [[nodiscard]] bool touch(const QString& words) {
        const auto there = [&] { return button(words) != nullptr; };
        if (!QTest::qWaitFor(there, 300) && !scrollTo(there) && !QTest::qWaitFor(there, 3000))
            return false;
        QTest::qWait(300); // a second tap that comes sooner is ignored
        const QQuickItem* item = button(words);
        if (item != nullptr)
            bringUp(*item);
        return item != nullptr && touchAt(item->mapToScene({item->width() / 2, item->height() / 2}));
    }

    // What the head of the page offers: behind the button for more, where there is no room for it.
    [[nodiscard]] bool touchTool(const QString& words) {
        const auto more = QStringLiteral("More on this page");
        const auto there = [&] { return button(words) != nullptr || button(more) != nullptr; };
        return QTest::qWaitFor(there, 3000) && (button(words) != nullptr || touch(more)) && touch(words);
    }

    [[nodiscard]] bool touchAt(QPointF at) {
        QTest::touchEvent(window_, finger_.get()).press(0, at.toPoint(), window_);
        QTest::qWait(20);
        QTest::touchEvent(window_, finger_.get()).release(0, at.toPoint(), window_);
        QTest::qWait(20);
        return true;
    }

    void drag(const QList<QPointF>& along) {
        QTest::touchEvent(window_, finger_.get()).press(0, along.front().toPoint(), window_);
        for (qsizetype i = 1; i < along.size(); ++i)
            for (int part = 1; part <= 5; ++part) {
                const QPointF at = along[i - 1] + (along[i] - along[i - 1]) * part / 5;
                QTest::qWait(10);
                QTest::touchEvent(window_, finger_.get()).move(0, at.toPoint(), window_);
            }
        QTest::qWait(10);
        QTest::touchEvent(window_, finger_.get()).release(0, along.back().toPoint(), window_);
    }

private:
    // A long list makes the rows that are in view: scrolls it, as a thumb would, until what is looked for is
    // there.
    template<typename There>
    [[nodiscard]] bool scrollTo(const There& there) const {
        auto* list = having("doneWord");
        if (list == nullptr)
            return false;
        double before = -1;
        while (!there() && before != list->property("contentY").toDouble()) {
            before = list->property("contentY").toDouble();
            const double end = list->property("originY").toDouble() +
                               list->property("contentHeight").toDouble() - list->height();
            list->setProperty("contentY", std::max(before, std::min(before + list->height() / 2, end)));
            QTest::qWait(20);
        }
        return there();
    }

    // Scrolls, as a thumb would, until the whole item is seen.
    static void bringUp(const QQuickItem& item) {
        for (QQuickItem* around = item.parentItem(); around != nullptr; around = around->parentItem()) {
            if (!around->property("contentY").isValid())
                continue;
            const double top = item.mapToItem(around, {0, 0}).y();
            const double below = top + item.height() - around->height();
            const double far = below > 0 ? below : std::min(top, 0.0);
            if (far != 0.0)
                around->setProperty("contentY", around->property("contentY").toDouble() + far);
        }
        QTest::qWait(20);
    }

    template<typename Fits>
    static QQuickItem* find(QQuickItem& under, const Fits& fits) {
        if (!under.isVisible())
            return nullptr;
        // What lies on top is found first.
        const auto children = under.childItems();
        for (auto child = children.rbegin(); child != children.rend(); ++child)
            if (auto* found = find(**child, fits))
                return found;
        return fits(under) ? &under : nullptr;
    }

    std::unique_ptr<platform::Camera> camera_;
    ToldLevel level_;
    HeardSpeaker speaker_;
    ToldListener listener_;
    platform::GivenRecorder recorder_;
    HeardPlayer player_;
    RememberingScreen screen_;
    RememberingSignaller signaller_;
    std::unique_ptr<QPointingDevice> finger_;
    QQmlApplicationEngine engine_;
    QQuickWindow* window_{};
};

} // namespace undercowl::ui
