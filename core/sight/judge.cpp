#include "core/sight/judge.h"

#include "core/colour/distribution.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

namespace undercowl::sight {
namespace {

using colour::Insulation;
using colour::Lab;

struct Cluster {
    Lab colour;
    double share{};
};

std::vector<Lab> unclipped(const cv::Mat& strip, const Light& light) {
    std::vector<Lab> all;
    for (int y = 0; y < strip.rows; ++y)
        for (int x = 0; x < strip.cols; ++x) {
            const auto& v = strip.at<cv::Vec3f>(y, x);
            if (std::max({v[0], v[1], v[2]}) > 0.97F)
                continue; // no colour left
            all.push_back(colour::toLab(
                colour::LinearRgb{v[0] / light.white[0], v[1] / light.white[1], v[2] / light.white[2]}));
        }
    return all;
}

std::vector<Cluster> clusters(const std::vector<Lab>& pixels) {
    cv::Mat points(static_cast<int>(pixels.size()), 3, CV_32FC1);
    for (int i = 0; i < points.rows; ++i) {
        const Lab& lab = pixels[static_cast<std::size_t>(i)];
        points.at<float>(i, 0) =
            static_cast<float>(0.5 * lab.l); // lightness varies with shading: it counts half
        points.at<float>(i, 1) = static_cast<float>(lab.a);
        points.at<float>(i, 2) = static_cast<float>(lab.b);
    }
    cv::Mat labels;
    cv::Mat centres;
    cv::setRNGSeed(7); // the same photo gives the same answer
    cv::kmeans(points, 2, labels, {cv::TermCriteria::COUNT + cv::TermCriteria::EPS, 12, 0.5}, 2,
               cv::KMEANS_PP_CENTERS, centres);
    std::vector<Cluster> both(2);
    for (int i = 0; i < labels.rows; ++i)
        both[static_cast<std::size_t>(labels.at<int>(i))].share += 1.0 / labels.rows;
    for (int k = 0; k < 2; ++k)
        both[static_cast<std::size_t>(k)].colour = {2.0 * centres.at<float>(k, 0), centres.at<float>(k, 1),
                                                    centres.at<float>(k, 2)};
    std::sort(both.begin(), both.end(), [](const Cluster& a, const Cluster& b) { return a.share > b.share; });
    return both;
}

// The light is known only so far: flatten what the distributions say.
std::map<Insulation, double> posterior(const Lab& seen, double trust) {
    std::map<Insulation, double> weights;
    double sum = 0.0;
    for (const Insulation insulation : colour::allInsulations) {
        weights[insulation] = std::exp(trust * colour::logDensity(insulation, seen));
        sum += weights[insulation];
    }
    for (auto& [insulation, weight] : weights)
        weight /= sum;
    return weights;
}

} // namespace

void judge(const cv::Mat& strip, double widthPx, const Light& light, WireReading& reading) {
    const auto pixels = unclipped(strip, light);
    const double clear = double(pixels.size()) / double(strip.total());
    if (pixels.size() < 12) {
        reading.doubts.push_back(Doubt::BurntOut);
        return;
    }
    const auto found = clusters(pixels);
    const double chroma =
        std::hypot(found[0].colour.a - found[1].colour.a, found[0].colour.b - found[1].colour.b);
    const double lightness = std::abs(found[0].colour.l - found[1].colour.l);
    // Base and tracer differ in colour; shading and glare differ in lightness, mostly.
    const double striped =
        found[1].share < 0.08 ? 0.02 : 1.0 / (1.0 + std::exp(-0.15 * (chroma + 0.25 * lightness - 30.0)));
    const double trust = light.measured ? 0.9 : 0.6;
    const auto base = posterior(found[0].colour, trust);
    const auto stripe = posterior(found[1].colour, trust);
    for (const auto& [b, pb] : base) {
        double same = 0.0;
        for (const auto& [t, pt] : stripe) {
            if (t == b)
                same = pt;
            else
                reading.candidates.push_back({{b, t}, striped * pb * pt});
        }
        reading.candidates.push_back({{b, std::nullopt}, pb * (1.0 - striped + striped * same)});
    }
    std::sort(reading.candidates.begin(), reading.candidates.end(),
              [](const Candidate& a, const Candidate& b) { return a.probability > b.probability; });
    reading.candidates.resize(20);

    if (clear < 0.6)
        reading.doubts.push_back(Doubt::Glare);
    if (found[0].colour.l < 12.0)
        reading.doubts.push_back(Doubt::Shadow);
    if (widthPx < 4.0)
        reading.doubts.push_back(Doubt::TooThin);
    if (strip.rows < 6)
        reading.doubts.push_back(Doubt::Hidden);
    // These probabilities are not calibrated: of the answers above 0.995 one in four was wrong on photos of
    // our own. So no answer is called sure, and the mechanic looks at the wire itself.
    reading.sure = false;
    if (!light.measured)
        reading.doubts.push_back(Doubt::NoWhiteInView);
    if (reading.candidates[1].probability > 0.3 * reading.candidates[0].probability)
        reading.doubts.push_back(Doubt::CloseColours);
    if (reading.doubts.empty())
        reading.doubts.push_back(Doubt::CloseColours);
}

} // namespace undercowl::sight
