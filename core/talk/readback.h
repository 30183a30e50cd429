// The read-back of a job, sentence by sentence: wiring, then what is to be refitted, with its torques.
#pragma once

#include "core/talk/sentence.h"
#include "core/wiring/readback.h"

#include <optional>
#include <vector>

namespace undercowl::talk {

// One place. What contradicts or looks alike is said in the same breath: a hand that has heard the colour
// already moves.
[[nodiscard]] Sentence wireSentence(const wiring::ReadBackItem& item, const job::Id& gathering);

// "stop, it should be black": what is said beside an answer of kind 'reads', AsFound or AsItShouldBe, when
// the other of the two names another colour, or, with none, that no wire is there.
[[nodiscard]] Phrase contradiction(wiring::Answer reads, const std::optional<colour::WireColour>& other);

// The connector's name, then its places in order; places that nobody read are told as such. 'prefer' as for
// wiring::readBack.
[[nodiscard]] std::vector<Sentence> wiringSentences(const wiring::Gathering& gathering, wiring::Half half,
                                                    wiring::Answer prefer);

// One hose, vent or cable: where it runs, where its ends sit, how it was adjusted. That nobody wrote it down
// is said too, and whether there is a photo to look at instead.
[[nodiscard]] Sentence lineSentence(const job::Job& job, const job::StripStep& step);

// What the step says, its cautions among it, and then one sentence for each of its torques. 'number' counts
// the steps that are read.
[[nodiscard]] std::vector<Sentence> stepSentences(const job::Job& job, const job::StripStep& step,
                                                  int number);

// The torques of the step alone; that none is known is said too.
[[nodiscard]] std::vector<Sentence> torqueSentences(const job::StripStep& step);

// Said after the last wire, hose or cable: how many of them do not match, and of how many nothing was said.
[[nodiscard]] Sentence endSentence(int failing, int open);

// The whole of it: every half of every gathering that has places, then the steps that are not refitted yet in
// the order of refitting. Never empty: with nothing to read it says so.
[[nodiscard]] std::vector<Sentence> readBackSentences(const job::Job& job, wiring::Answer prefer);

} // namespace undercowl::talk
