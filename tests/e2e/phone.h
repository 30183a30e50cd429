// One phone, its shop and whoever holds it.
#pragma once

#include "core/job/model.h"
#include "platform/app/app.h"
#include "tests/e2e/hand.h"
#include "tests/platform/tool.h"

#include <QElapsedTimer>
#include <QPointer>
#include <QQuickWindow>

#include <atomic>
#include <functional>
#include <memory>
#include <string>

namespace undercowl::e2e {

struct Look {
    int width;
    int height;
    const char* theme;
};

class Phone {
public:
    explicit Phone(const Look& look);

    [[nodiscard]] std::string shop() const { return scratch_ / "shop"; }
    [[nodiscard]] Hand& hand() { return *hand_; }
    void wait(job::TimeMs time) { *later_ += time; }

    // The app on this phone's shop; without a camera, photos come from files.
    void open(bool withCamera);
    void close();
    // Waits until the app has gone over to another shop; the hand is then on its new window.
    void begunAnew();

private:
    void takeUp();
    [[nodiscard]] std::string camera() const { return scratch_ / "camera"; }
    [[nodiscard]] std::string pictures() const { return scratch_ / "pictures"; }

    Look look_;
    tests::Scratch scratch_;
    QElapsedTimer since_;
    std::shared_ptr<std::atomic<job::TimeMs>> later_ = std::make_shared<std::atomic<job::TimeMs>>(0);
    std::unique_ptr<platform::App> app_;
    QPointer<QQuickWindow> window_; // that the hand is on
    QString name_;                  // of its pictures
    std::unique_ptr<Hand> hand_;
};

} // namespace undercowl::e2e
