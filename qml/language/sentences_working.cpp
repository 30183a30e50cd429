// How the calculations work out what they answer.
#include "qml/language/sentences.h"

#include <QtGlobal>

#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array all{
    QT_TRANSLATE_NOOP("Core", "%1: %2"),
    QT_TRANSLATE_NOOP("Core", "%1 = %2; factor from %3"),
    QT_TRANSLATE_NOOP("Core", "%1: lamp centre %2 850 mm: %3 to %4 % down (%5 to %6 deg)"),
    QT_TRANSLATE_NOOP("Core", "above"),
    QT_TRANSLATE_NOOP("Core", "up to"),
    QT_TRANSLATE_NOOP("Core", "specific gravity at 26.7 degC: %1 + 0.004 x (%2 F - 80)/10 = %3"),
    QT_TRANSLATE_NOOP("Core", "K = %1 as given"),
    QT_TRANSLATE_NOOP("Core", "preload F = T/(K d) = %1 N.m/(%2 x %3 mm) = %4 N"),
    QT_TRANSLATE_NOOP("Core", "stress area As = pi/4 (d - 0.938194 P)^2 = %1 mm2, %2 mm2 in the table"),
    QT_TRANSLATE_NOOP("Core", "preload F = %1 x %2 MPa x %3 mm2 = %4 N"),
    QT_TRANSLATE_NOOP("Core", "torque T = K d F = %1 x %2 mm x %3 N = %4 N.m"),
    QT_TRANSLATE_NOOP("Core", "swept volume = pi/4 x (%1 mm)^2 x %2 mm = %3 cm3"),
    QT_TRANSLATE_NOOP("Core", "ratio = (%1 + %2)/%3 = %4"),
    QT_TRANSLATE_NOOP("Core", "line = pi/4 x (%1 mm)^2 x %2 m = %3 mL"),
    QT_TRANSLATE_NOOP("Core", "system = %1 + %2 + %3 = %4 mL"),
    QT_TRANSLATE_NOOP("Core", "speed = %1 rpm/%2 x %3 m x 60/1000 = %4 km/h"),
    QT_TRANSLATE_NOOP("Core", "mean piston speed = S n/30000 = %1 m/s"),
    QT_TRANSLATE_NOOP("Core", "drop = per cent/100 x distance = %1 to %2 mm"),
    QT_TRANSLATE_NOOP("Core", "jet = %1 x ratio^%2 = %3"),
    QT_TRANSLATE_NOOP("Core", "spare = %1 W - %2 W = %3 W"),
    QT_TRANSLATE_NOOP("Core", "second reading at the first temperature: (%1 + %2) x %3 K/%4 K - %5 = %6 kPa"),
    QT_TRANSLATE_NOOP("Core", "lost: %1 kPa in %2 days = %3 kPa a day"),
    QT_TRANSLATE_NOOP("Core", "%1 + %2 = %3; from %4 that is %5 days"),
    QT_TRANSLATE_NOOP("Core", "%1 + %2 = %3 km; now %4 km: %5 km left"),
    QT_TRANSLATE_NOOP("Core", "oil = finished mix/(ratio + 1) = %1 L/(%2 + 1) = %3 mL"),
    QT_TRANSLATE_NOOP("Core", "oil = fuel/ratio = %1 L/%2 = %3 mL"),
    QT_TRANSLATE_NOOP("Core", "at 20 degC: %1 ohm/(1 + 0.00393 x (%2 - 20)) = %3 ohm"),
    QT_TRANSLATE_NOOP("Core", "new shim = %1 + %2 - %3 = %4 mm"),
    QT_TRANSLATE_NOOP("Core", "error = (shown - true)/true = (%1 - %2)/%3 = %4 %"),
    QT_TRANSLATE_NOOP("Core", "charge = %1 A x %2 h = %3 Ah of %4 Ah: %5 %"),
    QT_TRANSLATE_NOOP("Core", "arc = pi D a/360 = %1 mm; chord = D sin(a/2) = %2 mm"),
    QT_TRANSLATE_NOOP("Core", "setting = torque x L/(L + E cos a) = %1 N.m x %2"),
    QT_TRANSLATE_NOOP("Core", "diameter = %1 in x 25.4 + 2 x %2 mm x %3 = %4 mm"),
    QT_TRANSLATE_NOOP("Core", "absolute before: %1 + %2 = %3 kPa"),
    QT_TRANSLATE_NOOP("Core", "absolute after: x (%1 K / %2 K) = %3 kPa"),
    QT_TRANSLATE_NOOP("Core", "gauge after: less ambient %1 kPa = %2 kPa"),
    QT_TRANSLATE_NOOP("Core", "sum of value x weight = %1, mod 11 = %2: check digit %3, position 9 shows %4"),
    QT_TRANSLATE_NOOP("Core", "resistance = %1 V/%2 A = %3 ohm"),
    QT_TRANSLATE_NOOP("Core", "current = %1 W/%2 V = %3 A"),
    QT_TRANSLATE_NOOP("Core", "drop = I R L = %1 A x %2 mohm/m x %3 m = %4 V"),
};

} // namespace

Sentences workingSentences() {
    return all;
}

} // namespace undercowl::ui
