// The learned networks that find wires and judge their colours. Only core/sight includes this. They are
// learned by tests/sight/train/learn.py and built into the library: nothing is loaded from disk.
#pragma once

#include <opencv2/core.hpp>

#include <array>
#include <cstddef>
#include <functional>
#include <vector>

namespace undercowl::sight {

// What is told of every second pixel of a picture. It is worked out piece by piece, where somebody looks: a
// piece takes some tens of milliseconds. For one thread at a time.
class Fields {
public:
    struct Cell {
        float wire;       // probability of being on a wire, 0 to 1
        float dx, dy;     // from there to the wire's centre line, pixels
        float cos2, sin2; // of twice the wire's direction
        float halfWidth;  // pixels
    };

    explicit Fields(const cv::Mat& rgb); // CV_8UC3

    [[nodiscard]] int columns() const { return columns_; }
    [[nodiscard]] int rows() const { return rows_; }
    // Stands for the place (2 column + 1.5, 2 row + 1.5) of the picture.
    [[nodiscard]] const Cell& cell(int column, int row);

    // Works out all that is not known yet, until 'cancelled' answers true.
    void workAll(const std::function<bool()>& cancelled);

private:
    void work(int pieceColumn, int pieceRow);

    cv::Mat padded_; // the picture with its rims mirrored
    int columns_;
    int rows_;
    int piecesAcross_;
    std::vector<Cell> cells_;
    std::vector<char> known_; // for each piece
};

// A wire pulled straight: rows across it, columns along it.
inline constexpr int stripAcross = 20;
inline constexpr int stripAlong = 128;
inline constexpr double stripSpan = 1.4;       // widths that the rows cover
inline constexpr double stripStep = 1.0 / 8.0; // widths from column to column

inline constexpr std::size_t judges = 3;
inline constexpr std::size_t insulations = 14;

// What each judge makes of the light of the whole picture: 16 numbers each.
using LightCodes = std::array<std::array<float, 16>, judges>;
[[nodiscard]] LightCodes lightOf(const cv::Mat& rgb);

// What a perfect white would have: log of red to green, log of blue to green, log of green, in linear light,
// and 1; all 0 where it is not known.
using White = std::array<float, 4>;

// Log odds of each base, then of each tracer, the last for none; by each judge.
using ColourOdds = std::array<float, insulations + insulations + 1>;

struct Strip {
    cv::Mat rgb;  // CV_8UC3, stripAcross x stripAlong
    cv::Mat seen; // CV_8UC1, 255 where it belongs to the wire's neighbourhood and 0 beyond what was followed
};

// What one judge, below 'judges', makes of a strip: some milliseconds.
[[nodiscard]] ColourOdds colourOddsOf(std::size_t judge, const Strip& strip, const LightCodes& light,
                                      const White& white);

} // namespace undercowl::sight
