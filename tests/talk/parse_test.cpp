#include "core/talk/numbers.h"
#include "core/talk/parse.h"
#include "core/talk/speak.h"
#include "core/talk/vocabulary.h"
#include "core/units/unit.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace undercowl;
using namespace undercowl::talk;

namespace {

void comesBack(const Intent& intent) {
    const std::string words = spoken(intent);
    const auto parsed = parse(words);
    INFO(words);
    REQUIRE(parsed);
    CHECK(*parsed == intent);
}

Refusal::Kind refusal(std::string_view words) {
    const auto parsed = parse(words);
    INFO(words);
    REQUIRE_FALSE(parsed);
    return parsed.error().kind;
}

SpokenWire wire(colour::WireColour colour, wiring::Terminal terminal = {}, std::string function = {}) {
    SpokenWire said;
    said.wire.colour = colour;
    said.wire.terminal = terminal;
    said.wire.function = std::move(function);
    return said;
}

} // namespace

TEST_CASE("sentences of the workshop are understood") {
    using colour::Insulation;
    using wiring::TerminalKind;
    CHECK(parse("does not match") == Intent{Command::DoesNotMatch});
    CHECK(parse("torque two five newton metres") == Intent{SpokenReading{Measured::Torque, {"25", "N.m"}}});
    CHECK(parse("front tyre one point eight bar") ==
          Intent{SpokenReading{Measured::FrontTyre, {"1.8", "bar"}}});
    CHECK(parse("rear tyre thirty two p s i") == Intent{SpokenReading{Measured::RearTyre, {"32", "psi"}}});
    CHECK(parse("front tyre two hundred and twenty kilopascals") ==
          Intent{SpokenReading{Measured::FrontTyre, {"220", "kPa"}}});
    CHECK(parse("torque eighteen foot pounds") == Intent{SpokenReading{Measured::Torque, {"18", "lbf.ft"}}});
    CHECK(parse("battery twelve point six volts") == Intent{SpokenReading{Measured::Battery, {"12.6", "V"}}});
    CHECK(parse("battery one volt") == Intent{SpokenReading{Measured::Battery, {"1", "V"}}});
    CHECK(parse("tread two point one millimetres") == Intent{SpokenReading{Measured::Tread, {"2.1", "mm"}}});
    CHECK(parse("bag seven") == Intent{SpokenBag{7}});
    CHECK(parse("bag one two") == Intent{SpokenBag{12}});
    CHECK(parse("orange") == Intent{wire({Insulation::OG, {}})});
    CHECK(parse("light green with light blue tracer") == Intent{wire({Insulation::LGN, Insulation::LBU})});
    CHECK(parse("purple") == Intent{wire({Insulation::VT, {}})});
    CHECK(parse("grey with red tracer blade six point three stop lamp") ==
          Intent{wire({Insulation::GY, Insulation::RD}, {TerminalKind::Blade, 6.3}, "stop lamp")});
    CHECK(parse("black ring earth") == Intent{wire({Insulation::BK, {}}, {TerminalKind::Ring, {}}, "earth")});
    CHECK(parse("brown bullet socket") ==
          Intent{wire({Insulation::BN, {}}, {TerminalKind::BulletSocket, {}})});
    CHECK(parse("brown bullet four ignition coil") ==
          Intent{wire({Insulation::BN, {}}, {TerminalKind::Bullet, 4}, "ignition coil")});
}

TEST_CASE("what does not fit as a whole is refused") {
    for (const char* words : {"",
                              "hello",
                              "next next",
                              "does match",
                              "not match",
                              "bag",
                              "bag zero",
                              "bag one point five",
                              "bag zero seven",
                              "torque",
                              "torque newton metres",
                              "torque five",
                              "torque five volts",
                              "battery twelve bar",
                              "front tyre bar",
                              "tyre two bar",
                              "grey with tracer",
                              "grey with red",
                              "grey grey",
                              "with red tracer",
                              "grey with grey tracer",
                              "grey stop",
                              "grey blade blade",
                              "grey horn earth",
                              "blade six point three",
                              "grey ring sixty",
                              "stop lamp",
                              "green earth ring",
                              "bag one thousand"})
        CHECK(refusal(words) == Refusal::Kind::Unknown);
}

TEST_CASE("a number that nobody measures is taken for a misheard one") {
    CHECK(refusal("front tyre nine bar") == Refusal::Kind::Implausible);
    CHECK(refusal("front tyre two p s i") == Refusal::Kind::Implausible);
    CHECK(refusal("torque nine hundred newton metres") == Refusal::Kind::Implausible);
    CHECK(refusal("tread forty millimetres") == Refusal::Kind::Implausible);
    CHECK(parse("front tyre nine bar").error().message ==
          "front tyre 9 bar is not believed (0.3 to 6 bar): say it again");
}

TEST_CASE("a number of hundreds of digits is not understood") {
    std::string words = "front tyre";
    for (int digit = 0; digit < 400; ++digit)
        words += " two";
    CHECK(refusal(words + " bar") == Refusal::Kind::Unknown);
}

TEST_CASE("commands and bags come back from what is said of them") {
    for (const Command command : allCommands)
        comesBack(command);
    for (int number = 1; number <= 999; ++number)
        comesBack(SpokenBag{number});
}

TEST_CASE("readings in every unit come back from what is said of them") {
    for (const SpokenUnit& unit : spokenUnits()) {
        const auto known = units::findUnits(unit.symbol);
        CHECK(std::any_of(known.begin(), known.end(),
                          [&](const units::Unit& candidate) { return candidate.symbol() == unit.symbol; }));
        const int low = static_cast<int>(std::ceil(unit.low));
        const int high = static_cast<int>(std::floor(unit.high));
        for (int whole = low; whole <= high; ++whole) {
            comesBack(SpokenReading{unit.what, {std::to_string(whole), std::string{unit.symbol}}});
            if (whole < high)
                comesBack(
                    SpokenReading{unit.what, {std::to_string(whole) + ".05", std::string{unit.symbol}}});
        }
    }
}

TEST_CASE("wires in every colour, terminal and function come back from what is said of them") {
    for (const colour::Insulation base : colour::allInsulations) {
        comesBack(wire({base, {}}));
        for (const colour::Insulation tracer : colour::allInsulations) {
            if (tracer == base)
                continue;
            comesBack(wire({base, tracer}));
            for (const SpokenTerminal& terminal : spokenTerminals()) {
                comesBack(wire({base, tracer}, {terminal.kind, std::nullopt}));
                for (const std::string_view size : terminal.sizes)
                    for (const std::string_view function : spokenFunctions())
                        comesBack(wire({base, tracer}, {terminal.kind, std::stod(std::string{size})},
                                       std::string{function}));
            }
        }
    }
}
