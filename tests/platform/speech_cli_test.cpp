// speech hear and speech say through the real undercowlctl: shapes, exit codes, sound.
#include "platform/ear/sound.h"
#include "platform/voice/voice.h"
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using nlohmann::json;
using tests::ctl;

namespace {

void sayInto(const std::string& file, const std::string& words) {
    const std::vector<std::string> sentences{words};
    const auto speech = platform::speak(sentences);
    REQUIRE(speech);
    REQUIRE(platform::writeSound(file, speech->samples, speech->rate));
}

} // namespace

TEST_CASE("speech hear answers in the promised shapes") {
    const tests::Scratch scratch;
    const std::string file = scratch / "said.wav";
    const auto heard = [&](const std::string& words) {
        sayInto(file, words);
        const auto ran = ctl("speech hear '" + file + "' --json");
        INFO(words << ran.out);
        CHECK(ran.exit == 0);
        CHECK(ran.json().at("accepted") == true);
        CHECK(ran.json().at("text") == words);
        return ran.json().at("intent");
    };
    CHECK(heard("torque two five newton metres") ==
          json{{"kind", "reading"}, {"quantity", "torque"}, {"value", 25}, {"unit", "N.m"}});
    CHECK(heard("front tyre one point eight bar") ==
          json{{"kind", "reading"}, {"quantity", "front tyre"}, {"value", 1.8}, {"unit", "bar"}});
    CHECK(heard("does not match") == json{{"kind", "command"}, {"name", "does not match"}});
    CHECK(heard("bag seven") == json{{"kind", "bag"}, {"number", 7}});
    CHECK(heard("grey with red tracer blade six point three stop lamp") == json{{"kind", "wire"},
                                                                                {"base", "GY"},
                                                                                {"tracer", "RD"},
                                                                                {"terminal", "blade 6.3"},
                                                                                {"function", "stop lamp"}});
    CHECK(heard("orange") == json{{"kind", "wire"}, {"base", "OG"}});
}

TEST_CASE("speech hear rejects what the grammar does not have, with exit 1 and the reason") {
    const tests::Scratch scratch;
    const std::string file = scratch / "said.wav";
    sayInto(file, "could you hold the ladder for a minute");
    const auto ran = ctl("speech hear '" + file + "' --json");
    CHECK(ran.exit == 1);
    CHECK(ran.json().at("accepted") == false);
    CHECK_FALSE(ran.json().contains("intent"));
    CHECK(ran.json().at("message").get<std::string>().find("say it again") != std::string::npos);
    CHECK(ctl("speech hear '" + file + "'").exit == 1);
    tests::write(file, "no sound");
    CHECK(ctl("speech hear '" + file + "'").exit == 2);
    CHECK(ctl("speech hear '" + scratch / "none.wav" + "'").err.find("none.wav") != std::string::npos);
    CHECK(ctl("speech").exit == 2);
}

TEST_CASE("speech say reads a job back as text and as sound") {
    const tests::Scratch scratch;
    const std::string store = " --store '" + scratch / "shop" + "'";
    REQUIRE(ctl("demo --only-shop" + store).exit == 0);
    const auto text = ctl("speech say 2026-031" + store);
    CHECK(text.exit == 0);
    CHECK(text.out.find("torque two point five newton metres") != std::string::npos);
    CHECK(text.out.find("screw, M five, sixteen millimetres") != std::string::npos);
    CHECK(text.out.find("place one, ") != std::string::npos);
    const std::string wav = scratch / "read-back.wav";
    const auto said = ctl("speech say 2026-024 --json --wav '" + wav + "'" + store);
    CHECK(said.exit == 0);
    CHECK(said.json().at("sentences").back() == "nothing to read back");
    const auto sound = platform::readSound(wav);
    REQUIRE(sound);
    CHECK(sound->size() > platform::earRate);
    CHECK(ctl("speech say 2026-031 --pace 9" + store).exit == 2);
    CHECK(ctl("speech say 1999-001" + store).exit != 0);
}
