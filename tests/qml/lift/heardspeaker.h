// A voice that only remembers what it was to say.
#pragma once

#include "platform/speaker/speaker.h"

#include <QStringList>

namespace undercowl::ui {

class HeardSpeaker : public platform::Speaker {
public:
    using Speaker::Speaker;

    void say(const QString& sentence, double slowness) override {
        said.append(sentence);
        slownesses.append(slowness);
        tell(true);
    }
    void stop() override { tell(false); }
    void finish() { tell(false); } // it has said it

    QStringList said;
    QList<double> slownesses;
};

} // namespace undercowl::ui
