// The ear of this system: two kinds of listening that have to agree.
//
// The networks know noise, but learned from synthesised voices only; PocketSphinx knows human voices, but
// little noise. Where both hear the same sentence it is nearly always right. Where they do not, the networks'
// sentence is taken only when they are sure of it and PocketSphinx finds that it fits about as well as its
// own.
#include "core/talk/grammar.h"
#include "core/talk/parse.h"
#include "platform/ear/ear.h"
#include "platform/ear/features.h"
#include "platform/ear/lattice.h"
#include "platform/ear/network.h"
#include "platform/ear/sphinx.h"
#include "platform/ear/weights.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <utility>

namespace undercowl::platform {
namespace {

// Set by voices that the networks in question had never heard (tests/platform/ear/train/README.md), so that
// at most one sentence of forty under an engine's noise is taken wrongly. Logarithms of the networks'
// probability, and the most by which PocketSphinx may like another sentence better, for each 10 ms.
constexpr double leastAgreed = -12;
constexpr double leastLikely = -3;
constexpr double mostDoubtIfLikely = 0.3;
constexpr double leastSure = -0.4;
constexpr double mostDoubtIfSure = 4;

// Of the wake phrase, by the same voices. Wider, since it does no more than open the ear.
constexpr double leastCalled = -4;
constexpr double leastSureOfCall = -1; // then PocketSphinx is not asked
constexpr double mostDoubtOfCall = 4;

// Mean square of what the networks see, which changes as somebody speaks: measured on tests/bench it is 0.24
// or more for speech under an engine, 0.09 to 0.12 for noise alone, less than 0.01 for a tone that stands.
constexpr double leastChange = 0.05;

double change(const Features& seen) {
    double sum = 0;
    for (const float value : seen.values)
        sum += static_cast<double>(value) * value;
    return sum / std::max(1.0, static_cast<double>(seen.values.size()));
}

struct Candidate {
    std::string text;
    double log{};         // mean over the networks
    double fitPerFrame{}; // by PocketSphinx
};

// At one level, with a whisper of noise: pure digital silence between words upsets the means that the model
// takes.
std::vector<short> prepared(std::span<const float> samples) {
    constexpr float level = 0.6F * std::numeric_limits<short>::max();
    constexpr float whisper = 8;
    float peak = 0;
    for (const float sample : samples)
        peak = std::max(peak, std::abs(sample));
    const float gain = peak > 0 ? level / peak : 0;
    std::minstd_rand random{7};
    std::uniform_real_distribution<float> dither{-whisper, whisper};
    std::vector<short> out;
    out.reserve(samples.size());
    for (const float sample : samples)
        out.push_back(static_cast<short>(std::lround(sample * gain + dither(random))));
    return out;
}

// Where the quietest stretch of so many samples begins, by steps of 10 ms.
std::size_t quietest(std::span<const float> samples, std::size_t length) {
    constexpr std::size_t step = earRate / 100;
    std::size_t best = 0;
    double least = std::numeric_limits<double>::max();
    for (std::size_t at = 0; at + length <= samples.size(); at += step) {
        double power = 0;
        for (const float sample : samples.subspan(at, length))
            power += static_cast<double>(sample) * sample;
        if (power < least) {
            least = power;
            best = at;
        }
    }
    return best;
}

// The sentence with a quarter of a second more before and after it: the words at its ends are heard better
// with a pause round them. The pause is made of the quietest 60 ms to and fro, so that the noise of the place
// goes on.
Samples widened(std::span<const float> samples) {
    constexpr std::size_t pause = earRate / 4;
    constexpr std::size_t piece = earRate * 6 / 100;
    if (samples.size() < piece)
        return {samples.begin(), samples.end()};
    const auto quiet = samples.subspan(quietest(samples, piece), piece);
    Samples gap(pause);
    for (std::size_t i = 0; i < pause; ++i) {
        const std::size_t at = i % (2 * piece);
        gap[i] = quiet[at < piece ? at : 2 * piece - 1 - at];
    }
    Samples out{gap};
    out.insert(out.end(), samples.begin(), samples.end());
    out.insert(out.end(), gap.begin(), gap.end());
    return out;
}

class TwofoldEar : public Ear {
public:
    explicit TwofoldEar(Sphinx sphinx)
        : sphinx_(std::move(sphinx)), lattice_(talk::grammar()),
          // Beside all else that may be said: "turquoise battery positive" is a wire.
          waking_(talk::choice({talk::grammar(), talk::phrase(talk::wakePhrase())})) {
        for (std::size_t i = 0; i < earNets; ++i)
            networks_.emplace_back(earWeights(i));
    }

    Heard hear(std::span<const float> given) override;
    bool called(std::span<const float> given) override;

    // Whether the networks were made with the words of this grammar.
    [[nodiscard]] bool fits() const {
        return std::all_of(networks_.begin(), networks_.end(),
                           [this](const Network& network) {
                               return network.classes() == lattice_.words().size() + 2;
                           }) &&
               waking_.words() == lattice_.words();
    }

private:
    [[nodiscard]] std::vector<Candidate> candidates(const std::vector<Likely>& likely) const;
    [[nodiscard]] double log(const std::vector<Likely>& likely, const std::string& sentence) const;
    // By how much, for each 10 ms, PocketSphinx finds that another candidate fits better than the first.
    [[nodiscard]] double doubt(std::span<const short> sound, std::vector<Candidate>& candidates);

