#include "core/sight/reader.h"

#include "core/sight/follow.h"
#include "core/sight/judge.h"
#include "core/sight/pixels.h"
#include "core/sight/ribbon.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>

namespace undercowl::sight {
namespace {

constexpr int across = 11;
constexpr double middle = 0.76; // of the width: the rims take on the background's colour

} // namespace

struct Reader::State {
    explicit State(Photo opened)
        : photo(std::move(opened)), linear(toLinearLight(photo.pixels().rgb)),
          lab(smoothLab(photo.pixels().rgb)), around(surroundingsOf(linear)) {}

    [[nodiscard]] double scale() const { return photo.pixels().scale; }
    [[nodiscard]] Point inWork(const Point& p) const { return {p.x * scale(), p.y * scale()}; }
    [[nodiscard]] Point inPhoto(const Point& p) const { return {p.x / scale(), p.y / scale()}; }

    [[nodiscard]] bool contains(const Point& p) const {
        return p.x >= 0.0 && p.y >= 0.0 && p.x < photo.width() && p.y < photo.height();
    }

    void measureCard(const Card& card) {
        const cv::Rect whole(0, 0, linear.cols, linear.rows);
        const cv::Rect box =
            cv::Rect(int(card.box.x * scale()), int(card.box.y * scale()),
                     int(std::ceil(card.box.width * scale())), int(std::ceil(card.box.height * scale()))) &
            whole;
        if (box.empty() || card.reflectance <= 0.0)
            return;
        const cv::Scalar mean = cv::mean(linear(box));
        if (std::max({mean[0], mean[1], mean[2]}) > 0.95 || std::min({mean[0], mean[1], mean[2]}) < 0.004)
            return; // burnt out or black: it says nothing
        around.white = cv::Vec3d(mean[0], mean[1], mean[2]) * (1.0 / card.reflectance);
    }

    [[nodiscard]] WireReading read(const Tube& tube, const Point& at) const {
        WireReading reading;
        reading.at = at;
        reading.widthPx = tube.width / scale();
        reading.plainness = tube.strength;
        for (const Point& p : tube.centre)
            reading.path.push_back(inPhoto(p));
        judge(straighten(linear, tube, across, middle), tube.width / scale(), tube.strength, around, reading);
        return reading;
    }

    Photo photo;
    cv::Mat linear;
    cv::Mat lab;
    Surroundings around;
};

Reader::Reader(Photo photo, ReadOptions options) : state_(std::make_unique<State>(std::move(photo))) {
    if (options.card)
        state_->measureCard(*options.card);
    for (const Confirmed& wire : options.confirmed)
        confirm(wire);
}

Reader::~Reader() = default;
Reader::Reader(Reader&&) noexcept = default;
Reader& Reader::operator=(Reader&&) noexcept = default;

void Reader::confirm(const Confirmed& wire) {
    if (!state_->contains(wire.at) || state_->around.white)
        return;
    const auto tube = findTube(state_->lab, state_->inWork(wire.at));
    const auto seen = tube ? summarise(straighten(state_->linear, *tube, across, middle)) : std::nullopt;
    // Only what is nearly neutral tells the colour of the light, and white tells it best.
    if (!seen || wire.wire.base != colour::Insulation::WH)
        return;
    constexpr double whiteInsulation = 0.75; // reflectance; from memory
    state_->around.white = seen->base * (1.0 / whiteInsulation);
}

tl::expected<WireReading, std::string> Reader::tap(Point at) {
    if (!state_->contains(at))
        return tl::unexpected(std::string("the tap lies outside the photo: tap on the photo"));
    if (const auto tube = findTube(state_->lab, state_->inWork(at)))
        return state_->read(*tube, at);
    WireReading none;
    none.at = at;
    none.doubts.push_back(Doubt::NoWireFound);
    return none;
}

tl::expected<std::vector<WireReading>, std::string> Reader::sweep(const Polyline& along,
                                                                  const Cancelled& cancelled) {
    Polyline stroke;
    for (const Point& p : along) {
        if (!state_->contains(p))
            return tl::unexpected(std::string("the stroke leaves the photo: keep it inside"));
        if (stroke.empty() || !(stroke.back() == state_->inWork(p)))
            stroke.push_back(state_->inWork(p));
    }
    if (stroke.size() < 2)
        return tl::unexpected(std::string("the stroke needs two different points: draw it across the wires"));
    std::vector<WireReading> readings;
    for (const Crossing& crossing : findCrossings(state_->lab, stroke)) {
        if (cancelled && cancelled())
            return std::vector<WireReading>{};
        readings.push_back(state_->read(crossing.tube, state_->inPhoto(crossing.at)));
    }
    return readings;
}

} // namespace undercowl::sight
