// What core/verdict says of readings, limits and instruments.
#include "qml/language/sentences.h"

#include <QtGlobal>

#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array all{
    QT_TRANSLATE_NOOP("Core", "no limit is known: the value is kept without a verdict"),
    QT_TRANSLATE_NOOP("Core", "the limit is in %1, the value in %2: what fits is %3"),
    QT_TRANSLATE_NOOP("Core", "no instrument or uncertainty is known: the value is kept without a verdict"),
    QT_TRANSLATE_NOOP("Core", "the uncertainty is in %1: what fits is %2"),
    QT_TRANSLATE_NOOP("Core", "the uncertainty must be above zero: no instrument is without error"),
    QT_TRANSLATE_NOOP("Core", "the lower limit is above the upper one"),
    QT_TRANSLATE_NOOP("Core", "a torque wrench reads torque, not %1"),
    QT_TRANSLATE_NOOP("Core", "class %1 does not exist: type I has A to E, type II A to G"),
    QT_TRANSLATE_NOOP("Core", "(from memory: look at the certificate)"),
    QT_TRANSLATE_NOOP("Core", "%1 (from memory: look at the certificate)"),
    QT_TRANSLATE_NOOP("Core",
                      "tested by ISO 6789: worked %1 times at its largest torque, then read at %2 % of it"),
    QT_TRANSLATE_NOOP("Core", "name: give the instrument one, as the shop calls it"),
    QT_TRANSLATE_NOOP("Core", "range: the upper end must be above the lower one"),
    QT_TRANSLATE_NOOP("Core", "resolution: give one division, or the last digit of the display"),
    QT_TRANSLATE_NOOP("Core", "limit of error: its parts must not be negative"),
    QT_TRANSLATE_NOOP("Core", "limit of error: give it from the maker's sheet; it is never zero"),
    QT_TRANSLATE_NOOP("Core", "%1 reads %2: %3"),
    QT_TRANSLATE_NOOP("Core", "%1 reads from %2 to %3, not %4: use another instrument"),
    QT_TRANSLATE_NOOP("Core", "limit of error, %1 % of the reading (%2)"),
    QT_TRANSLATE_NOOP("Core", "limit of error, %1 % of full scale (%2)"),
    QT_TRANSLATE_NOOP("Core", "limit of error, %1 digits (%2)"),
    QT_TRANSLATE_NOOP("Core", "limit of error (%1)"),
    QT_TRANSLATE_NOOP("Core", "resolution, half a division"),
    QT_TRANSLATE_NOOP("Core", "feel of the hand"),
    QT_TRANSLATE_NOOP("Core", "%1: calibration was due on %2; its limit of error can no longer be relied on"),
    QT_TRANSLATE_NOOP("Core", "%1: no calibration is recorded"),
    QT_TRANSLATE_NOOP("Core", "readings of different kinds: %1"),
    QT_TRANSLATE_NOOP("Core", "mean of %1 readings: %2, spread (standard deviation) %3"),
    QT_TRANSLATE_NOOP("Core", "the limit is worked out here: the machine's manual wins"),
    QT_TRANSLATE_NOOP("Core", "no reading was given"),
    QT_TRANSLATE_NOOP("Core", "uncertainty as given, k = 2"),
    QT_TRANSLATE_NOOP("Core", "ordinary instrument, from memory: replace by the maker's sheet"),
    QT_TRANSLATE_NOOP("Core", "spread of %1 readings over root %2"),
    QT_TRANSLATE_NOOP("Core", "spread of %1 readings over root %2, widened for few readings"),
    QT_TRANSLATE_NOOP("Core", "a spread needs two readings or more; given: %1"),
    QT_TRANSLATE_NOOP("Core", "every reading must be a number"),
    QT_TRANSLATE_NOOP("Core", "largest reading: %1"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is no date: write year, month and day such as 2026-11-25"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is no type and class of ISO 6789-1: write I A to I E for one that "
                              "shows the torque, II A to II G for one that is set"),
    QT_TRANSLATE_NOOP("Core", "must not be negative, given was \"%1\""),
    QT_TRANSLATE_NOOP("Core", "as the shop entered it"),
    QT_TRANSLATE_NOOP("Core", "is for torque wrenches alone: leave it empty"),
    QT_TRANSLATE_NOOP("Core", "must be after the day of calibration"),
    QT_TRANSLATE_NOOP("Core", "%1 % of the reading"),
    QT_TRANSLATE_NOOP("Core", "%1 % of full scale"),
    QT_TRANSLATE_NOOP("Core", "%1 digits"),
    QT_TRANSLATE_NOOP("Core", "%1 + %2"),
    QT_TRANSLATE_NOOP("Core", "%1; %2"),
    QT_TRANSLATE_NOOP("Core", "more than 99.9 %"),
    QT_TRANSLATE_NOOP("Core", "less than 0.1 %"),
    QT_TRANSLATE_NOOP("Core", "a better instrument: the limits are closer together than twice the "
                              "uncertainty, so that no value could be accepted with this one"),
    QT_TRANSLATE_NOOP(
        "Core",
        "the value lies on the limit: no instrument will settle it; adjust or renew, then measure again"),
    QT_TRANSLATE_NOOP("Core", "a better instrument: an expanded uncertainty below %1 would settle it"),
    QT_TRANSLATE_NOOP("Core", "more readings: about %1 in all, if their mean stays"),
    QT_TRANSLATE_NOOP("Core", "measured %1, expanded uncertainty %2 (k = 2), standard %3"),
    QT_TRANSLATE_NOOP("Core", "lower limit %1 moved inward by U (guard band, ISO 14253-1): accept from %2"),
    QT_TRANSLATE_NOOP("Core", "upper limit %1 moved inward by U (guard band, ISO 14253-1): accept up to %2"),
    QT_TRANSLATE_NOOP("Core", "lower limit %1 as they stand (simple acceptance): accept from %2"),
    QT_TRANSLATE_NOOP("Core", "upper limit %1 as they stand (simple acceptance): accept up to %2"),
    QT_TRANSLATE_NOOP("Core", "probability that the true value conforms (JCGM 106): %1"),
    QT_TRANSLATE_NOOP("Core", "verdict: %1"),
    QT_TRANSLATE_NOOP("Core", "manual, %1"),
    QT_TRANSLATE_NOOP("Core", "shop record, %1"),
    QT_TRANSLATE_NOOP("Core", "standard, %1"),
    QT_TRANSLATE_NOOP("Core", "worked out here, %1"),
    QT_TRANSLATE_NOOP("Core", "%1 in the step, \u00B1 %2 % as of a wrench by ISO 6789-1"),
    QT_TRANSLATE_NOOP("Core", "one of the readings is outside: %1"),
    QT_TRANSLATE_NOOP("Core", "no instrument was named: 10 % of the reading, k = 2"),
    QT_TRANSLATE_NOOP("Core", "the instrument is not known: name it, or measure again with a known one"),
    QT_TRANSLATE_NOOP("Core", "combined standard uncertainty u = root of the sum of squares = %1"),
    QT_TRANSLATE_NOOP("Core", "expanded uncertainty U = 2 u = %1 (k = 2, about 95 %)"),
    QT_TRANSLATE_NOOP("Core", "%1: %2, rectangular: divided by %3 gives u = %4"),
    QT_TRANSLATE_NOOP("Core", "%1: %2, triangular: divided by %3 gives u = %4"),
    QT_TRANSLATE_NOOP("Core", "%1: %2, normal, k = 2: divided by %3 gives u = %4"),
    QT_TRANSLATE_NOOP("Core", "%1: %2, standard"),
};

} // namespace

Sentences verdictSentences() {
    return all;
}

} // namespace undercowl::ui
