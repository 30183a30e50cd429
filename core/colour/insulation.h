// The colours that wire insulation comes in, and how they are written.
//
// Codes are those of IEC 60757 (BK BN RD OG YE GN BU VT GY WH PK TQ); LBU and LGN, light blue and light
// green, are vehicle practice and not in the standard. A base with a tracer is written base first, joined by
// a solidus: "GY/RD".
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace undercowl::colour {

enum class Insulation : std::uint8_t { BK, BN, RD, OG, YE, GN, BU, VT, GY, WH, PK, TQ, LBU, LGN };

inline constexpr std::array allInsulations{Insulation::BK,  Insulation::BN, Insulation::RD, Insulation::OG,
                                           Insulation::YE,  Insulation::GN, Insulation::BU, Insulation::VT,
                                           Insulation::GY,  Insulation::WH, Insulation::PK, Insulation::TQ,
                                           Insulation::LBU, Insulation::LGN};

// "GY". Never fails.
[[nodiscard]] std::string_view code(Insulation colour);

// The English word, "light blue". A shell in another language translates the code instead.
[[nodiscard]] std::string_view englishWord(Insulation colour);

// Reads a code in any letter case. Nothing if it is not one of the fourteen.
[[nodiscard]] std::optional<Insulation> insulationFromCode(std::string_view text);

// What colour a wire is: a base and, where a thin stripe runs along it, a tracer.
struct WireColour {
    Insulation base{};
    std::optional<Insulation> tracer;

    friend bool operator==(const WireColour&, const WireColour&) = default;
};

// "GY" or "GY/RD".
[[nodiscard]] std::string code(const WireColour& colour);

// "grey" or "grey with red tracer".
[[nodiscard]] std::string englishWords(const WireColour& colour);

// Reads "GY", "gy/rd" or "GY-RD". Nothing if either part is unknown.
[[nodiscard]] std::optional<WireColour> wireColourFromCode(std::string_view text);

} // namespace undercowl::colour
