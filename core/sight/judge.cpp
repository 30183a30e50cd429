#include "core/sight/judge.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>

namespace undercowl::sight {
namespace {

constexpr std::size_t mostCandidates = 20;
constexpr double narrower = 0.93;                // of the width: a second view
constexpr std::size_t tracers = insulations + 1; // the last is none
using Posterior = std::array<std::array<double, tracers>, insulations>;

// How often a base colour is met, against what the networks have learned from. Turquoise is hardly ever used
// for insulation in vehicles (common practice, no source), while many a green is bluish, and cameras make it
// more so.
constexpr double turquoiseIsRare = 0.2;

// Base and tracer are never of one colour.
Posterior posteriorOf(const ColourOdds& odds) {
    Posterior posterior{};
    const double most = *std::max_element(odds.begin(), odds.begin() + insulations) +
                        *std::max_element(odds.begin() + insulations, odds.end());
    double total = 0.0;
    for (std::size_t b = 0; b < insulations; ++b) {
        const double met = colour::allInsulations.at(b) == colour::Insulation::TQ ? turquoiseIsRare : 1.0;
        for (std::size_t t = 0; t < tracers; ++t)
            if (t != b)
                total += posterior.at(b).at(t) = met * std::exp(odds.at(b) + odds.at(insulations + t) - most);
    }
    for (auto& row : posterior)
        for (double& p : row)
            p /= total;
    return posterior;
}

void add(Posterior& sum, const Posterior& part, double weight) {
    for (std::size_t b = 0; b < insulations; ++b)
        for (std::size_t t = 0; t < tracers; ++t)
            sum.at(b).at(t) += weight * part.at(b).at(t);
}

struct Best {
    std::size_t base{};
    std::size_t tracer{};
    friend bool operator==(const Best&, const Best&) = default;
};

Best bestOf(const Posterior& posterior) {
    Best best;
    for (std::size_t b = 0; b < insulations; ++b)
        for (std::size_t t = 0; t < tracers; ++t)
            if (posterior.at(b).at(t) > posterior.at(best.base).at(best.tracer))
                best = {b, t};
    return best;
}

std::vector<Candidate> candidatesOf(const Posterior& posterior) {
    std::vector<Candidate> candidates;
    for (std::size_t b = 0; b < insulations; ++b)
        for (std::size_t t = 0; t < tracers; ++t) {
            colour::WireColour wire{colour::allInsulations.at(b), std::nullopt};
            if (t < insulations)
                wire.tracer = colour::allInsulations.at(t);
            candidates.push_back({wire, posterior.at(b).at(t)});
        }
    std::sort(candidates.begin(), candidates.end(),
              [](const Candidate& a, const Candidate& b) { return a.probability > b.probability; });
    candidates.resize(mostCandidates);
    return candidates;
}

// The same wire seen from its other end.
Strip turnedRound(const Strip& strip) {
    constexpr int bothWays = -1;
    Strip turned;
    cv::flip(strip.rgb, turned.rgb, bothWays);
    cv::flip(strip.seen, turned.seen, bothWays);
    return turned;
}

struct Exposure {
    double seen{};    // columns of the strip that were followed
    double burnt{};   // share of the pixels that are burnt out
    double darkest{}; // brightest channel of the middle pixels, 0 to 255: its upper quartile
};

Exposure exposureOf(const Strip& strip) {
    Exposure exposure;
    std::vector<int> levels;
    int burnt = 0;
    for (int column = 0; column < strip.seen.cols; ++column) {
        if (strip.seen.at<uchar>(stripAcross / 2, column) == 0)
            continue;
        exposure.seen += 1.0;
        for (int row = stripAcross / 4; row < stripAcross * 3 / 4; ++row) {
            const auto& pixel = strip.rgb.at<cv::Vec3b>(row, column);
            levels.push_back(std::max({pixel[0], pixel[1], pixel[2]}));
            burnt += std::min({pixel[0], pixel[1], pixel[2]}) >= 252 ? 1 : 0;
        }
    }
    if (levels.empty())
        return exposure;
    exposure.burnt = double(burnt) / double(levels.size());
    const auto quartile = levels.begin() + std::ptrdiff_t(levels.size() * 3 / 4);
    std::nth_element(levels.begin(), quartile, levels.end());
    exposure.darkest = *quartile;
    return exposure;
}

// What could make a wire look like another, whatever the networks say.
std::vector<Doubt> hindrances(const Exposure& exposure, double widthPx) {
    std::vector<Doubt> doubts;
    if (exposure.burnt > 0.35)
        doubts.push_back(Doubt::Glare);
    if (exposure.darkest < 24)
        doubts.push_back(Doubt::Shadow);
    if (widthPx < 4.0)
        doubts.push_back(Doubt::TooThin);
    if (exposure.seen < 10)
        doubts.push_back(Doubt::Hidden);
    return doubts;
}

// What the judges say of one wire, whose views weigh alike.
class Bench {
public:
    Bench(const LightCodes& light, const White& white) : light_(light), white_(white) {}

