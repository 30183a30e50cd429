#include "tests/bench/ear_phrases.h"

#include "core/talk/grammar.h"
#include "core/talk/parse.h"

#include <array>
#include <random>
#include <set>
#include <string_view>

namespace undercowl::bench {
namespace {

constexpr std::array<std::string_view, 50> tuned{
    "hello",
    "good morning",
    "where did you put the coffee",
    "can you hold this for me please",
    "I think the customer is coming at three",
    "the radio is too loud",
    "pass me the ten millimetre spanner",
    "it is raining again outside",
    "who left the door open",
    "the phone is ringing",
    "what time do we close today",
    "the grey one goes behind the battery box",
    "torque it properly this time",
    "is that bag the right one",
    "put it back where it was",
    "he said he would be back on Monday",
    "this tyre is completely worn out",
    "the front brake is dragging a little",
    "there is oil all over the floor",
    "I need a new photo for my passport",
    "stop talking and help me",
    "the next customer has been waiting for an hour",
    "did you order the carburettor gasket",
    "seven of them were missing",
    "the light in the corner is broken",
    "red wine or white wine",
    "we had fish and chips for lunch",
    "look at the blue sky",
    "the horn does not work at all",
    "turn the key and try it",
    "switch the compressor off please",
    "one moment I am busy",
    "my knee hurts when I kneel down",
    "that was a very long weekend",
    "the bolt has sheared off in the head",
    "call the insurance company tomorrow",
    "how much does a set of tyres cost",
    "it matches the one on the other side",
    "undo the two screws under the seat",
    "I will write you a memo about that",
    "the exhaust is rattling",
    "are you done with the torque wrench",
    "the green bicycle belongs to my sister",
    "the water pump needs a new seal",
    "maybe",
    "no",
    "yes of course",
    "thank you very much",
    "the cable is frayed near the lever",
    "wipe that up before somebody slips",
};

constexpr std::array<std::string_view, 50> heldBackTalk{
    "good evening everybody",
    "have you seen my gloves",
    "the delivery van is outside",
    "I would like a cup of tea",
    "could you open the window",
    "his scooter has been here for three weeks",
    "the spark plug was black with soot",
    "which of these goes on top",
    "the invoice has not been paid",
    "put the red one next to the black one",
    "the pressure washer is leaking",
    "my brother rides a bicycle to work",
    "the chain needs cleaning and some grease",
    "we are out of brake cleaner",
    "that is six euros and fifty cents",
    "the battery was flat this morning",
    "nobody told me about it",
    "he wants it back by Friday",
    "number seven is the best player in the team",
    "take a photo of the dog",
    "I cannot find the fuse box",
    "the left mirror is cracked",
    "slow down a bit",
    "the starter turns but nothing happens",
    "read the manual first",
    "ring me when you are ready",
    "there were twelve screws in the bag and now there are eleven",
    "the earth is round",
    "turn off the light when you leave",
    "an orange and two apples",
    "stop at the next corner",
    "it does not start when it is cold",
    "the fuel tap is stuck",
    "is there any bread left",
    "the tail of the cat",
    "twenty people came to the party",
    "I have to pick up the children",
    "the tread is all right but the wall is cracked",
    "what a beautiful day",
    "hand me the pliers",
    "the kettle is boiling",
    "the music is very nice",
    "she bought a yellow dress",
    "excuse me",
    "perhaps later",
    "of course not",
    "never mind",
    "okay",
    "the throttle sticks half way",
    "let us call it a day",
};

} // namespace

std::vector<SpokenPhrase> phrases(unsigned seed) {
    std::mt19937 random{seed};
    const auto pick = [&random](std::size_t count) { return random() % count; };
    std::vector<SpokenPhrase> all;
    for (int round = 0; round < 3; ++round)
        for (const talk::Command command : talk::allCommands)
            all.push_back({std::string{talk::name(command)}, command});
    std::set<std::string> taken;
    const auto draw = [&](const talk::Expression& grammar, int count) {
        while (count > 0) {
            std::string words = talk::sample(grammar, pick);
            const auto meant = talk::parse(words);
            if (!meant || !taken.insert(words).second)
                continue;
            all.push_back({std::move(words), *meant});
            --count;
        }
    };
    draw(talk::readings(), 80);
    draw(talk::bags(), 25);
    draw(talk::wires(), 85);
    return all;
}

std::vector<std::string> otherTalk(bool heldBack) {
    const auto& half = heldBack ? heldBackTalk : tuned;
    return {half.begin(), half.end()};
}

} // namespace undercowl::bench
