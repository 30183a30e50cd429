#include "qml/measure/heardreading.h"

#include "qml/measure/measureview.h"
#include "qml/shell/words.h"
#include "qml/talk/saidwords.h"

#include <QCoreApplication>

#include <algorithm>

namespace undercowl::ui {

namespace {

using talk::Measured;

struct HeardReading {
    Q_DECLARE_TR_FUNCTIONS(HeardReading)
};

// As the form names it when nothing proposes it.
QString nameFor(Measured what) {
    switch (what) {
    case Measured::Torque: return HeardReading::tr("torque");
    case Measured::FrontTyre: return HeardReading::tr("front tyre, pressure");
    case Measured::RearTyre: return HeardReading::tr("rear tyre, pressure");
    case Measured::Battery: return HeardReading::tr("battery, voltage");
    case Measured::Tread: return HeardReading::tr("tread, depth");
    }
    return {};
}

// Whether a name that was typed or proposed is of what was said. A torque has none of its own: it is of
// whatever torque is being measured.
bool names(const QString& typed, int typedUnit, int heardUnit, Measured what) {
    if (typed.isEmpty() || measuredUnit(typedUnit).dimension() != measuredUnit(heardUnit).dimension())
        return false;
    if (what == Measured::Torque)
        return true;
    return typed.contains(words(what), Qt::CaseInsensitive) ||
           typed.contains(text(talk::name(what)), Qt::CaseInsensitive);
}

} // namespace

QVariantMap withHeard(const QVariantMap& values, int unit, const std::vector<Proposal>& proposed,
                      const talk::SpokenReading& heard) {
    const int heardUnit = measuredUnitIndex(heard.value.unit);
    const auto unitOf = [&](const QVariantMap& some) {
        return some.value(QStringLiteral("unit"), unit).toInt();
    };
    const auto fits = [&](const QVariantMap& some) {
        return names(some.value(QStringLiteral("what")).toString(), unitOf(some), heardUnit, heard.what);
    };
    QVariantMap all = values;
    const bool limited = all.contains(QStringLiteral("low")) || all.contains(QStringLiteral("high"));
    if (fits(values)) {
        // Limits that were typed in the other unit keep it.
        if (limited && !all.contains(QStringLiteral("limitUnit")))
            all[QStringLiteral("limitUnit")] = unitOf(values);
    } else {
        const auto fitting = [&](const Proposal& one) { return fits(one.values); };
        const auto proposal = std::ranges::find_if(proposed, fitting);
        // Which of several torques is meant was not said, and the limits of another one must not judge it.
        const bool one = proposal != proposed.end() &&
                         (heard.what != Measured::Torque || std::ranges::count_if(proposed, fitting) == 1);
        all = one ? proposal->values : QVariantMap{{QStringLiteral("what"), nameFor(heard.what)}};
        if (!all.contains(QStringLiteral("limitUnit")))
            all[QStringLiteral("limitUnit")] = unitOf(all);
        if (!all.contains(QStringLiteral("trust")))
            all[QStringLiteral("trust")] = -1;
    }
    all[QStringLiteral("unit")] = heardUnit;
    all[QStringLiteral("value")] = text(heard.value.digits);
    return all;
}

void MeasureView::hear(const QString& what, const QString& digits, const QString& unit) {
    const auto* known =
        std::ranges::find(talk::allMeasured, what, [](Measured one) { return text(talk::name(one)); });
    if (draft_ == nullptr || known == talk::allMeasured.end() || measuredUnitIndex(utf8(unit)) < 0) {
        setErrors({{QStringLiteral("value"), tr("That cannot be entered here: type it.")}});
        return;
    }
    setErrors({});
    beforeHeard_.push_back(draft_->values());
    draft_->replace(
        withHeard(draft_->values(), unitIndex(), proposed_, {*known, {utf8(digits), utf8(unit)}}));
}

bool MeasureView::unhear() {
    if (draft_ == nullptr || beforeHeard_.empty())
        return false;
    const QVariantMap before = std::move(beforeHeard_.back());
    beforeHeard_.pop_back(); // first, for the draft tells everybody
    draft_->replace(before);
    return true;
}

QString MeasureView::spokenVerdict() const {
    if (verdict_ == u"within")
        return QStringLiteral("within");
    if (verdict_ == u"outside")
        return QStringLiteral("outside");
    return verdict_.isEmpty() ? QString() : QStringLiteral("too close to call");
}

} // namespace undercowl::ui
