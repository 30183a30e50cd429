#include "qml/talk/saidwords.h"

#include "qml/wiring/words.h"

#include <QCoreApplication>

namespace undercowl::ui {

namespace {

struct Said {
    Q_DECLARE_TR_FUNCTIONS(Said)
};

struct Show {
    QString operator()(talk::Command command) const { return text(talk::name(command)); }
    QString operator()(const talk::SpokenReading& reading) const {
        return Said::tr("%1 %2").arg(words(reading.what), text(reading.value.digits) + QChar(QChar::Nbsp) +
                                                              text(reading.value.unit));
    }
    QString operator()(talk::SpokenBag bag) const { return Said::tr("bag %1").arg(bag.number); }
    QString operator()(const talk::SpokenWire& said) const {
        const QString more = details(said.wire);
        return more.isEmpty() ? words(said.wire.colour)
                              : words(said.wire.colour) + QStringLiteral(", ") + more;
    }
};

} // namespace

QString words(talk::Measured what) {
    using enum talk::Measured;
    switch (what) {
    case Torque: return Said::tr("torque");
    case FrontTyre: return Said::tr("front tyre");
    case RearTyre: return Said::tr("rear tyre");
    case Battery: return Said::tr("battery");
    case Tread: return Said::tr("tread");
    }
    return {};
}

QString words(const talk::Intent& intent) {
    return std::visit(Show{}, intent);
}

QString words(platform::NotHeard why) {
    using enum platform::NotHeard;
    switch (why) {
    case Silence: return Said::tr("Nothing was heard. Hold, say it, then let go.");
    case Unsure: return Said::tr("Not sure what that was. Say it again.");
    case Unknown: return Said::tr("That is nothing that can be said here. Say it again.");
    case Implausible: return Said::tr("That number is not believed. Say it again.");
    }
    return {};
}

} // namespace undercowl::ui
