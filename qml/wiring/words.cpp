#include "qml/wiring/words.h"

#include "qml/style/insulations.h"

#include <QCoreApplication>
#include <QLocale>

namespace undercowl::ui {

namespace {

struct Wiring {
    Q_DECLARE_TR_FUNCTIONS(Wiring)
};

} // namespace

QString words(const colour::WireColour& wire) {
    return Insulations().words(baseCode(wire), tracerCode(wire));
}

QString baseCode(const colour::WireColour& wire) {
    return text(colour::code(wire.base));
}

QString tracerCode(const colour::WireColour& wire) {
    return wire.tracer ? text(colour::code(*wire.tracer)) : QString();
}

std::optional<colour::WireColour> wireColour(const QString& base, const QString& tracer) {
    const auto known = colour::insulationFromCode(base.toStdString());
    if (!known) {
        return std::nullopt;
    }
    return colour::WireColour{*known, colour::insulationFromCode(tracer.toStdString())};
}

QString words(sight::Doubt doubt) {
    using enum sight::Doubt;
    switch (doubt) {
    case Glare: return Wiring::tr("glare covers it: tilt the phone");
    case Shadow: return Wiring::tr("too dark to tell: bring a light");
    case TooThin: return Wiring::tr("too small in the picture: go closer");
    case NoWhiteInView: return Wiring::tr("the light is not known: lay white paper beside it");
    case Hidden: return Wiring::tr("too little of it is free: move what lies across");
    case CloseColours: return Wiring::tr("two colours are about as likely");
    case NotProven: return Wiring::tr("likely, but not certain");
    case BesideWire: return Wiring::tr("tapped beside it: see that the outlined wire is meant");
    case NoWireFound: return Wiring::tr("nothing like a wire here: tap on the wire");
    case BurntOut: return Wiring::tr("too bright to tell: less light, or no flash");
    case UnevenLight: return Wiring::tr("two lights mix on it: shade one of them");
    }
    return {};
}

QString sureness(std::span<const sight::Candidate> candidates, bool sure) {
    if (candidates.empty()) {
        return Wiring::tr("no wire found");
    }
    if (sure) {
        return Wiring::tr("sure");
    }
    if (candidates.size() == 1) {
        return Wiring::tr("not sure: %1?").arg(words(candidates[0].wire));
    }
    return Wiring::tr("not sure: %1 or %2").arg(words(candidates[0].wire), words(candidates[1].wire));
}

QString words(wiring::GatheringKind kind) {
    using enum wiring::GatheringKind;
    switch (kind) {
    case Connector: return Wiring::tr("connector");
    case LooseTerminals: return Wiring::tr("loose terminals");
    case Splice: return Wiring::tr("splice");
    case SharedEarth: return Wiring::tr("shared earth");
    }
    return {};
}

QString emptyWords() {
    return Wiring::tr("empty, no wire");
}

QString words(wiring::Side side) {
    return side == wiring::Side::WireSide ? Wiring::tr("wire side") : Wiring::tr("mating face");
}

QString words(wiring::Half half) {
    return half == wiring::Half::Loom ? Wiring::tr("loom half") : Wiring::tr("unit half");
}

QString words(wiring::Answer answer) {
    using enum wiring::Answer;
    switch (answer) {
    case AsFound: return Wiring::tr("as found");
    case AsItShouldBe: return Wiring::tr("as it should be");
    case AsRefitted: return Wiring::tr("as refitted");
    }
    return {};
}

QString words(wiring::TerminalKind kind) {
    using enum wiring::TerminalKind;
    switch (kind) {
    case Unknown: return Wiring::tr("not known");
    case Blade: return Wiring::tr("blade");
    case Receptacle: return Wiring::tr("receptacle");
    case Bullet: return Wiring::tr("bullet");
    case BulletSocket: return Wiring::tr("bullet socket");
    case Ring: return Wiring::tr("ring");
    case Fork: return Wiring::tr("fork");
    case Pin: return Wiring::tr("pin");
    case Socket: return Wiring::tr("socket");
    case Splice: return Wiring::tr("splice");
    case Bare: return Wiring::tr("bare");
    }
    return {};
}

QString words(const wiring::Terminal& terminal) {
    if (terminal.kind == wiring::TerminalKind::Unknown) {
        return {};
    }
    const QString kind = words(terminal.kind);
    return terminal.sizeMm ? kind + QChar(QChar::Nbsp) + QLocale().toString(*terminal.sizeMm, 'g', 4) : kind;
}

QString words(const wiring::PlaceKey& key) {
    return key.slot == 1 ? Wiring::tr("place %1").arg(key.number)
                         : Wiring::tr("place %1, second wire").arg(key.number);
}

QString details(const wiring::Wire& wire) {
    QStringList known;
    if (const QString terminal = words(wire.terminal); !terminal.isEmpty()) {
        known += terminal;
    }
    if (wire.sizeMm2) {
        known += QLocale().toString(*wire.sizeMm2, 'g', 4) + QStringLiteral("\u00a0mm²");
    }
    if (!wire.function.empty()) {
        known += text(wire.function);
    }
    if (!wire.din.empty()) {
        known += Wiring::tr("DIN %1").arg(text(wire.din));
    }
    return known.join(QStringLiteral(", "));
}

} // namespace undercowl::ui
