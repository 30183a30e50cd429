#include "qml/shell/jobscreen.h"

namespace undercowl::ui {

void JobScreen::setSession(ShopSession* session) {
    if (session_ != nullptr || session == nullptr)
        return;
    session_ = session;
    connect(session_, &ShopSession::jobChanged, this, &JobScreen::showSnapshot);
    connect(session_, &ShopSession::languageChanged, this, &JobScreen::showSnapshot);
}

void JobScreen::componentComplete() {
    showSnapshot();
}

Id JobScreen::jobId() const {
    const auto now = snapshot();
    return now ? now->job.id : Id{};
}

void JobScreen::setErrors(const QVariantMap& errors) {
    if (errors_ == errors)
        return;
    errors_ = errors;
    emit errorsChanged();
}

void JobScreen::showSnapshot() {
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

} // namespace undercowl::ui