    Sphinx sphinx_;
    Lattice lattice_;
    Lattice waking_;
    std::vector<Network> networks_;
};

double TwofoldEar::log(const std::vector<Likely>& likely, const std::string& sentence) const {
    double sum = 0;
    for (const Likely& one : likely)
        sum += lattice_.log(one, sentence);
    return sum / static_cast<double>(likely.size());
}

// What each network hears, the likeliest first.
std::vector<Candidate> TwofoldEar::candidates(const std::vector<Likely>& likely) const {
    std::vector<Candidate> all;
    for (const Likely& one : likely) {
        std::string text = lattice_.best(one);
        const bool known =
            std::any_of(all.begin(), all.end(), [&](const Candidate& c) { return c.text == text; });
        if (text.empty() || known)
            continue;
        const double probability = log(likely, text);
        all.push_back({std::move(text), probability, 0});
    }
    return all;
}

double TwofoldEar::doubt(std::span<const short> sound, std::vector<Candidate>& candidates) {
    double best = std::numeric_limits<double>::lowest();
    for (Candidate& candidate : candidates) {
        const Sphinx::Best fit = sphinx_.fit(sound, candidate.text);
        candidate.fitPerFrame = fit.text.empty() ? std::numeric_limits<double>::lowest() / 2
                                                 : static_cast<double>(fit.score) / std::max(1, fit.frames);
        if (&candidate != &candidates.front())
            best = std::max(best, candidate.fitPerFrame);
    }
    return best - candidates.front().fitPerFrame;
}

Heard rejected(Heard heard, NotHeard why, std::string message) {
    heard.why = why;
    heard.message = std::move(message);
    return heard;
}

Heard TwofoldEar::hear(std::span<const float> given) {
    Heard heard;
    const Samples samples = widened(given);
    const Features seen = features(samples);
    std::vector<Likely> likely;
    likely.reserve(networks_.size());
    for (const Network& network : networks_)
        likely.push_back(network.listen(seen));
    std::vector<Candidate> found = candidates(likely);
    if (found.empty() || change(features(given)) < leastChange || lattice_.free(likely.front()).empty())
        return rejected(heard, NotHeard::Silence, "nothing was heard: say it again, closer");

    const std::vector<short> sound = prepared(samples);
    const std::string bySphinx = sphinx_.decode(sound).text;
    const bool named =
        std::any_of(found.begin(), found.end(), [&](const Candidate& c) { return c.text == bySphinx; });
    if (!named && !bySphinx.empty())
        found.push_back({bySphinx, log(likely, bySphinx), 0});
    std::stable_sort(found.begin(), found.end(),
                     [](const Candidate& a, const Candidate& b) { return a.log > b.log; });
    const Candidate top = found.front();
    heard.text = top.text;

    bool sure = top.log >= leastAgreed;
    if (sure && top.text != bySphinx) {
        const double doubtful = top.log >= leastLikely ? doubt(sound, found) : mostDoubtIfSure + 1;
        sure = doubtful <= mostDoubtIfLikely || (top.log >= leastSure && doubtful <= mostDoubtIfSure);
    }
    if (!sure)
        return rejected(heard, NotHeard::Unsure, "that may have been something else: say it again");
    auto meant = talk::parse(top.text);
    if (!meant) {
        const bool number = meant.error().kind == talk::Refusal::Kind::Implausible;
        return rejected(heard, number ? NotHeard::Implausible : NotHeard::Unknown, meant.error().message);
    }
    heard.intent = std::move(*meant);
    return heard;
}

bool TwofoldEar::called(std::span<const float> given) {
    const std::string phrase{talk::wakePhrase()};
    if (change(features(given)) < leastChange)
        return false;
    const Samples samples = widened(given);
    const Features seen = features(samples);
    double sum = 0;
    bool freely = false;
    for (const Network& network : networks_) {
        const Likely likely = network.listen(seen);
        if (waking_.best(likely) != phrase)
            return false;
        sum += waking_.log(likely, phrase);
        freely = freely || waking_.free(likely) == phrase;
    }
    const double log = sum / static_cast<double>(networks_.size());
    if (!freely || log < leastCalled)
        return false;
    if (log >= leastSureOfCall)
        return true;
    const std::vector<short> sound = prepared(samples);
    const auto fits = [&](const std::string& words) {
        const Sphinx::Best fit = sphinx_.fit(sound, words);
        return fit.text.empty() ? std::numeric_limits<double>::lowest()
                                : static_cast<double>(fit.score) / std::max(1, fit.frames);
    };
    const std::string other = sphinx_.decode(sound).text;
    return other.empty() || fits(other) - fits(phrase) <= mostDoubtOfCall;
}

} // namespace

tl::expected<std::unique_ptr<Ear>, std::string> openEar() {
    auto sphinx = Sphinx::open(talk::grammar());
    if (!sphinx)
        return tl::unexpected(sphinx.error());
    auto ear = std::make_unique<TwofoldEar>(std::move(*sphinx));
    if (!ear->fits())
        return tl::unexpected(
            std::string{"the ear's networks were made with other words than the grammar has: make "
                        "them anew (tests/platform/ear/train/README.md)"});
    return ear;
}

} // namespace undercowl::platform
