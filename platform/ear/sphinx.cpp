#include "platform/ear/sphinx.h"

#include "core/talk/grammar.h"
#include "platform/ear/pronunciations.h"

#include <err.h>
#include <pocketsphinx.h>

#include <array>
#include <cstdlib>
#include <map>
#include <string_view>

namespace undercowl::platform {
namespace {

constexpr std::array phones{"AA", "AE", "AH", "AO", "AW", "AY", "B",  "CH", "D", "DH", "EH", "ER", "EY",
                            "F",  "G",  "HH", "IH", "IY", "JH", "K",  "L",  "M", "N",  "NG", "OW", "OY",
                            "P",  "R",  "S",  "SH", "T",  "TH", "UH", "UW", "V", "W",  "Y",  "Z",  "ZH"};

std::string modelFolder() {
    const char* given = std::getenv("UNDERCOWL_EAR_MODEL");
    return given != nullptr ? given : UNDERCOWL_EAR_MODEL;
}

tl::unexpected<std::string> cannotOpen() {
    return tl::unexpected(
        "cannot open the English acoustic model in " + modelFolder() +
        ": install the package pocketsphinx-en-us, or name its folder in UNDERCOWL_EAR_MODEL");
}

} // namespace

void Sphinx::Free::operator()(ps_decoder_s* decoder) const {
    ps_free(decoder);
}

tl::expected<Sphinx, std::string> Sphinx::open() {
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
    return Sphinx{decoder};
}

tl::expected<Sphinx, std::string> Sphinx::forGrammar(const talk::Expression& grammar) {
    auto sphinx = open();
    if (!sphinx)
        return sphinx;
    std::map<std::string_view, int> ways;
    for (const Pronunciation& way : pronunciations()) {
        std::string name{way.word};
        if (const int number = ++ways[way.word]; number > 1)
            name += "(" + std::to_string(number) + ")";
        if (ps_add_word(sphinx->decoder_.get(), name.c_str(), std::string{way.phones}.c_str(), FALSE) < 0)
            return tl::unexpected("the acoustic model has no sounds for '" + name + "'");
    }
    if (ps_set_jsgf_string(sphinx->decoder_.get(), "said", talk::grammarText(grammar).c_str()) != 0 ||
        ps_set_search(sphinx->decoder_.get(), "said") != 0)
        return tl::unexpected(std::string{"the grammar does not fit the acoustic model"});
    return sphinx;
}

tl::expected<Sphinx, std::string> Sphinx::forPhones() {
    auto sphinx = open();
    if (!sphinx)
        return sphinx;
    std::string loop = "#JSGF V1.0;\ngrammar phones;\npublic <said> = (";
    for (const char* phone : phones) {
        const std::string name = std::string{"phone"} + phone;
        if (ps_add_word(sphinx->decoder_.get(), name.c_str(), phone, FALSE) < 0)
            return tl::unexpected(std::string{"the acoustic model has no phone "} + phone);
        loop += (loop.back() == '(' ? " " : " | ") + name;
    }
    loop += " )+;\n";
    if (ps_set_jsgf_string(sphinx->decoder_.get(), "phones", loop.c_str()) != 0 ||
        ps_set_search(sphinx->decoder_.get(), "phones") != 0)
        return tl::unexpected(std::string{"the row of phones does not fit the acoustic model"});
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

} // namespace undercowl::platform
