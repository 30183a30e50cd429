#include "platform/ear/features.h"
#include "platform/ear/lattice.h"
#include "platform/ear/sound.h"

#include "core/talk/grammar.h"
#include "core/talk/numbers.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

using namespace undercowl;
using namespace undercowl::platform;

namespace {

// Words: bag 1, five 2, next 3, seven 4; other 5.
talk::Expression small() {
    return talk::choice(
        {talk::phrase("next"),
         talk::sequence({talk::phrase("bag"), talk::choice({talk::phrase("five"), talk::phrase("seven")}),
                         talk::optional(talk::phrase("seven"))})});
}

constexpr std::size_t smallClasses = 6;

// Each frame says one class with the given share, the others share the rest.
Likely saying(const std::vector<std::size_t>& classes, double sure = 0.9) {
    Likely likely{classes.size(), smallClasses, {}};
    for (const std::size_t which : classes)
        for (std::size_t c = 0; c < smallClasses; ++c)
            likely.logs.push_back(
                static_cast<float>(std::log(c == which ? sure : (1 - sure) / (smallClasses - 1))));
    return likely;
}

} // namespace

TEST_CASE("the likeliest sentence of the grammar is found") {
    const Lattice lattice{small()};
    CHECK(lattice.words() == std::vector<std::string>{"bag", "five", "next", "seven"});
    CHECK(lattice.best(saying({0, 1, 0, 4, 4, 0})) == "bag seven");
    CHECK(lattice.best(saying({1, 2, 4})) == "bag five seven");
    CHECK(lattice.best(saying({0, 3, 3, 0})) == "next");
    // A word said twice needs a gap between.
    CHECK(lattice.best(saying({1, 4, 4, 4})) == "bag seven");
    CHECK(lattice.best(saying({1, 4, 0, 4})) == "bag seven seven");
    // What the grammar does not allow gives way to what it does.
    CHECK(lattice.best(saying({0, 4, 0, 1, 0, 2, 0})) == "bag five");
    CHECK(lattice.best(saying({})).empty());
    CHECK(lattice.best(saying({0})) == "next");
}

TEST_CASE("the probabilities of all sentences of two frames add up to one") {
    const Lattice lattice{small()};
    const Likely likely = saying({1, 4}, 0.6);
    const std::vector<std::string> words{"bag", "five", "next", "seven"};
    double total = std::exp(lattice.log(likely, ""));
    for (const std::string& a : words) {
        total += std::exp(lattice.log(likely, a));
        for (const std::string& b : words)
            if (a != b)
                total += std::exp(lattice.log(likely, a + " " + b));
    }
    // What is missing is the class that has no word: alone, or with a word before or behind it.
    const double none = 0.08;
    const double other = none * none + 2 * none * none + none * (1 - 2 * none) + none * (1 - 2 * none);
    CHECK(total == Approx(1 - other));
    CHECK(lattice.log(likely, "hammer") == -std::numeric_limits<double>::infinity());
    CHECK(lattice.log(likely, "bag seven bag") == -std::numeric_limits<double>::infinity());
    CHECK(lattice.log(likely, "bag seven") == Approx(std::log(0.36)));
}

TEST_CASE("without a grammar the words are told as they are heard") {
    const Lattice lattice{small()};
    CHECK(lattice.free(saying({0, 4, 4, 0, 5, 1, 1})) == "seven ... bag");
    CHECK(lattice.free(saying({0, 0})).empty());
}

TEST_CASE("every sentence of the grammar has its way through the lattice") {
    const Lattice lattice{talk::grammar()};
    for (const char* words : {"does not match", "torque one hundred and twenty five point five newton metres",
                              "rear tyre thirty two p s i", "bag nine oh one",
                              "grey with red tracer blade six point three stop lamp"}) {
        Likely likely;
        likely.classes = lattice.words().size() + 2;
        for (const std::string_view word : talk::wordsOf(words)) {
            const auto at = std::lower_bound(lattice.words().begin(), lattice.words().end(), word);
            REQUIRE(at != lattice.words().end());
            for (const std::size_t which :
                 {std::size_t{0}, static_cast<std::size_t>(at - lattice.words().begin()) + 1}) {
                ++likely.frames;
                for (std::size_t c = 0; c < likely.classes; ++c)
                    likely.logs.push_back(c == which ? -0.01F : -8.0F);
            }
        }
        CHECK(lattice.best(likely) == words);
    }
}

TEST_CASE("a tone is strong in its own band, and level does not matter") {
    // One second of 1000 Hz, then one of 3000 Hz.
    Samples samples(2 * earRate);
    for (std::size_t i = 0; i < samples.size(); ++i)
        samples[i] = static_cast<float>(0.3 * std::sin(2 * std::numbers::pi * (i < earRate ? 1000 : 3000) *
                                                       static_cast<double>(i) / earRate));
    const Features loud = features(samples);
    for (float& sample : samples)
        sample *= 0.01F;
    const Features soft = features(samples);
    CHECK(loud.frames == 1 + (2 * earRate - 512) / 160);
    REQUIRE(soft.values.size() == loud.values.size());
    const auto strongest = [&](std::size_t frame) {
        std::size_t best = 0;
        for (std::size_t b = 1; b < earBands; ++b)
            if (loud.values[b * loud.frames + frame] > loud.values[best * loud.frames + frame])
                best = b;
        return best;
    };
    // Band of a pitch f: 65 (mel(f) - mel(60)) / (mel(7600) - mel(60)) - 1, with mel(f) = 2595 log10(1 + f /
    // 700).
    CHECK(strongest(20) == Approx(21).margin(1));
    CHECK(strongest(150) == Approx(41).margin(1));
    for (std::size_t i = 0; i < loud.values.size(); ++i)
        REQUIRE(soft.values[i] == Approx(loud.values[i]).margin(1e-2));
    CHECK(features(Samples(511)).frames == 0);
    CHECK(features(Samples(512)).frames == 1);
}
