// Edges of colour and lightness, and how well two of them fit the sides of a tube. Only core/sight includes
// this.
#pragma once

#include "core/sight/geometry.h"

#include <opencv2/core.hpp>

#include <array>

namespace undercowl::sight {

// A short piece of a tube: where, which way, how wide.
struct Piece {
    Point at;
    double angle{}; // of the centre line, radians
    double width{};
};

class Edges {
public:
    explicit Edges(const cv::Mat& rgb);

    [[nodiscard]] bool contains(const Point& p) const;

    // 0 (nothing) to 1: both sides have an edge of their own along the whole piece.
    [[nodiscard]] double sides(const Piece& piece) const;

private:
    [[nodiscard]] double across(const Point& p, double nx, double ny) const;

    cv::Mat gradients_; // dL/dx, da/dx, db/dx, dL/dy, da/dy, db/dy
};

} // namespace undercowl::sight
