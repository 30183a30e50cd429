// What was meant by what was said.
#pragma once

#include "core/job/model.h"

#include <array>
#include <cstdint>
#include <string_view>
#include <variant>

namespace undercowl::talk {

// None of them does by itself what cannot be undone.
enum class Command : std::uint8_t {
    Next,
    Again,
    Back,
    Done,
    DoesNotMatch,
    Photo,
    Memo,
    Stop,
    Undo,
    Slower,
};

inline constexpr std::array allCommands{Command::Next,         Command::Again, Command::Back, Command::Done,
                                        Command::DoesNotMatch, Command::Photo, Command::Memo, Command::Stop,
                                        Command::Undo,         Command::Slower};

// What a spoken reading may be of.
enum class Measured : std::uint8_t { Torque, FrontTyre, RearTyre, Battery, Tread };

inline constexpr std::array allMeasured{Measured::Torque, Measured::FrontTyre, Measured::RearTyre,
                                        Measured::Battery, Measured::Tread};

// The value keeps the digits that were said: "one point eight zero" was read more finely than "one point
// eight".
struct SpokenReading {
    Measured what{};
    job::TypedValue value;

    friend bool operator==(const SpokenReading&, const SpokenReading&) = default;
};

struct SpokenBag {
    int number{}; // 1 to 999

    friend bool operator==(const SpokenBag&, const SpokenBag&) = default;
};

// Of the wire only what may be said is filled in: colour, terminal, function.
struct SpokenWire {
    wiring::Wire wire;

    friend bool operator==(const SpokenWire&, const SpokenWire&) = default;
};

using Intent = std::variant<Command, SpokenReading, SpokenBag, SpokenWire>;

// The words by which they are said, which are their names in JSON too: "does not match", "front tyre".
[[nodiscard]] std::string_view name(Command command);
[[nodiscard]] std::string_view name(Measured what);

} // namespace undercowl::talk
