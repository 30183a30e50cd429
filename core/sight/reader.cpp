#include "core/sight/reader.h"

#include "core/colour/spaces.h"
#include "core/sight/beside.h"
#include "core/sight/cross.h"
#include "core/sight/fields.h"
#include "core/sight/follow.h"
#include "core/sight/gather.h"
#include "core/sight/judge.h"
#include "core/sight/pixels.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace undercowl::sight {
namespace {

// The mean colour of a part of the picture, in linear light, 0 to 1.
cv::Vec3d linearMean(const cv::Mat& rgb, const cv::Rect& box) {
    static const std::array<double, 256> linear = [] {
        std::array<double, 256> table{};
        for (std::size_t i = 0; i < table.size(); ++i)
            table.at(i) = colour::decodeSrgb(double(i) / 255.0);
        return table;
    }();
    cv::Vec3d sum;
    for (int y = box.y; y < box.y + box.height; ++y)
        for (int x = box.x; x < box.x + box.width; ++x)
            for (int channel = 0; channel < 3; ++channel)
                sum[channel] += linear.at(rgb.at<cv::Vec3b>(y, x)[channel]);
    return sum * (1.0 / box.area());
}

// What white would have, from something neutral of a known reflectance; nothing when it is burnt out or
// black.
std::optional<White> whiteFrom(const cv::Vec3d& seen, double reflectance) {
    if (std::max({seen[0], seen[1], seen[2]}) > 0.95 || std::min({seen[0], seen[1], seen[2]}) < 0.004)
        return std::nullopt;
    return White{float(std::log(seen[0] / seen[1])), float(std::log(seen[2] / seen[1])),
                 float(std::log(seen[1] / reflectance)), 1.0F};
}

// The photo in one size.
struct Picture {
    Picture(const cv::Mat& pixels, double pixelsForEach)
        : rgb(pixels), lab(smoothLab(rgb)), fields(rgb), scale(pixelsForEach) {}

    [[nodiscard]] Point inWork(const Point& p) const { return {p.x * scale, p.y * scale}; }
    [[nodiscard]] Point inPhoto(const Point& p) const { return {p.x / scale, p.y / scale}; }

    cv::Mat rgb;
    cv::Mat lab;
    Fields fields;
    double scale; // of its pixels for each of the photo
};

// The finder tells of every second pixel, so that wires of eight are four places wide: side by side they run
// together, and the rim and the tracer of each weigh too little. Chosen on photos made smaller; a limit of 10
// to 16 and a factor of 1.5 to 2 do as well.
constexpr double thin = 14.0;   // pixels of the working picture
constexpr double nearer = 1.75; // times its size

// Of crossings or whole wires.
template<typename Found>
double usualWidth(const std::vector<Found>& all) {
    std::vector<double> widths;
    widths.reserve(all.size());
    for (const Found& found : all)
        widths.push_back(found.tube.width);
    const auto middle = widths.begin() + std::ptrdiff_t(widths.size() / 2);
    std::nth_element(widths.begin(), middle, widths.end());
    return widths.empty() ? 0.0 : *middle;
}

} // namespace

struct Reader::State {
    explicit State(Photo opened)
        : photo(std::move(opened)), whole(photo.pixels().rgb, photo.pixels().scale),
          light(lightOf(whole.rgb)) {}

    // Made when the first thin wire is met.
    [[nodiscard]] Picture& fromNearer() {
        if (!enlarged) {
            cv::Mat rgb;
            cv::resize(whole.rgb, rgb, {}, nearer, nearer, cv::INTER_CUBIC);
            enlarged.emplace(rgb, nearer * whole.scale);
        }
        return *enlarged;
    }

    // In which picture a wire so wide, in pixels of the photo, is looked at.
    [[nodiscard]] Picture& pictureFor(double widthPx) {
        return widthPx * whole.scale < thin ? fromNearer() : whole;
    }

