#include "qml/style/insulations.h"

#include "core/colour/insulation.h"

#include <optional>

namespace undercowl::ui {
namespace {

std::optional<colour::Insulation> known(const QString& code) {
    return colour::insulationFromCode(code.trimmed().toStdString());
}

} // namespace

Insulations::Insulations(QObject* parent) : QObject(parent) {}

QStringList Insulations::codes() const {
    QStringList list;
    for (const colour::Insulation insulation : colour::allInsulations) {
        const auto code = colour::code(insulation);
        list.append(QString::fromLatin1(code.data(), static_cast<qsizetype>(code.size())));
    }
    return list;
}

QString Insulations::word(const QString& code) const {
    const auto insulation = known(code);
    if (!insulation)
        return {};
    switch (*insulation) {
    case colour::Insulation::BK: return tr("black");
    case colour::Insulation::BN: return tr("brown");
    case colour::Insulation::RD: return tr("red");
    case colour::Insulation::OG: return tr("orange");
    case colour::Insulation::YE: return tr("yellow");
    case colour::Insulation::GN: return tr("green");
    case colour::Insulation::BU: return tr("blue");
    case colour::Insulation::VT: return tr("violet");
    case colour::Insulation::GY: return tr("grey");
    case colour::Insulation::WH: return tr("white");
    case colour::Insulation::PK: return tr("pink");
    case colour::Insulation::TQ: return tr("turquoise");
    case colour::Insulation::LBU: return tr("light blue");
    case colour::Insulation::LGN: return tr("light green");
    }
    return {};
}

QString Insulations::words(const QString& base, const QString& tracer) const {
    const QString first = word(base);
    if (first.isEmpty())
        return tr("colour not known");
    const QString second = word(tracer);
    return second.isEmpty() ? first : tr("%1, %2 tracer", "base colour, tracer colour").arg(first, second);
}

QStringList Insulations::tracersFor(const QString& base) const {
    QStringList list = codes();
    list.removeAll(base.trimmed().toUpper());
    list.prepend(QString());
    return list;
}

QString Insulations::codeText(const QString& base, const QString& tracer) const {
    if (!known(base))
        return QStringLiteral("?");
    const QString first = base.trimmed().toUpper();
    return known(tracer) ? first + QLatin1Char('/') + tracer.trimmed().toUpper() : first;
}

} // namespace undercowl::ui
