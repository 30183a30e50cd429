// What core/units says of numbers, units and dates.
#include "qml/language/sentences.h"

#include <QtGlobal>

#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array all{
    QT_TRANSLATE_NOOP(
        "Core", "\"%1\" is not a date as it is read here: write year, month and day, such as 2026-11-25"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is not a day of the calendar"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is out of range: the year must be from 1885 to 2200"),
    QT_TRANSLATE_NOOP(
        "Core", "\"%1\" is not a number: write digits with one decimal point or comma, such as 2.4 or 1/2"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" divides by zero"),
    QT_TRANSLATE_NOOP(
        "Core", "\"%1\" could be a fraction or two values: write one number, a fraction above one as 1 1/4"),
    QT_TRANSLATE_NOOP(
        "Core", "\"%1\" has more than one separator: write the number without grouping, such as 1234.5"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" could be %2 or %3: write %4, or %5 with a point"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is ambiguous: %2"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is not a unit that is known here: %2 is wanted here, in %3"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is a unit of %2: %3 is wanted here, in %4"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" has a gap inside: write the number without grouping, such as 1234.5"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" is beyond any number that is measured"),
    QT_TRANSLATE_NOOP("Core", "\"%1\" has no unit: %2 is wanted here, in %3"),
    QT_TRANSLATE_NOOP("Core", "%1 is a unit of %2, %3 of %4: what fits is %5"),
    QT_TRANSLATE_NOOP("Core", "write US gal or imp gal: they differ by a fifth"),
    QT_TRANSLATE_NOOP("Core", "write US pt or imp pt: they differ by a fifth"),
    QT_TRANSLATE_NOOP("Core", "write US fl oz or imp fl oz: they are not the same"),
    QT_TRANSLATE_NOOP("Core", "write mpg(US) or mpg(imp): they differ by a fifth"),
    QT_TRANSLATE_NOOP("Core", "write mohm for milliohm or Mohm for megaohm"),
};

} // namespace

Sentences unitSentences() {
    return all;
}

} // namespace undercowl::ui
