// The screen of a Linux session: asks whoever puts it out to wait, over the session's message bus.
#pragma once

#include "platform/screen/screen.h"

#include <QDBusConnection>
#include <QString>

#include <optional>

namespace undercowl::platform {

// Two open interfaces offer it, both written here from memory: org.freedesktop.ScreenSaver (the idle
// inhibition specification of freedesktop.org), and where nobody answers to that,
// org.freedesktop.portal.Inhibit (the desktop portals, for programs in a sandbox). Both let go by themselves
// when this program ends.
class SystemScreen : public Screen {
    Q_OBJECT

public:
    explicit SystemScreen(QObject* parent = nullptr);
    ~SystemScreen() override;

protected:
    void keep(bool awake) override;

private:
    void askSaver();
    void askPortal(const QString& refusal);
    void release();

    QDBusConnection bus_;
    std::optional<unsigned> cookie_; // of the screen saver
    QString request_;                // of the portal; an object path
    int asked_{}; // counts the calls of keep(): what an earlier one was answered is given back
};

} // namespace undercowl::platform
