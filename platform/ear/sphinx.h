// One PocketSphinx decoder with one grammar.
#pragma once

#include "core/talk/expression.h"

#include <memory>
#include <span>
#include <string>
#include <tl/expected.hpp>

struct ps_decoder_s;

namespace undercowl::platform {

class Sphinx {
public:
    struct Best {
        std::string text; // empty when nothing fits
        int score{};      // logarithm to the base 1.0001 of the likelihood of the whole
        int frames{};     // of 10 ms
    };

    // For the sentences of the grammar.
    [[nodiscard]] static tl::expected<Sphinx, std::string> forGrammar(const talk::Expression& grammar);
    // For any row of phones: what speech in general scores, whatever it says.
    [[nodiscard]] static tl::expected<Sphinx, std::string> forPhones();

    [[nodiscard]] Best decode(std::span<const short> samples);

private:
    struct Free {
        void operator()(ps_decoder_s* decoder) const;
    };
    explicit Sphinx(ps_decoder_s* decoder) : decoder_(decoder) {}
    [[nodiscard]] static tl::expected<Sphinx, std::string> open();

    std::unique_ptr<ps_decoder_s, Free> decoder_;
};

} // namespace undercowl::platform
