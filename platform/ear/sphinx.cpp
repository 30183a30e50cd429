#include "platform/ear/sphinx.h"

#include "core/talk/grammar.h"
#include "platform/ear/pronunciations.h"

#include <err.h>
#include <pocketsphinx.h>

#include <cstdlib>
#include <map>
#include <string_view>

namespace undercowl::platform {
namespace {

constexpr const char* wholeGrammar = "said";

std::string modelFolder() {
    const char* given = std::getenv("UNDERCOWL_EAR_MODEL");
    return given != nullptr ? given : UNDERCOWL_EAR_MODEL;
}

tl::unexpected<std::string> cannotOpen() {
    return tl::unexpected(
        "cannot open the English acoustic model in " + modelFolder() +
        ": install the package pocketsphinx-en-us, or name its folder in UNDERCOWL_EAR_MODEL");
}

bool search(ps_decoder_t* decoder, const char* name, const std::string& jsgf) {
    return ps_set_jsgf_string(decoder, name, jsgf.c_str()) == 0 && ps_set_search(decoder, name) == 0;
}

} // namespace

void Sphinx::Free::operator()(ps_decoder_s* decoder) const {
    ps_free(decoder);
}

tl::expected<Sphinx, std::string> Sphinx::open(const talk::Expression& grammar) {
    err_set_logfp(nullptr); // it writes pages to standard error
    // Beams wide enough for noise: a phrase is short and the grammar small.
    cmd_ln_t* config =
        cmd_ln_init(nullptr, ps_args(), TRUE, "-hmm", modelFolder().c_str(), "-bestpath", "no", "-beam",
                    "1e-60", "-wbeam", "1e-50", "-pbeam", "1e-60", "-maxhmmpf", "-1", nullptr);
    if (config == nullptr)
        return cannotOpen();
    ps_decoder_t* decoder = ps_init(config);
    cmd_ln_free_r(config);
    if (decoder == nullptr)
        return cannotOpen();
    Sphinx sphinx{decoder};
    std::map<std::string_view, int> ways;
    for (const Pronunciation& way : pronunciations()) {
        std::string name{way.word};
        if (const int number = ++ways[way.word]; number > 1)
            name += "(" + std::to_string(number) + ")";
        if (ps_add_word(decoder, name.c_str(), std::string{way.phones}.c_str(), FALSE) < 0)
            return tl::unexpected("the acoustic model has no sounds for '" + name + "'");
    }
    if (!search(decoder, wholeGrammar, talk::grammarText(grammar)))
        return tl::unexpected(std::string{"the grammar does not fit the acoustic model"});
    return sphinx;
}

Sphinx::Best Sphinx::decode(std::span<const short> samples) {
    ps_decoder_t* decoder = decoder_.get();
    ps_start_utt(decoder);
    ps_process_raw(decoder, samples.data(), samples.size(), FALSE, TRUE);
    ps_end_utt(decoder);
    Best best;
    int32 score = 0;
    if (const char* text = ps_get_hyp(decoder, &score); text != nullptr)
        best.text = text;
    best.score = score;
    best.frames = ps_get_n_frames(decoder);
    return best;
}

Sphinx::Best Sphinx::fit(std::span<const short> samples, const std::string& sentence) {
    Best best;
    if (search(decoder_.get(), "only", talk::grammarText(talk::phrase(sentence))))
        best = decode(samples);
    ps_set_search(decoder_.get(), wholeGrammar);
    return best;
}

} // namespace undercowl::platform
