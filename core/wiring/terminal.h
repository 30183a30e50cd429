// What sits at the end of a wire.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace undercowl::wiring {

enum class TerminalKind : std::uint8_t {
    Unknown,
    Blade,      // flat male tab, by width: 2.8, 4.8, 6.3, 9.5 mm
    Receptacle, // female, takes a blade of the given width
    Bullet,     // round male
    BulletSocket,
    Ring, // by hole, mm
    Fork,
    Pin, // of a moulded connector
    Socket,
    Splice, // crimped or soldered to other wires
    Bare,
};

struct Terminal {
    TerminalKind kind{TerminalKind::Unknown};
    std::optional<double> sizeMm; // blade width, bullet diameter or ring hole

    friend bool operator==(const Terminal&, const Terminal&) = default;
};

// "blade 6.3", "bullet", "ring 5"; empty for an unknown one. Entries and archives write a terminal in this
// way too.
[[nodiscard]] std::string text(const Terminal& terminal);

// Reads what text() writes; a comma is taken as the decimal sign too. Nothing when the kind is not known or
// the size is not a number above 0 and at most 50.
[[nodiscard]] std::optional<Terminal> terminalFromText(std::string_view text);

} // namespace undercowl::wiring
