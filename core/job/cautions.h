// The usual cautions, by key. Common practice, no source; the machine's manual, local law and licensed
// practice come first.
#pragma once

#include "core/job/model.h"

#include <span>
#include <string_view>
#include <vector>

namespace undercowl::job {

struct Caution {
    std::string_view key;     // "battery-negative-off"
    std::string_view english; // one sentence
};

[[nodiscard]] std::span<const Caution> cautions();
[[nodiscard]] std::string_view englishCaution(std::string_view key); // empty for an unknown key

// Keys of the cautions that belong before a step with this title, found by the words in it (brake, fuel,
// battery, wheel, coil ...). English words and the commonest of four other languages; a shell lets the
// mechanic add others by touch.
[[nodiscard]] std::vector<std::string> cautionsFor(std::string_view title);

} // namespace undercowl::job