    [[nodiscard]] bool contains(const Point& p) const {
        return p.x >= 0.0 && p.y >= 0.0 && p.x < photo.width() && p.y < photo.height();
    }

    // Without places that are said twice. Fails with the end of a sentence.
    [[nodiscard]] tl::expected<Polyline, std::string> stroke(const Polyline& along) const {
        Polyline inside;
        for (const Point& p : along) {
            if (!contains(p))
                return tl::unexpected(std::string("leaves the photo: keep it inside"));
            if (inside.empty() || !(inside.back() == p))
                inside.push_back(p);
        }
        return inside;
    }

    void measureCard(const Card& card) {
        const double scale = whole.scale;
        const cv::Rect box =
            cv::Rect(int(card.box.x * scale), int(card.box.y * scale), int(std::ceil(card.box.width * scale)),
                     int(std::ceil(card.box.height * scale))) &
            cv::Rect({}, whole.rgb.size());
        if (box.empty() || card.reflectance <= 0.0)
            return;
        if (const auto seen = whiteFrom(linearMean(whole.rgb, box), card.reflectance))
            white = *seen;
    }

    [[nodiscard]] WireReading read(Picture& picture, const Tube& tube, const Point& at) const {
        WireReading reading;
        reading.at = at;
        reading.widthPx = tube.width / picture.scale;
        reading.plainness = tube.strength;
        for (const Point& p : tube.centre)
            reading.path.push_back(picture.inPhoto(p));
        judge({[&](double share) { return straighten(picture.rgb, tube, share); },
               [&] { return straightenFurther(picture.rgb, tube); }},
              reading.widthPx, tube.strength, light, white, reading);
        // It may be no wire at all, which its colour does not tell: what passes for one is not long.
        constexpr double shortAsGhosts = 10.0; // widths
        if (reading.sure && lengthOf(tube.centre) < shortAsGhosts * tube.width &&
            hardlySeen(picture.fields, picture.lab, tube)) {
            reading.sure = false;
            reading.doubts.push_back(Doubt::NotProven);
        }
        return reading;
    }

