// View models and filled forms on a session, as a page makes them.
#pragma once

#include "liftshop.h"

#include "qml/shell/formdraft.h"

#include <QVariantMap>

#include <memory>

namespace undercowl::ui {

template<typename View>
[[nodiscard]] std::unique_ptr<View> on(ShopSession& session) {
    auto view = std::make_unique<View>();
    view->setSession(&session);
    view->componentComplete();
    return view;
}

[[nodiscard]] inline std::unique_ptr<FormDraft> form(ShopSession& session, const QVariantMap& values) {
    auto draft = std::make_unique<FormDraft>();
    draft->setProperty("session", QVariant::fromValue(&session));
    draft->setProperty("title", QStringLiteral("form"));
    draft->setForm(QStringLiteral("test"));
    draft->componentComplete();
    for (auto value = values.begin(); value != values.end(); ++value)
        draft->set(value.key(), value.value());
    return draft;
}

} // namespace undercowl::ui
