// What the calculations answer and warn of.
#include "qml/language/sentences.h"

#include <QtGlobal>

#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array all{
    QT_TRANSLATE_NOOP("Core", "battery"),
    QT_TRANSLATE_NOOP("Core", "idle"),
    QT_TRANSLATE_NOOP("Core", "rest"),
    QT_TRANSLATE_NOOP("Core", "revs"),
    QT_TRANSLATE_NOOP("Core", "first"),
    QT_TRANSLATE_NOOP("Core", "second, same temperature"),
    QT_TRANSLATE_NOOP("Core", "(reading + ambient)/ambient stays the same: %1 kPa x 101.325/%2 = %3 kPa"),
    QT_TRANSLATE_NOOP("Core", "Pa absolute"),
    QT_TRANSLATE_NOOP("Core", "pressure as given: %1 Pa absolute"),
    QT_TRANSLATE_NOOP("Core", "standard pressure at %1 m: %2 Pa"),
    QT_TRANSLATE_NOOP("Core",
                      "outside 15 to 27 degC or 600 to 1100 hPa the CIPM-2007 formula is extrapolated"),
    QT_TRANSLATE_NOOP("Core", "hPa absolute"),
    QT_TRANSLATE_NOOP("Core", "nothing: ready; a load test proves it"),
    QT_TRANSLATE_NOOP(
        "Core", "charge at no more than a tenth of its ampere hours, rest an hour or two, measure again"),
    QT_TRANSLATE_NOOP("Core", "charge slowly and check every cell with the hydrometer: cells that differ by "
                              "more than 0.05 are worn out (common practice, no source)"),
    QT_TRANSLATE_NOOP("Core", "charge slowly, rest an hour or two, measure again; if it stays below half "
                              "charge, renew it (common practice, no source)"),
    QT_TRANSLATE_NOOP("Core", "cannot be read in a sealed AGM battery"),
    QT_TRANSLATE_NOOP(
        "Core", "so low a voltage means a dead cell or a deep discharge, or the nominal voltage is wrong"),
    QT_TRANSLATE_NOOP("Core", "between the points of the %1 table: %2 %"),
    QT_TRANSLATE_NOOP("Core", "no charge can be told yet: let it rest an hour or two, measure again"),
    QT_TRANSLATE_NOOP("Core", "friction in place of nut_factor, or without it"),
    QT_TRANSLATE_NOOP("Core", "proof load %1 N: share %2"),
    QT_TRANSLATE_NOOP("Core", "held to the limit given: %1 N.m"),
    QT_TRANSLATE_NOOP("Core", "thread in aluminium: the limit given rules, whatever the bolt could bear"),
    QT_TRANSLATE_NOOP("Core", "colourless to amber"),
    QT_TRANSLATE_NOOP(
        "Core",
        "glycol fluids of DOT 3, DOT 4 and DOT 5.1 mix; the result is no better than the lower grade"),
    QT_TRANSLATE_NOOP("Core",
                      "not known what is in: do not mix; drain, clean and renew all rubber if in doubt"),
    QT_TRANSLATE_NOOP("Core",
                      "%1 and %2 are different families: they attack each other's rubber and do not mix"),
    QT_TRANSLATE_NOOP("Core", "the same kind of fluid"),
    QT_TRANSLATE_NOOP("Core", "change of family: strip, clean every passage with the right cleaner and renew "
                              "all rubber, then fill with the new fluid alone"),
    QT_TRANSLATE_NOOP("Core", "least boiling points of %1: dry %2, wet %3 degC"),
    QT_TRANSLATE_NOOP("Core", "the lower grade"),
    QT_TRANSLATE_NOOP("Core",
                      "mineral oil has no boiling point in this standard: the maker's sheet gives it"),
    QT_TRANSLATE_NOOP("Core", "fuse and connectors between regulator and battery"),
    QT_TRANSLATE_NOOP("Core", "earth of regulator and engine"),
    QT_TRANSLATE_NOOP("Core", "brushes and commutator"),
    QT_TRANSLATE_NOOP("Core", "cut-out or regulator contacts"),
    QT_TRANSLATE_NOOP("Core", "field winding"),
    QT_TRANSLATE_NOOP("Core", "connector between alternator and regulator (heat, green copper)"),
    QT_TRANSLATE_NOOP("Core", "alternator winding open or to earth: measure its AC voltage and resistance"),
    QT_TRANSLATE_NOOP("Core", "regulator or rectifier"),
    QT_TRANSLATE_NOOP("Core", "voltage drop in leads and earth: measure it with voltage-drop"),
    QT_TRANSLATE_NOOP("Core", "battery sulphated or with a bad cell: charge it and repeat"),
    QT_TRANSLATE_NOOP("Core", "one phase missing: compare the three AC voltages"),
    QT_TRANSLATE_NOOP("Core", "worn brushes, slipping belt or regulator out of adjustment"),
    QT_TRANSLATE_NOOP("Core", "alternator winding partly shorted, magnets weak"),
    QT_TRANSLATE_NOOP("Core", "as given"),
    QT_TRANSLATE_NOOP("Core", "common practice, no source"),
    QT_TRANSLATE_NOOP("Core", "rest %1 V, idle %2 V, revs %3 V: rise %4 V"),
    QT_TRANSLATE_NOOP("Core",
                      "battery: it rests as low as with a dead cell; charge and test it, then measure again"),
    QT_TRANSLATE_NOOP("Core", "it charges, but the battery was low at rest: charge and test it"),
    QT_TRANSLATE_NOOP("Core", "battery: it was low at rest, and an empty one holds the voltage down; charge "
                              "and test it, then measure again"),
    QT_TRANSLATE_NOOP("Core", "regulator, or its earth or sensing lead"),
    QT_TRANSLATE_NOOP("Core", "battery with an open cell or loose terminal"),
    QT_TRANSLATE_NOOP("Core", "regulator contacts stuck"),
    QT_TRANSLATE_NOOP("Core", "overcharging boils the battery and blows bulbs: do not ride on"),
    QT_TRANSLATE_NOOP("Core", "at idle the battery still gives: usual for an old alternator with the lamps "
                              "on, else look at idle speed and lamps (common practice, no source)"),
    QT_TRANSLATE_NOOP("Core",
                      "falls with revs: a connection or the regulator fails as current rises; measure again"),
    QT_TRANSLATE_NOOP("Core", "ambient at that altitude: %1 kPa"),
    QT_TRANSLATE_NOOP("Core", "%1 times the system: %2 mL to have ready"),
    QT_TRANSLATE_NOOP("Core", "this band was read in a summary only: advisory"),
    QT_TRANSLATE_NOOP("Core", "%1 mm from the line; the tape tells %2 mm"),
    QT_TRANSLATE_NOOP("Core", "air before %1 kg/m3, after %2 kg/m3: ratio %3"),
    QT_TRANSLATE_NOOP("Core", "jets numbered by diameter: jet area goes with the root of the density ratio, "
                              "so the diameter with its fourth root"),
    QT_TRANSLATE_NOOP("Core", "jets numbered by flow: the number goes with the root of the density ratio"),
    QT_TRANSLATE_NOOP("Core", "tail and stop together"),
    QT_TRANSLATE_NOOP("Core", "one filament at a time"),
    QT_TRANSLATE_NOOP("Core", "some of these bulbs' watts are from memory: read them on the bulb"),
    QT_TRANSLATE_NOOP("Core", "the battery pays the difference: it goes flat while riding"),
    QT_TRANSLATE_NOOP("Core",
                      "no air was lost: the difference is temperature, or within what the gauge can tell"),
    QT_TRANSLATE_NOOP("Core", "no loss: the limit is not reached"),
    QT_TRANSLATE_NOOP("Core", "does not fit a date"),
    QT_TRANSLATE_NOOP("Core", "last is a date, this is none"),
    QT_TRANSLATE_NOOP("Core", "%1 days"),
    QT_TRANSLATE_NOOP("Core", "overdue by %1 days"),
    QT_TRANSLATE_NOOP("Core", "the odometer now, such as 12400 km"),
    QT_TRANSLATE_NOOP("Core", "calendar: months end on their last day where the day is missing"),
    QT_TRANSLATE_NOOP("Core", "fuel to oil from 8 to 200, such as 50, 50:1 or 2 %"),
    QT_TRANSLATE_NOOP("Core", "one or both, from the manual"),
    QT_TRANSLATE_NOOP("Core", "uncertainty of the reading at 20 degC: %1 ohm"),
    QT_TRANSLATE_NOOP(
        "Core", "no uncertainty was given: %1 ohm is assumed, 2 % and 0.02 ohm (common practice, no source)"),
    QT_TRANSLATE_NOOP("Core", "nearest in steps of %1 mm: %2 mm, which leaves %3 mm"),
    QT_TRANSLATE_NOOP(
        "Core", "it shows less than the true speed: not allowed in most places (from memory of UNECE R39)"),
    QT_TRANSLATE_NOOP("Core", "empty after %1 days: a battery cannot lose more than all"),
    QT_TRANSLATE_NOOP("Core", "stage %1 of %2: %3 %4"),
    QT_TRANSLATE_NOOP("Core", "across three quarters of the breadth, all round; pattern visible on the rest"),
    QT_TRANSLATE_NOOP("Core", "main grooves in the middle three quarters"),
    QT_TRANSLATE_NOOP("Core", "mopeds, small and light motorcycles"),
    QT_TRANSLATE_NOOP("Core", "middle three quarters"),
    QT_TRANSLATE_NOOP(
        "Core",
        "treadwear indicator at 1/32 in: a making standard, not a roadside limit; states have their own"),
    QT_TRANSLATE_NOOP("Core", "reject below 1/32 in"),
    QT_TRANSLATE_NOOP("Core", "motorcycle, or another country"),
    QT_TRANSLATE_NOOP("Core", "pattern visible"),
    QT_TRANSLATE_NOOP("Core", "no depth is laid down: look whether every original groove shows"),
    QT_TRANSLATE_NOOP("Core", "age between %1 and %2 years, limit of the shop %3 years"),
    QT_TRANSLATE_NOOP(
        "Core", "three digits: week %1 of a year before 2000 that ends in %2; the decade is not in the code"),
    QT_TRANSLATE_NOOP("Core",
                      "age is that of the youngest possible year: the tyre may be ten or twenty years older"),
    QT_TRANSLATE_NOOP("Core", "week %1 of %2: %3 to %4"),
    QT_TRANSLATE_NOOP("Core", "no load index and speed symbol in the marking"),
    QT_TRANSLATE_NOOP("Core", "rider and luggage are %1 kg; a pair of these tyres holds %2 kg of machine, "
                              "rider and luggage together"),
    QT_TRANSLATE_NOOP("Core", "rider and luggage alone are as much as one of these tyres holds, and most of "
                              "it rests on the rear: look up the machine's highest load"),
    QT_TRANSLATE_NOOP("Core", "no check digit in this scheme"),
    QT_TRANSLATE_NOOP("Core", "no: 17 characters are wanted, %1 were given"),
    QT_TRANSLATE_NOOP("Core", "accepted as a plain frame number"),
    QT_TRANSLATE_NOOP("Core", "%1 characters: not a number of 17"),
    QT_TRANSLATE_NOOP("Core", "if the plate really shows so many, it is an older scheme without check digit"),
    QT_TRANSLATE_NOOP("Core", "no: I, O and Q and signs are never used in a number of 17"),
    QT_TRANSLATE_NOOP("Core", "no: position 9 should be %1"),
    QT_TRANSLATE_NOOP(
        "Core", "outside North America the check digit is not required: there a failed one is only a hint"),
    QT_TRANSLATE_NOOP("Core", "position 10 is no year code; outside North America it often is not"),
    QT_TRANSLATE_NOOP("Core",
                      "the year code repeats every 30 years, and is only a hint outside North America"),
    QT_TRANSLATE_NOOP("Core", "starter cable under 0.91 m"),
    QT_TRANSLATE_NOOP("Core", "starter cable 0.91 to 1.83 m"),
    QT_TRANSLATE_NOOP("Core", "cranking circuit, 0.20 V for each 100 A: give the current"),
    QT_TRANSLATE_NOOP("Core", "the cranking current in A"),
    QT_TRANSLATE_NOOP("Core", "half the 12 V figure at 6 V: common practice, no source"),
    QT_TRANSLATE_NOOP("Core", "any drop that the meter can tell from zero is too much: %1"),
    QT_TRANSLATE_NOOP("Core", "the service limit of the manual"),
    QT_TRANSLATE_NOOP("Core", "%1 mm and more"),
    QT_TRANSLATE_NOOP("Core", "worn %1 mm in %2 km; %3 mm left: %4 km"),
    QT_TRANSLATE_NOOP("Core", "no wear was measured: what remains cannot be told"),
    QT_TRANSLATE_NOOP("Core", "tan (light brown)"),
    QT_TRANSLATE_NOOP("Core", "clear or white"),
    QT_TRANSLATE_NOOP("Core", "resistance %1 mohm/m (%2) at %3 degC: %4 mohm/m"),
    QT_TRANSLATE_NOOP("Core", "solid copper, ASTM B258 size"),
    QT_TRANSLATE_NOOP("Core", "by area, from IEC 60228 class 5"),
    QT_TRANSLATE_NOOP(
        "Core",
        "the load wants a fuse of %1 A, more than this wire may stand behind (%2 A): take a thicker wire"),
    QT_TRANSLATE_NOOP("Core",
                      "fuse: the next blade size from 1.25 x %1 A: %2 A; the wire may stand behind %3 A"),
    QT_TRANSLATE_NOOP("Core", "no blade fuse is large enough: such currents belong to the starter circuit"),
    QT_TRANSLATE_NOOP("Core", "this wire may stand behind %1 A at most: take a thicker wire"),
    QT_TRANSLATE_NOOP("Core", "yes: %1"),
    QT_TRANSLATE_NOOP("Core", "no: %1"),
    QT_TRANSLATE_NOOP("Core", "overdue by %1"),
    QT_TRANSLATE_NOOP(
        "Core",
        "no uncertainty was given: %1 is assumed for an ordinary instrument (common practice, no source)"),
    QT_TRANSLATE_NOOP("Core", "no verdict: %1"),
    QT_TRANSLATE_NOOP("Core", "what would settle it: %1"),
    QT_TRANSLATE_NOOP("Core", "limit: %1"),
    QT_TRANSLATE_NOOP("Core",
                      "load index %1 is outside the table of 30 to 80: look it up in the maker's book"),
    QT_TRANSLATE_NOOP("Core", "speed symbol %1 has no fixed speed in the table"),
    QT_TRANSLATE_NOOP("Core", "leave"),
    QT_TRANSLATE_NOOP("Core", "down"),
    QT_TRANSLATE_NOOP("Core", "up"),
};

} // namespace

Sentences answerSentences() {
    return all;
}

} // namespace undercowl::ui
