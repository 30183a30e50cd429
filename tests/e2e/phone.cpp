#include "tests/e2e/phone.h"

#include "tests/e2e/demowires.h"
#include "tests/qml/settling.h"

#include <QQmlEngine>
#include <QTest>

#include <catch2/catch.hpp>

#include <filesystem>

namespace undercowl::e2e {

namespace {

constexpr job::TimeMs noon = 1'795'780'800'000; // 2026-11-27 12:00 UTC: no day ends during a test

} // namespace

Phone::Phone(const Look& look) : look_(look) {
    since_.start();
    // In the order in which they will be shot.
    int shot = 0;
    for (const char* photo : {"rear-terminals.jpg", "tail-plug.jpg", "generator-bullets.jpg",
                              "switch-before.jpg", "switch-before.jpg"})
        lay(photo, camera() + "/" + std::to_string(++shot) + ".jpg");
    lay("switch-after.jpg", pictures() + "/switch-after.jpg");
    std::filesystem::create_directories(scratch_ / "none");
}

void Phone::open(bool withCamera) {
    app_ = std::make_unique<platform::App>(platform::AppWanted{
        .store = shop(),
        .camera = QString::fromStdString(withCamera ? camera() : scratch_ / "none"),
        .pictures = QString::fromStdString(pictures()),
        .look = {{QStringLiteral("width"), look_.width},
                 {QStringLiteral("height"), look_.height},
                 {QStringLiteral("theme"), QString::fromLatin1(look_.theme)}},
        .clock = [since = since_, later = later_] { return noon + since.elapsed() + later->load(); }});
    REQUIRE(app_->window() != nullptr);
    // As it was asked for, as long as nobody chose another in the settings.
    REQUIRE(QTest::qWaitFor([this] {
        return app_->window()->color() ==
               QColor(std::string_view(look_.theme) == "day" ? 0xF3EFE6 : 0x14181B);
    }));
    name_ = QStringLiteral("%1x%2-%3%4")
                .arg(look_.width)
                .arg(look_.height)
                .arg(QLatin1String(look_.theme), withCamera ? QString() : QStringLiteral("-later"));
    takeUp();
}

void Phone::takeUp() {
    window_ = app_->window();
    // The hand knows what comes, and touches it without looking at it first.
    ui::settleFor(*qmlEngine(window_), 0);
    hand_ = std::make_unique<Hand>(*window_, name_);
}

void Phone::begunAnew() {
    constexpr int patience = 60'000;
    REQUIRE(QTest::qWaitFor([this] { return window_.isNull() && app_->window() != nullptr; }, patience));
    takeUp();
}

void Phone::close() {
    app_->window()->close();
    hand_.reset();
    app_.reset();
}

} // namespace undercowl::e2e
