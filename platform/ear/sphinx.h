// A PocketSphinx decoder with the grammar: an acoustic model that was trained with human voices.
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
        int score{};      // of the whole, in the library's unit: about a tenth of a natural logarithm
        int frames{};     // of 10 ms
    };

    // The error says what is missing.
    [[nodiscard]] static tl::expected<Sphinx, std::string> open(const talk::Expression& grammar);

    // The sentence of the grammar that fits best. Its score has a penalty for every choice of the grammar,
    // and can only be compared with scores of the same.
    [[nodiscard]] Best decode(std::span<const short> samples);

    // How well exactly these words fit, without a penalty: to compare sentences with each other. Without text
    // when they do not fit at all.
    [[nodiscard]] Best fit(std::span<const short> samples, const std::string& sentence);

private:
    struct Free {
        void operator()(ps_decoder_s* decoder) const;
    };
    explicit Sphinx(ps_decoder_s* decoder) : decoder_(decoder) {}

    std::unique_ptr<ps_decoder_s, Free> decoder_;
};

} // namespace undercowl::platform
