// What putting a part back takes beyond the strip step backwards, and what that keeps the machine from: new
// parts every time, adjusting and bleeding afterwards, 'do not start', 'do not ride'.
//
// The suggestions are common practice, no source; the machine's manual, local law and licensed practice come
// first.
#pragma once

#include "core/job/model.h"

#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

// Found by the words of the title and of the hardware ("caliper", "split pin"). English words and the
// commonest of four other languages; the mechanic changes them by touch. Says nothing about words that it
// does not know: an empty answer is not a promise that nothing is needed.
[[nodiscard]] RefitNeeds suggestedNeeds(std::string_view title, const std::vector<Hardware>& hardware);

// Everything that is ever suggested: to be translated.
[[nodiscard]] std::vector<std::string_view> suggestions();

// What the mechanic said; otherwise what is suggested.
[[nodiscard]] RefitNeeds needsOf(const StripStep& step);

// Null when nothing was said of it yet.
[[nodiscard]] const SeenTo* seenTo(const StripStep& step, std::string_view what);

// Adjusting, bleeding, trying that nothing was said of yet, in the order in which it is named.
[[nodiscard]] std::vector<std::string> openAfterwards(const StripStep& step);

enum class Ban : std::uint8_t { Start, Ride };

// A ban and what it stands on. It holds from the strip step on, until the part is on again and everything
// afterwards was done. Something left out for a reason keeps 'do not ride' or 'do not start' standing: it has
// not been done.
struct Banned {
    Ban ban{};
    const StripStep* step{};          // owned by the job
    bool apart{};                     // the part is not on yet
    std::vector<std::string> missing; // what is to be done afterwards, once it is on
    bool leftOut{};                   // all that is missing was left out for a reason
};

// In the order of stripping; 'do not start' before 'do not ride'.
[[nodiscard]] std::vector<Banned> bans(const Job& job);

// Work that is open after refitting, whether it bans anything or not.
struct Afterwards {
    const StripStep* step{};
    std::string what;
};
[[nodiscard]] std::vector<Afterwards> openAfterwards(const Job& job); // of refitted steps

[[nodiscard]] std::string_view code(Ban ban); // "do not start", "do not ride"

} // namespace undercowl::job