    Photo photo;
    Picture whole;
    std::optional<Picture> enlarged;
    LightCodes light;
    White white{};
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

void Reader::lookOver(const Cancelled& cancelled) {
    state_->whole.fields.workAll(cancelled);
}

void Reader::confirm(const Confirmed& wire) {
    // Only what is nearly neutral tells the colour of the light, and white tells it best.
    if (!state_->contains(wire.at) || state_->white[3] != 0.0F || wire.wire.base != colour::Insulation::WH ||
        wire.wire.tracer)
        return;
    Picture& picture = state_->whole;
    const auto tube = findTube(picture.fields, picture.lab, picture.inWork(wire.at));
    if (!tube)
        return;
    const Point& middle = tube->centre[tube->anchor];
    const int half = std::max(1, int(tube->width / 6.0));
    const cv::Rect box = cv::Rect(int(middle.x) - half, int(middle.y) - half, 2 * half + 1, 2 * half + 1) &
                         cv::Rect({}, picture.rgb.size());
    constexpr double whiteInsulation = 0.75; // reflectance; from memory
    if (const auto seen =
            box.empty() ? std::nullopt : whiteFrom(linearMean(picture.rgb, box), whiteInsulation))
        state_->white = *seen;
}

tl::expected<WireReading, std::string> Reader::tap(Point at) {
    if (!state_->contains(at))
        return tl::unexpected(std::string("the tap lies outside the photo: tap on the photo"));
    Picture* picture = &state_->whole;
    auto tube = findTube(picture->fields, picture->lab, picture->inWork(at));
    if (tube && tube->width < thin) {
        Picture& closer = state_->fromNearer();
        if (auto same = findTube(closer.fields, closer.lab, closer.inWork(at))) {
            tube = std::move(same);
            picture = &closer;
        }
    }
    if (tube) {
        WireReading reading = state_->read(*picture, *tube, at);
        // The colour may be plain, which wire was meant is not.
        if (mayMeanAnother(picture->fields, picture->lab, *tube, picture->inWork(at))) {
            reading.sure = false;
            reading.doubts.push_back(Doubt::BesideWire);
        }
        return reading;
    }
    WireReading none;
    none.at = at;
    none.doubts.push_back(Doubt::NoWireFound);
    return none;
}

tl::expected<std::vector<WireReading>, std::string> Reader::sweep(const Polyline& along,
                                                                  const Cancelled& cancelled) {
    const auto inside = state_->stroke(along);
    if (!inside)
        return tl::unexpected("the stroke " + inside.error());
    const Polyline& stroke = *inside;
    if (stroke.size() < 2)
        return tl::unexpected(std::string("the stroke needs two different points: draw it across the wires"));
    const auto crossingsIn = [&stroke](Picture& picture) {
        Polyline line;
        for (const Point& p : stroke)
            line.push_back(picture.inWork(p));
        return findCrossings(picture.fields, picture.lab, line);
    };
    Picture* picture = &state_->whole;
    std::vector<Crossing> crossings = crossingsIn(*picture);
    if (usualWidth(crossings) < thin) {
        if (cancelled && cancelled())
            return std::vector<WireReading>{};
        if (auto closer = crossingsIn(state_->fromNearer()); !closer.empty()) {
            crossings = std::move(closer);
            picture = &state_->fromNearer();
        }
    }
    std::vector<WireReading> readings;
    for (const Crossing& crossing : crossings) {
        if (cancelled && cancelled())
            return std::vector<WireReading>{};
        readings.push_back(state_->read(*picture, crossing.tube, picture->inPhoto(crossing.at)));
    }
    return readings;
}

std::optional<WireReading> Reader::beside(const WireReading& from, Side side) {
    if (from.path.empty() || from.widthPx <= 0.0)
        return std::nullopt;
    Picture& picture = state_->pictureFor(from.widthPx);
    Polyline centre;
    for (const Point& p : from.path)
        centre.push_back(picture.inWork(p));
    const auto next = findBeside(picture.fields, picture.lab, centre, from.widthPx * picture.scale,
                                 picture.inWork(from.at), side == Side::After);
    if (!next)
        return std::nullopt;
    return state_->read(picture, next->tube, picture.inPhoto(next->at));
}

tl::expected<Proposal, std::string> Reader::propose(const Polyline& mouth, const Cancelled& cancelled) {
    const auto inside = state_->stroke(mouth);
    if (!inside)
        return tl::unexpected("the mouth of the connector " + inside.error());
    if (inside->size() == 1)
        return tl::unexpected(
            std::string("the mouth of the connector needs two different points: draw it across the wires"));
    Picture* picture = &state_->whole;
    Gathered all = gatherWires(picture->fields, picture->lab, cancelled);
    if (!all.wires.empty() && usualWidth(all.wires) < thin) {
        picture = &state_->fromNearer();
        all = gatherWires(picture->fields, picture->lab, cancelled);
    }
    Polyline line;
    for (const Point& p : *inside)
        line.push_back(picture->inWork(p));
    if (!line.empty())
        all.wires = fromMouth(std::move(all.wires), line);
    Proposal proposal;
    for (const WholeWire& wire : all.wires) {
        if (cancelled && cancelled())
            return Proposal{};
        WireReading& reading = proposal.wires.emplace_back(
            state_->read(*picture, wire.tube, picture->inPhoto(wire.tube.centre[wire.tube.anchor])));
        reading.path.clear();
        for (const Point& p : wire.path)
            reading.path.push_back(picture->inPhoto(p));
        proposal.perhaps.push_back(wire.perhaps);
    }
    for (const Point& p : all.unfollowed)
        if (line.empty() || distanceTo(line, p) < 100.0) // pixels of the picture: near the connector
            proposal.unfollowed.push_back(picture->inPhoto(p));
    return proposal;
}

} // namespace undercowl::sight
