// The ear hears what our own voice says: no recording of anybody is needed.
#include "core/talk/grammar.h"
#include "core/talk/parse.h"
#include "platform/ear/ear.h"
#include "platform/ear/pronunciations.h"
#include "platform/voice/voice.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <filesystem>
#include <numbers>
#include <random>
#include <set>

using namespace undercowl;
using namespace undercowl::platform;

namespace {

Samples said(const std::string& words) {
    const std::vector<std::string> sentences{words};
    const auto speech = speak(sentences);
    REQUIRE(speech);
    const auto file = std::filesystem::temp_directory_path() / "undercowl_said.wav";
    REQUIRE(writeSound(file, speech->samples, speech->rate));
    const auto samples = readSound(file);
    std::filesystem::remove(file);
    REQUIRE(samples);
    return *samples;
}

std::unique_ptr<Ear> anEar() {
    auto ear = openEar();
    REQUIRE(ear);
    return std::move(*ear);
}

} // namespace

TEST_CASE("every word of the grammar has a pronunciation, and no other word") {
    std::set<std::string> known;
    for (const Pronunciation& way : pronunciations())
        known.insert(std::string{way.word});
    CHECK(known == talk::vocabulary(talk::grammar()));
}

TEST_CASE("commands, readings, bags and wires are heard") {
    const auto ear = anEar();
    for (const char* words : {"does not match", "slower", "torque two five newton metres",
                              "front tyre one point eight bar", "battery twelve point six volts", "bag seven",
                              "grey with red tracer blade six point three stop lamp", "orange bullet horn"}) {
        const Heard heard = ear->hear(said(words));
        INFO(words << " / " << heard.text << " / " << heard.message);
        REQUIRE(heard.accepted());
        CHECK(heard.text == words);
        CHECK(*heard.intent == talk::parse(words).value());
    }
}

TEST_CASE("speech that is no sentence of the grammar is rejected") {
    const auto ear = anEar();
    for (const char* words : {"could you pass me the big hammer", "I would like a cup of coffee please",
                              "the weather is very nice today"}) {
        const Heard heard = ear->hear(said(words));
        INFO(words << " / " << heard.text);
        CHECK_FALSE(heard.accepted());
        CHECK_FALSE(heard.message.empty());
    }
}

TEST_CASE("silence, noise, tones and a blip are no speech") {
    const auto ear = anEar();
    std::mt19937 random{3};
    std::normal_distribution<float> white{0, 0.1F};
    Samples noise(2 * earRate);
    for (float& sample : noise)
        sample = white(random);
    for (const int hertz : {97, 300, 1000, 2500}) {
        Samples tone(2 * earRate);
        for (std::size_t i = 0; i < tone.size(); ++i)
            tone[i] = static_cast<float>(
                0.5 * std::sin(2 * std::numbers::pi * hertz * static_cast<double>(i) / earRate));
        CHECK_FALSE(ear->hear(tone).accepted());
    }
    CHECK_FALSE(ear->hear(Samples(2 * earRate)).accepted());
    CHECK_FALSE(ear->hear(noise).accepted());
    CHECK_FALSE(ear->hear(Samples(10)).accepted());
    CHECK_FALSE(ear->hear({}).accepted());
}
