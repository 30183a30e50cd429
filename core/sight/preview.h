// What is said of a picture while it is aimed, and which of several is kept: is it sharp, is it held still,
// is something white in it. Classical and cheap, some milliseconds a picture, without the image libraries.
// Pure functions: any thread.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace undercowl::sight {

// 8-bit sRGB, interleaved RGB, rows from the top, no gaps between rows. Does not own the pixels.
// Precondition of what takes one: 3 * width * height bytes, width and height not negative.
struct Preview {
    std::span<const std::uint8_t> rgb;
    int width{};
    int height{};
};

// Brightness alone, 0 to 255 as coded; rows from the top.
struct Grey {
    std::vector<std::uint8_t> levels; // width * height
    int width{};
    int height{};

    [[nodiscard]] int at(int x, int y) const {
        return levels[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                      static_cast<std::size_t>(x)];
    }
};

// Luma by the weights of ITU-R BT.709, averaged over areas so that the longer side is 'longest' pixels or,
// where the picture is smaller, as it is.
[[nodiscard]] Grey greyOf(const Preview& picture, int longest);

// The middle of a picture, half as wide and half as high: what the phone is pointed at.
[[nodiscard]] Grey middleOf(const Grey& picture);

// How steep the edges are: the share of an edge's contrast that lies between two neighbouring pixels, 0 to 1,
// mean over all edges with contrast; of upright and of level edges the softer, since a hand moves one way.
// Sensor noise and the number of edges hardly change it, blur and movement do; so does the size, hence only
// pictures of one size are compared. Nothing where there are too few edges to tell.
[[nodiscard]] std::optional<double> sharpness(const Grey& picture);

// Below this a preview of some 1000 pixels is out of focus, or smeared. Chosen on the photos of tests/photos,
// blurred step by step (tests/sight/preview_test.cpp).
inline constexpr double sharpEnough = 0.18;

// How far all of the picture moved between two, in parts of its width; about right up to 0.03, beyond that
// only more than that. From the change of each pixel and how steep the picture is there (Horn and Schunck
// 1981, the brightness constancy equation), after the mean brightness of both was made equal. 0 where nothing
// has contrast. Precondition: both of one size.
[[nodiscard]] double moved(const Grey& before, const Grey& now);

// Whether something bright without a colour of its own is in view, which tells the colour of the light:
// paper, a card, a white housing, bare aluminium. What has no colour is judged as the camera balanced the
// picture, and under the light that the brightest patch suggests (Land and McCann 1971) within what a camera
// leaves of it. What covers less than a hundredth of the picture does not count.
// docs/camera.md says how often it was right.
[[nodiscard]] bool whiteInView(const Preview& picture);

} // namespace undercowl::sight
