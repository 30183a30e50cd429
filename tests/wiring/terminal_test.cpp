#include "core/wiring/terminal.h"

#include <catch2/catch.hpp>

using namespace undercowl::wiring;

TEST_CASE("Terminals read back from the text that they are written as") {
    for (const Terminal& terminal :
         {Terminal{TerminalKind::Blade, 6.3}, Terminal{TerminalKind::Receptacle, 2.8},
          Terminal{TerminalKind::Bullet, {}}, Terminal{TerminalKind::BulletSocket, 3.9},
          Terminal{TerminalKind::Ring, 5.0}, Terminal{TerminalKind::Splice, {}}, Terminal{}})
        CHECK(terminalFromText(text(terminal)) == terminal);
    CHECK(text({TerminalKind::Blade, 6.3}) == "blade 6.3");
    CHECK(text({TerminalKind::Ring, 5.0}) == "ring 5");
    CHECK(terminalFromText("blade 6,3") == Terminal{TerminalKind::Blade, 6.3});
}

TEST_CASE("What is no terminal is refused") {
    for (const char* text :
         {"blad", "blade x", "blade -1", "blade 0", "blade 600", "blade 6.3 4", " ", "6.3", "blade nan"})
        CHECK_FALSE(terminalFromText(text));
}
