#include "core/handover/phrases.h"

#include <algorithm>
#include <array>

namespace undercowl::handover {
namespace {

// Shapes go with severities and verdicts, so that they are told apart without colour and on a grey print.
constexpr std::array all{
    Phrase{"record.title", "Record of work"},
    Phrase{"record.title.number", "Record of work %1"},

    Phrase{"record.machine.title", "The machine"},
    Phrase{"record.machine.what", "Machine"},
    Phrase{"record.machine.frame", "Frame number"},
    Phrase{"record.machine.odometer", "Odometer when taken in"},
    Phrase{"record.machine.owner", "Owner"},
    Phrase{"record.machine.reason", "Why it came in"},
    Phrase{"record.machine.works", "Worked when taken in"},
    Phrase{"record.machine.works-not", "Did not work"},
    Phrase{"record.machine.ridden", "Ridden at"},
    Phrase{"record.machine.load", "Load"},
    Phrase{"record.machine.taken-in", "Taken in"},
    Phrase{"record.machine.handed-over", "Handed over"},
    Phrase{"record.machine.not-yet", "not yet: this page shows how far the work has got"},
    Phrase{"record.machine.by", "Work done by"},
    Phrase{"record.machine.note", "Note at hand-over"},

    Phrase{"record.heed.title", "Before you ride"},
    Phrase{"record.heed.unfinished",
           "The work is not finished: %1 of %2 steps are not back together. Do not ride it."},
    Phrase{"record.heed.unsafe", "Unsafe and not yet put right: %1."},
    Phrase{"record.heed.unsafe-do", "Unsafe and not yet put right: %1. To do: %2."},
    Phrase{"record.heed.refused", "Unsafe and not put right: %1. You were told, and on %2 %3 did not want it "
                                  "put right. Do not ride it."},
    Phrase{"record.heed.start", "Do not start it: %1 is not on again."},
    Phrase{"record.heed.ride", "Do not ride it: %1 is not on again."},
    Phrase{"record.heed.left-out", "Left out, do not ride before it is done: %1 (%2)."},
    Phrase{"record.heed.not-done", "Not done yet, do not ride before it is: %1."},
    Phrase{"record.heed.outside", "Measured outside its limit: %1, %2."},
    Phrase{"record.heed.close", "Too close to its limit to call: %1, %2."},
    Phrase{"record.heed.wire", "A wire was found that does not match the map: %1, place %2."},
    Phrase{"record.heed.none", "No unsafe finding is open."},
    Phrase{"record.heed.brake",
           "The brakes were worked on: try them at walking pace before you ride among others."},
    Phrase{"record.heed.wheel",
           "A wheel or its axle was worked on: have its fastening checked again after the first rides."},

    Phrase{"record.found.title", "What was found"},
    Phrase{"record.found.how-serious", "How serious"},
    Phrase{"record.found.what", "Found"},
    Phrase{"record.found.became", "What became of it"},
    Phrase{"record.found.settled", "put right"},
    Phrase{"record.found.settled-how", "put right: %1"},
    Phrase{"record.found.refused", "still open; %1 does not want it put right"},
    Phrase{"record.found.open", "still open"},
    Phrase{"record.found.open-do", "still open; to do: %1"},
    Phrase{"record.severity.unsafe", "\u25A0 unsafe"},
    Phrase{"record.severity.soon", "\u25E7 soon"},
    Phrase{"record.severity.note", "\u25A1 note"},

    Phrase{"record.done.title", "What was done"},
    Phrase{"record.done.work", "Work"},
    Phrase{"record.done.steps", "Steps"},
    Phrase{"record.done.state", "State"},
    Phrase{"record.done.by", "By"},
    Phrase{"record.done.other", "Other steps"},
    Phrase{"record.done.all-back", "all %1 back together"},
    Phrase{"record.done.some-back", "%1 of %2 back together"},
    Phrase{"record.done.waits", "waits for: %1"},
    Phrase{"record.done.waits-back", "waits for: %1; %2 of %3 back together"},
    Phrase{"record.done.not-begun", "not begun"},

    Phrase{"record.wiring.title", "Wiring that was read"},
    Phrase{"record.wiring.connector", "%1: connector with %2 places, numbered as seen from the %3"},
    Phrase{"record.wiring.connector-latch",
           "%1: connector with %2 places, numbered as seen from the %3; latch: %4"},
    Phrase{"record.wiring.other", "%1: %2, %3 places"},
    Phrase{"record.wiring.place", "Place"},
    Phrase{"record.wiring.code", "Code"},
    Phrase{"record.wiring.colour", "Colour"},
    Phrase{"record.wiring.end", "End"},
    Phrase{"record.wiring.function", "Function"},
    Phrase{"record.wiring.refit", "On refit"},
    Phrase{"record.wiring.at", "%1"},
    Phrase{"record.wiring.at-second", "%1, second wire"},
    Phrase{"record.wiring.at-unit", "%1, unit side"},
    Phrase{"record.wiring.at-unit-second", "%1, unit side, second wire"},
    Phrase{"record.wiring.range", "%1 to %2"},
    Phrase{"record.wiring.range-unit", "%1 to %2, unit side"},
    Phrase{"record.wiring.not-read", "not read: look at the machine"},
    Phrase{"record.wiring.matches", "\u2713 matches"},
    Phrase{"record.wiring.matches-not", "\u2612 does not match"},
    Phrase{"record.wiring.not-checked", "not checked"},
    Phrase{"record.wiring.should-be", "Place %1: found with %2, but it should be %3."},
    Phrase{"record.wiring.should-be-source", "Place %1: found with %2, but it should be %3 (%4)."},
    Phrase{"record.wiring.now", "Place %1: found with %2, refitted with %3."},
    Phrase{"record.wiring.note", "Colours are those seen on this machine, by IEC 60757 letters (LBU, LGN: "
                                 "light blue and light green)."},

    Phrase{"record.measured.title", "What was measured"},
    Phrase{"record.measured.what", "Measured"},
    Phrase{"record.measured.value", "Value"},
    Phrase{"record.measured.at-step", "%1, at: %2"},
    Phrase{"record.measured.mean", "%1, mean of %2 (%3)"},
    Phrase{"record.measured.instrument", "Instrument"},
    Phrase{"record.measured.limit", "Limit"},
    Phrase{"record.measured.source", "Limit from"},
    Phrase{"record.measured.verdict", "Verdict"},
    Phrase{"record.measured.instrument-within", "%1, within %2"},
    Phrase{"record.measured.within", "not named, taken to be within %1"},
    Phrase{"record.measured.from-to", "%1 to %2"},
    Phrase{"record.measured.at-least", "at least %1"},
    Phrase{"record.measured.at-most", "at most %1"},
    Phrase{"record.measured.no-limit", "no limit known"},
    Phrase{"record.verdict.within", "\u2713 within"},
    Phrase{"record.verdict.outside", "\u2612 outside"},
    Phrase{"record.verdict.close", "\u25C7 too close to call"},
    Phrase{"record.verdict.none", "no verdict"},

    Phrase{"record.parts.title", "Parts"},
    Phrase{"record.parts.part", "Part"},
    Phrase{"record.parts.number", "Number"},
    Phrase{"record.parts.state", "State"},
    Phrase{"record.part.wanted", "wanted"},
    Phrase{"record.part.asked", "asked for"},
    Phrase{"record.part.ordered", "on order"},
    Phrase{"record.part.here", "here, not fitted"},
    Phrase{"record.part.wrong", "wrong part"},
    Phrase{"record.part.fitted", "fitted"},
    Phrase{"record.part.note", "%1: %2"},

    Phrase{"record.due.title", "What is due"},
    Phrase{"record.due.what", "Check"},
    Phrase{"record.due.when", "When"},
    Phrase{"record.due.after", "after %1"},
    Phrase{"record.due.days", "by %1"},
    Phrase{"record.due.after-days", "after %1, or by %2, whichever comes first"},
    Phrase{"record.due.some-time", "at the next visit"},
    Phrase{"record.due.soon", "soon"},

    Phrase{"record.left.title", "What was left"},
    Phrase{"record.left.none", "Nothing that was taken apart was left apart."},
    Phrase{"record.left.step", "Not back together: %1."},
    Phrase{"record.left.step-bag", "Not back together: %1 (bag %2)."},
    Phrase{"record.left.more", "and %1 more steps."},
    Phrase{"record.left.waits", "%1 waits for: %2."},
    Phrase{"record.left.part", "Part not fitted: %1 (%2)."},

    Phrase{"record.photos.title", "Photos"},
    Phrase{"record.photo.as-found", "as found, %1"},
    Phrase{"record.photo.finding", "finding, %1"},
    Phrase{"record.photo.strip", "while stripping, %1"},
    Phrase{"record.photo.wiring", "wiring, %1"},
    Phrase{"record.photo.refit", "after refitting, %1"},
    Phrase{"record.photo.other", "%1"},
    Phrase{"record.photo.noted", "%1 (%2)"},

    Phrase{"order.title", "Parts to order, %1"},
    Phrase{"order.no-supplier", "No supplier chosen"},
    Phrase{"order.part", "Part"},
    Phrase{"order.number", "Number"},
    Phrase{"order.numbers", "%1, also %2"},
    Phrase{"order.also", "also %1"},
    Phrase{"order.machine", "For"},
    Phrase{"order.price", "Price without tax"},
    Phrase{"order.sum", "Together: %1"},
    Phrase{"order.without-price", "Without a price: %1"},

    Phrase{"record.note.title", "Please note"},
    Phrase{"record.note.first",
           "The machine's manual, local law and licensed practice come before anything on this page."},
    Phrase{"record.note.day", "Measured values hold for the day on which they were measured."},
};

} // namespace

std::span<const Phrase> phrases() {
    return all;
}

std::string_view englishPhrase(std::string_view key) {
    const auto found =
        std::find_if(all.begin(), all.end(), [key](const Phrase& phrase) { return phrase.key == key; });
    return found == all.end() ? std::string_view{} : found->english;
}

} // namespace undercowl::handover
