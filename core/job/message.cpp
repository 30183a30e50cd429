#include "core/job/message.h"

#include <algorithm>
#include <array>

namespace undercowl::job {
namespace {

struct Pattern {
    std::string_view key;
    std::string_view english;
};

constexpr std::array patterns{
    Pattern{"standing.stopped.nothing", "taken in, nothing done yet"},
    Pattern{"standing.stopped.finding", "stopped after noting: %1"},
    Pattern{"standing.stopped.strip", "stopped after: %1"},
    Pattern{"standing.stopped.refit", "stopped after refitting: %1"},
    Pattern{"standing.stopped.wire", "stopped at the wiring of: %1"},
    Pattern{"standing.stopped.reading", "stopped after measuring: %1"},
    Pattern{"standing.stopped.handed-over", "handed over"},
    Pattern{"standing.stopped.photo", "stopped after a photo"},
    Pattern{"standing.stopped.part", "stopped at the part: %1"},
    Pattern{"standing.next.take-in", "next: photos as found, and what works"},
    Pattern{"standing.next.look-over", "next: look it over, or strip the first part"},
    Pattern{"standing.next.strip", "next: go on stripping, or refit: %1"},
    Pattern{"standing.next.refit", "next: refit %1"},
    Pattern{"standing.next.refit-bag", "next: refit %1, bag %2"},
    Pattern{"standing.next.wait", "waits for: %1"},
    Pattern{"standing.next.prove", "next: prove it and hand it over"},
    Pattern{"standing.next.unsafe", "next: settle what is unsafe: %1"},
    Pattern{"standing.next.afterwards", "next: %1 (%2)"},
    Pattern{"standing.next.wires", "next: put the wires right: %1"},
    Pattern{"standing.next.part", "next: fit the part: %1"},
    Pattern{"standing.next.done", "nothing open"},
    Pattern{"standing.next.left", "left open: %1"},

    Pattern{"waits.owner", "ask the owner: %1"},
    Pattern{"waits.held", "waits for: %1"},
    Pattern{"waits.prove", "%1 to prove, first: %2"},
    Pattern{"waits.hand-over", "ready to be handed over"},

    Pattern{"refit.order.done", "That is on again already."},
    Pattern{"refit.order.first", "That is the first one already."},
    Pattern{"refit.order.last", "That is the last one already."},
    Pattern{"refit.order.lies-over", "Not before: %1 came off after %2, so it goes on first."},
    Pattern{"refit.order.task", "Not before: the task %1 has to be finished before %2."},

    Pattern{"leave.unsafe", "unsafe and open: %1"},
    Pattern{"leave.refused", "unsafe, and %1 does not want it put right: %2"},
    Pattern{"leave.start", "do not start yet: %1 (%2)"},
    Pattern{"leave.ride", "do not ride yet: %1 (%2)"},
    Pattern{"leave.start-apart", "do not start: %1 is not on again"},
    Pattern{"leave.ride-apart", "do not ride: %1 is not on again"},
    Pattern{"leave.left-out", "left out: %1 (%2)"},
    Pattern{"leave.afterwards", "not done yet: %1 (%2)"},
    Pattern{"leave.not-looked", "round not finished: %1, %2 checks without an answer"},
    Pattern{"leave.unproved", "not proved: %1"},
    Pattern{"leave.contradicted", "not proved: %1. %2"},
    Pattern{"leave.proof-left-out", "not proved, left out: %1 (%2)"},
    Pattern{"leave.line", "does not run as it was found: %1"},
    Pattern{"leave.outside", "measured outside its limit: %1, %2"},
    Pattern{"leave.close", "too close to its limit to call: %1, %2"},
    Pattern{"leave.part", "part not fitted: %1"},
    Pattern{"leave.complaint", "what the owner said has no answer: %1"},
    Pattern{"leave.function", "did not work when it came in, and has no answer: %1"},
    Pattern{"leave.works-not", "does not work: %1"},
    Pattern{"leave.works-not-note", "does not work: %1 (%2)"},
    Pattern{"leave.left", "left as it was: %1 (%2)"},
    Pattern{"leave.outside-refused",
            "measured outside its limit, and the owner does not want it put right: %1, %2"},
    Pattern{"leave.watch", "the watch still runs: %1"},

    Pattern{"prove.afterwards", "%1 (%2)"},
    Pattern{"prove.torque", "tightened to the torque and read: %1 (%2)"},
    Pattern{"prove.against.wire", "place %1 does not match"},
    Pattern{"prove.against.wire-unit", "place %1, unit half, does not match"},
    Pattern{"prove.against.unread", "not read back: places %1"},
    Pattern{"prove.against.unread-one", "not read back: place %1"},
    Pattern{"prove.against.torque", "%1: read %2, to be %3"},
    Pattern{"prove.fasteners", "every fastener in and tight: %1 (%2)"},
    Pattern{"prove.wires", "each wire read back against the map: %1"},
    Pattern{"prove.hose", "runs as on its photo, clipped, dry under pressure: %1"},
    Pattern{"prove.hose.written", "runs as it was written down, clipped, dry under pressure: %1"},
    Pattern{"prove.hose.manual", "runs as the machine's manual shows, clipped, dry under pressure: %1"},
    Pattern{"prove.cable", "moves freely at both locks, free play right: %1"},
    Pattern{"prove.fluid", "filled again, level right, no leak: %1 (let out: %2)"},
    Pattern{"prove.sits", "sits as it did, nothing left over: %1"},

    Pattern{"cost.no-price", "no price is known: %1"},
    Pattern{"cost.other-currency", "in another currency, not in the sum: %1, %2 %3"},
    Pattern{"cost.too-large", "the sum is too large to reckon with: %1"},

    Pattern{"consumable.not-allowed", "%1 is not among the grades that the machine allows: %2"},
    Pattern{"consumable.limit-unknown",
            "the machine's grade is not known: read it off the reservoir's lid or the manual first"},
    Pattern{"consumable.grade-unknown", "the grade of what goes in is not said: read it off the container"},
    Pattern{"consumable.silicone", "DOT 5 is silicone: it never mixes with DOT 3, 4 or 5.1"},
    Pattern{"consumable.opened-long-ago",
            "the container was opened %1 days ago, on %2: brake fluid draws water, take a fresh one"},
    Pattern{"consumable.opened-unknown",
            "nobody knows when the container was opened: brake fluid draws water, take a fresh one"},
    Pattern{"consumable.opened-unclear", "the day of opening is not clear: write it as 2026-11-02"},
    Pattern{"consumable.opened-later", "the container cannot have been opened on %1: that day is to come"},
};

} // namespace

namespace {

const Pattern* patternOf(std::string_view key) {
    const auto* found = std::find_if(patterns.begin(), patterns.end(),
                                     [key](const Pattern& pattern) { return pattern.key == key; });
    return found == patterns.end() ? nullptr : found;
}

} // namespace

std::string_view englishPattern(std::string_view key) {
    const Pattern* pattern = patternOf(key);
    return pattern != nullptr ? pattern->english : std::string_view{};
}

std::vector<std::string_view> englishPatterns() {
    std::vector<std::string_view> all;
    all.reserve(patterns.size());
    for (const Pattern& pattern : patterns)
        all.push_back(pattern.english);
    return all;
}

std::string_view knownKey(std::string_view key) {
    const Pattern* pattern = patternOf(key);
    return pattern != nullptr ? pattern->key : std::string_view{};
}

std::string filled(std::string_view pattern, const std::vector<std::string>& values) {
    std::string text;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool place =
            pattern[i] == '%' && i + 1 < pattern.size() && pattern[i + 1] >= '1' && pattern[i + 1] <= '9';
        if (!place) {
            text += pattern[i];
            continue;
        }
        const auto which = static_cast<std::size_t>(pattern[++i] - '1');
        if (which < values.size())
            text += values[which];
    }
    return text;
}

std::string english(const Message& message) {
    return filled(englishPattern(message.key), message.values);
}

} // namespace undercowl::job
