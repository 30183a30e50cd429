// The sentences of a grammar, laid over what a network finds likely.
#pragma once

#include "core/talk/expression.h"
#include "platform/ear/network.h"

#include <string>
#include <vector>

namespace undercowl::platform {

// Made once from the grammar: its words as positions, and which may follow which (V. M. Glushkov, 1961).
class Lattice {
public:
    explicit Lattice(const talk::Expression& grammar);

    // The sentence of the grammar with the likeliest way through; empty when the sound is too short for any.
    [[nodiscard]] std::string best(const Likely& likely) const;

    // The logarithm of the probability that exactly these words were said, over all the ways in which they
    // may lie in time. Minus infinity when the sound is too short, or a word is not of the grammar.
    [[nodiscard]] double log(const Likely& likely, const std::string& sentence) const;

    // What the network hears when no grammar holds it: words, and "..." for those that the grammar does not
    // have.
    [[nodiscard]] std::string free(const Likely& likely) const;

    // Sorted; the class of a word is its place counted from 1.
    [[nodiscard]] const std::vector<std::string>& words() const { return words_; }

private:
    std::vector<std::string> words_;
    std::vector<std::size_t> classOf_;             // of each position
    std::vector<std::vector<std::size_t>> before_; // positions that may stand before each
    std::vector<bool> first_;                      // whether a sentence may begin with it
    std::vector<bool> last_;
};

} // namespace undercowl::platform
