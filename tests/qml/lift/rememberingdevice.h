// A screen and tones that only remember what was wanted of them.
#pragma once

#include "platform/screen/screen.h"
#include "platform/signals/signaller.h"

#include <QList>

namespace undercowl::ui {

class RememberingScreen : public platform::Screen {
public:
    using Screen::Screen;

protected:
    void keep(bool /*awake*/) override {}
};

class RememberingSignaller : public platform::Signaller {
public:
    using Signaller::Signaller;

    void give(Signal signal) override { given.append(signal); }

    QList<Signal> given;
};

} // namespace undercowl::ui
