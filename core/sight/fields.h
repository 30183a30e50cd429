// Where wires are in a picture. Only core/sight includes this.
#pragma once

#include <opencv2/core.hpp>

#include <functional>
#include <vector>

namespace undercowl::sight {

// What is told of a place of a picture.
struct Cell {
    float wire;       // probability of being on a wire, 0 to 1
    float dx, dy;     // from there to the wire's centre line, pixels
    float cos2, sin2; // of twice the wire's direction
    float halfWidth;  // pixels
};

// One view of a picture, as it is or made smaller. It is worked out piece by piece, where somebody asks: a
// piece takes some tens of milliseconds.
class View {
public:
    View(const cv::Mat& rgb, double share); // CV_8UC3; of its size

    [[nodiscard]] double share() const { return share_; }
    [[nodiscard]] int columns() const { return columns_; }
    [[nodiscard]] int rows() const { return rows_; }
    // Stands for the place (2 column + 1.5, 2 row + 1.5) of the picture that was looked at.
    [[nodiscard]] const Cell& cell(int column, int row);

private:
    void work(int pieceColumn, int pieceRow);

    double share_;
    cv::Mat padded_; // the picture with its rims mirrored
    int columns_;
    int rows_;
    int piecesAcross_;
    std::vector<Cell> cells_;
    std::vector<char> known_; // for each piece
};

// What is told of every second pixel of a picture. For one thread at a time.
//
// Wide wires side by side, black ones among them, are known from their whole: where the near view shows no
// wire, what is plainly seen from further away can be asked for. It knows thin gaps less well.
class Fields {
public:
    explicit Fields(const cv::Mat& rgb); // CV_8UC3

    [[nodiscard]] int columns() const { return near().columns(); }
    [[nodiscard]] int rows() const { return near().rows(); }
    // Stands for the place (2 column + 1.5, 2 row + 1.5) of the picture; in its pixels.
    [[nodiscard]] Cell cell(int column, int row) { return views_.front().cell(column, row); }
    // As that, or what is plainly seen from further away where that shows no wire.
    [[nodiscard]] Cell cellFromAfar(int column, int row);

    // Works out all that is not known yet, until 'cancelled' answers true.
    void workAll(const std::function<bool()>& cancelled);

private:
    [[nodiscard]] const View& near() const { return views_.front(); }
    void stepBack(); // makes the views from further away, unless they are made

    cv::Mat rgb_;
    std::vector<View> views_; // the nearest first
};

} // namespace undercowl::sight
