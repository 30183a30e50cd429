#include "core/talk/sentence.h"

#include "core/job/message.h"
#include "core/talk/numbers.h"
#include "core/talk/speak.h"

#include <algorithm>
#include <array>

namespace undercowl::talk {
namespace {

constexpr std::array all{
    Pattern{"talk.connector", "%1, %2 places"},
    Pattern{"talk.latch", "latch %1"},
    Pattern{"talk.half.loom", "loom half"},
    Pattern{"talk.half.unit", "unit half"},
    Pattern{"talk.place", "place %1"},
    Pattern{"talk.place.second", "place %1, second wire"},
    Pattern{"talk.colour", "%1"},
    Pattern{"talk.empty", "empty, no wire"},
    Pattern{"talk.terminal", "%1"},
    Pattern{"talk.function", "%1"},
    Pattern{"talk.tag", "tag %1"},
    Pattern{"talk.twin", "careful, it looks like place %1"},
    Pattern{"talk.contradiction.found", "stop, it was found with %1"},
    Pattern{"talk.contradiction.should", "stop, it should be %1"},
    Pattern{"talk.contradiction.found.empty", "stop, it was found empty, without a wire"},
    Pattern{"talk.contradiction.should.empty", "stop, it should be empty, without a wire"},
    Pattern{"talk.contradiction.other", "stop, as found and as it should be differ in more than the colour"},
    Pattern{"talk.unread.one", "one place was not read, look at the machine"},
    Pattern{"talk.unread", "%1 places were not read, look at the machine"},
    Pattern{"talk.step", "step %1, refit %2"},
    Pattern{"talk.step.untitled", "step %1"},
    Pattern{"talk.hardware", "one %1"},
    Pattern{"talk.hardware.many", "%1 times %2"},
    Pattern{"talk.thread", "%1"},
    Pattern{"talk.length", "%1"},
    Pattern{"talk.bag", "bag %1"},
    Pattern{"talk.waits", "wait, this task waits for %1"},
    Pattern{"talk.caution", "careful, %1"},
    Pattern{"talk.line", "%1"},
    Pattern{"talk.line.unwritten", "how it runs was not written down, look at its photo"},
    Pattern{"talk.line.unknown",
            "how it runs was not written down and there is no photo, look it up in the machine's manual"},
    Pattern{"talk.routing", "it runs %1"},
    Pattern{"talk.ends", "its ends, %1"},
    Pattern{"talk.as-found", "as found, %1"},
    Pattern{"talk.let-out", "let out, %1"},
    Pattern{"talk.note", "note, %1"},
    Pattern{"talk.torque", "torque %1"},
    Pattern{"talk.torque.of", "%1, torque %2"},
    Pattern{"talk.torque.none", "no torque was written down, look it up"},
    Pattern{"talk.end", "that was the last one"},
    Pattern{"talk.end.all", "all match"},
    Pattern{"talk.end.failing.one", "one does not match"},
    Pattern{"talk.end.failing", "%1 do not match"},
    Pattern{"talk.end.open.one", "one was not read back"},
    Pattern{"talk.end.open", "%1 were not read back"},
    Pattern{"talk.nothing", "nothing to read back"},
};

struct Say {
    std::string operator()(int number) const { return spokenNumber(std::to_string(number)); }
    std::string operator()(const Typed& typed) const { return spokenText(typed.text); }
    std::string operator()(const job::TypedValue& value) const { return spoken(value); }
    std::string operator()(const colour::WireColour& colour) const { return englishWords(colour); }
    std::string operator()(const wiring::Terminal& terminal) const { return spoken(terminal); }
};

Sentence onlyPhrase(const Sentence& sentence, std::string_view key) {
    Sentence only{sentence.kind, {}, sentence.about, sentence.place};
    std::copy_if(sentence.phrases.begin(), sentence.phrases.end(), std::back_inserter(only.phrases),
                 [key](const Phrase& phrase) { return phrase.key == key; });
    return only;
}

} // namespace

Sentence wireOnly(const Sentence& sentence) {
    const Sentence colour = onlyPhrase(sentence, "talk.colour");
    return colour.phrases.empty() ? onlyPhrase(sentence, "talk.empty") : colour;
}

Sentence endsOnly(const Sentence& sentence) {
    return onlyPhrase(sentence, "talk.ends");
}

std::span<const Pattern> patterns() {
    return all;
}

std::string english(const Sentence& sentence) {
    std::string text;
    for (const Phrase& phrase : sentence.phrases) {
        const auto* const pattern = std::find_if(
            all.begin(), all.end(), [&](const Pattern& candidate) { return candidate.key == phrase.key; });
        if (pattern == all.end())
            continue;
        std::vector<std::string> values;
        values.reserve(phrase.values.size());
        for (const Value& value : phrase.values)
            values.push_back(std::visit(Say{}, value));
        if (!text.empty())
            text += ", ";
        text += job::filled(pattern->english, values);
    }
    return text;
}

} // namespace undercowl::talk
