// From sentences to sound, without a loudspeaker: for files, and for tests of the ear.
#pragma once

#include <span>
#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace undercowl::platform {

struct Speech {
    std::vector<short> samples; // one channel
    int rate{};                 // samples a second
};

// English, one sentence after the other with a pause between them. 'pace' stretches the words: 1 as the voice
// speaks, 1.5 half as slow again; from 0.5 to 3. The error says what the voice could not do.
[[nodiscard]] tl::expected<Speech, std::string> speak(std::span<const std::string> sentences,
                                                      double pace = 1);

} // namespace undercowl::platform
