#include "core/sight/judge.h"

#include "core/sight/nets.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace undercowl::sight {
namespace {

constexpr std::size_t mostCandidates = 20;

// Base and tracer are never of one colour: what looks so is a plain wire.
std::vector<Candidate> candidatesOf(const Structure& structure, const Shares& base, const Shares& other) {
    std::vector<Candidate> candidates;
    for (std::size_t b = 0; b < insulations; ++b) {
        double plain = structure.plain * base[b];
        for (std::size_t t = 0; t < insulations; ++t) {
            const double striped =
                structure.tracer * base[b] * other[t] + structure.exchanged * other[b] * base[t];
            if (t == b)
                plain += striped;
            else
                candidates.push_back({{colour::allInsulations.at(b), colour::allInsulations.at(t)}, striped});
        }
        candidates.push_back({{colour::allInsulations.at(b), std::nullopt}, plain});
    }
    std::sort(candidates.begin(), candidates.end(),
              [](const Candidate& a, const Candidate& b) { return a.probability > b.probability; });
    candidates.resize(mostCandidates);
    return candidates;
}

} // namespace

void judge(const cv::Mat& strip, double widthPx, double strength, const Surroundings& around,
           WireReading& reading) {
    const auto summary = summarise(strip);
    if (!summary) {
        reading.doubts.push_back(Doubt::BurntOut);
        return;
    }
    const Shares base = colourShares(summary->base, around);
    const Shares other = colourShares(summary->other, around);
    reading.candidates = candidatesOf(structureOf(*summary, base, other, strength), base, other);

    constexpr double darkest = 0.008; // linear light
    if (summary->clipped > 0.4)
        reading.doubts.push_back(Doubt::Glare);
    if (std::max({summary->base[0], summary->base[1], summary->base[2]}) < darkest)
        reading.doubts.push_back(Doubt::Shadow);
    if (widthPx < 4.0)
        reading.doubts.push_back(Doubt::TooThin);
    if (strip.rows < 6)
        reading.doubts.push_back(Doubt::Hidden);
    // Of the answers that these networks are most certain of, one in twenty is still wrong on photos that
    // they did not learn from. So none is called sure, and the mechanic looks at the wire itself.
    reading.sure = false;
    if (!around.white)
        reading.doubts.push_back(Doubt::NoWhiteInView);
    const bool close = reading.candidates[1].probability > 0.3 * reading.candidates[0].probability;
    reading.doubts.push_back(close ? Doubt::CloseColours : Doubt::NotProven);
}

} // namespace undercowl::sight