    [[nodiscard]] Posterior ask(std::size_t judge, const Strip& strip) const {
        return posteriorOf(colourOddsOf(judge, strip, light_, white_));
    }

    void see(const Strip& view) {
        for (std::size_t i = 0; i < judges; ++i)
            add(sums_.at(i), ask(i, view), 1.0);
        views_ += 1.0;
    }

    // The mean of several opinions is more doubtful than any of them need be (a linear pool is
    // underconfident); the power was chosen on photos kept back and on real ones.
    [[nodiscard]] Posterior mean() const {
        constexpr double power = 1.7;
        Posterior mean{};
        for (const Posterior& sum : sums_)
            add(mean, sum, 1.0 / (views_ * double(judges)));
        double total = 0.0;
        for (auto& row : mean)
            for (double& p : row)
                total += p = std::pow(p, power);
        for (auto& row : mean)
            for (double& p : row)
                p /= total;
        return mean;
    }

    [[nodiscard]] bool agreed() const {
        return std::all_of(sums_.begin(), sums_.end(),
                           [&](const Posterior& sum) { return bestOf(sum) == bestOf(sums_.front()); });
    }

    // The probability that the most doubtful judge gives to the answer of the first.
    [[nodiscard]] double least() const {
        const Best first = bestOf(sums_.front());
        double least = 1.0;
        for (const Posterior& sum : sums_)
            least = std::min(least, sum.at(first.base).at(first.tracer) / views_);
        return least;
    }

private:
    const LightCodes& light_;
    const White& white_;
    std::array<Posterior, judges> sums_{};
    double views_{};
};

// A tracer that is turned away here may show further along the wire. Only a plain answer is doubted so, and
// only by a part that is as plainly of the same base: the wire may have been lost on the way there.
// One judge looks first: where it sees none, the others need not.
void lookFurther(const Bench& bench, const std::function<std::vector<Strip>()>& further,
                 Posterior& posterior) {
    constexpr double plainly = 0.9;
    constexpr double believed = 0.9;
    const Best here = bestOf(posterior);
    if (here.tracer + 1 != tracers)
        return;
    for (const Strip& strip : further()) {
        Posterior part = bench.ask(0, strip);
        const Best there = bestOf(part);
        if (there.base != here.base || there.tracer + 1 == tracers)
            continue;
        for (std::size_t i = 1; i < judges; ++i)
            add(part, bench.ask(i, strip), 1.0);
        if (part.at(there.base).at(there.tracer) < plainly * double(judges))
            continue;
        double& plain = posterior.at(here.base).back();
        posterior.at(there.base).at(there.tracer) += believed * plain;
        plain *= 1.0 - believed;
        return;
    }
}

bool isNeutral(colour::Insulation base) {
    return base == colour::Insulation::BK || base == colour::Insulation::GY || base == colour::Insulation::WH;
}

} // namespace

void judge(const Views& views, double widthPx, double strength, const LightCodes& light, const White& white,
           WireReading& reading) {
    Bench bench(light, white);
    constexpr double plainly = 0.93; // of every judge: a second view would change nothing
    const Strip first = views.atTap(1.0);
    bench.see(first);
    if (!bench.agreed() || bench.least() <= plainly)
        bench.see(turnedRound(views.atTap(narrower)));
    Posterior posterior = bench.mean();
    lookFurther(bench, views.further, posterior);
    reading.candidates = candidatesOf(posterior);
    reading.doubts = hindrances(exposureOf(first), widthPx);
    // Chosen on photos kept back: as many as can be called sure with none wrong among them. A thin grey
    // tracer on black passes for a highlight or for white, and grey in a coloured shadow for turquoise, so of
    // black and turquoise more is asked.
    const colour::WireColour& answer = reading.candidates.front().wire;
    const bool black =
        answer.base == colour::Insulation::BK && (!answer.tracer || answer.tracer == colour::Insulation::GY ||
                                                  answer.tracer == colour::Insulation::WH);
    // The ground between two wires passes for one of its own colour beyond doubt, but hardly ever for so
    // plain a wire. Paper and shadows are neutral, so of white, grey and black wires more is asked.
    const double plainWire = isNeutral(answer.base) ? 0.9 : 0.8;
    const bool mistakable = black || answer.base == colour::Insulation::TQ;
    const double enough = mistakable ? 0.98 : 0.91;
    const double enoughForEach = mistakable ? 0.90 : 0.55;
    reading.sure = reading.doubts.empty() && bench.agreed() && strength > plainWire &&
                   bench.least() > enoughForEach && reading.candidates.front().probability > enough;
    if (reading.sure)
        return;
    if (white[3] == 0.0F)
        reading.doubts.push_back(Doubt::NoWhiteInView);
    const bool close = reading.candidates[1].probability > 0.3 * reading.candidates[0].probability;
    reading.doubts.push_back(close ? Doubt::CloseColours : Doubt::NotProven);
}

} // namespace undercowl::sight
