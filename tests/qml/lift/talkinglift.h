// A page at the lift that hears, and says things back, on a shop of its own.
#pragma once

#include "appwindow.h"

#include <memory>

namespace undercowl::ui {

struct TalkingLift {
    explicit TalkingLift(const char* page, const QVariantMap& properties = {}) {
        shop.answer();
        anew();
        app->show(page, properties);
    }

    // With what the shop holds now.
    void anew() {
        app.reset();
        session = shop.session();
        session->set(QStringLiteral("voice"), QStringLiteral("on"));
        app = std::make_unique<AppWindow>(*session);
    }

    // Held, spoken, let go.
    void hear(const char* words) const {
        if (!app->touch(QStringLiteral("Hold and speak")))
            qFatal("no button to hold");
        app->listener().say(words);
    }
    [[nodiscard]] QString said() const {
        return app->speaker().said.isEmpty() ? QString() : app->speaker().said.back();
    }
    [[nodiscard]] bool shows(const QString& words) const { return app->label(words) != nullptr; }

    LiftShop shop;
    std::unique_ptr<ShopSession> session;
    std::unique_ptr<AppWindow> app;
};

} // namespace undercowl::ui
