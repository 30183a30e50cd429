#include "core/talk/grammar.h"
#include "core/talk/parse.h"
#include "core/talk/speak.h"

#include <catch2/catch.hpp>

#include <random>

using namespace undercowl::talk;

TEST_CASE("whatever the grammar allows is understood, or refused for what it says") {
    std::mt19937 random{20}; // the same sentences in each run
    const auto pick = [&random](std::size_t count) { return random() % count; };
    const Expression all = grammar();
    int understood = 0;
    for (int i = 0; i < 20000; ++i) {
        const std::string words = sample(all, pick);
        const auto parsed = parse(words);
        INFO(words);
        if (parsed) {
            ++understood;
            CHECK(parse(spoken(*parsed)).value() == *parsed);
            continue;
        }
        // Only a number beyond belief, or a tracer in the colour of its base.
        const bool striped = words.find(" with ") != std::string::npos;
        CHECK((parsed.error().kind == Refusal::Kind::Implausible || striped));
    }
    CHECK(understood > 15000);
}

TEST_CASE("the grammar is written as JSGF") {
    const Expression small =
        sequence({phrase("bag"), choice({phrase("one"), phrase("two three")}), optional(phrase("now"))});
    CHECK(grammarText(small) ==
          "#JSGF V1.0;\ngrammar undercowl;\npublic <said> = ( bag ( one | ( two three ) ) [ now ] );\n");
    CHECK(vocabulary(small) == std::set<std::string>{"bag", "now", "one", "three", "two"});
}

TEST_CASE("every command and unit is in the grammar") {
    const auto words = vocabulary(grammar());
    for (const char* word :
         {"next",        "again",  "back",   "done",  "match",   "photo", "memo",     "stop",        "undo",
          "slower",      "newton", "metres", "foot",  "pounds",  "bar",   "p",        "kilopascals", "volts",
          "millimetres", "bag",    "tracer", "blade", "hundred", "oh",    "turquoise"})
        CHECK(words.count(word) == 1);
}
