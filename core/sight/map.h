// What the fields tell of a place of a picture, ready for whoever follows a wire. Only core/sight includes
// this.
#pragma once

#include "core/sight/fields.h"
#include "core/sight/geometry.h"

#include <opencv2/core.hpp>

#include <array>

namespace undercowl::sight {

// What the fields say of the wire at a place.
struct Seen {
    double wire{};  // probability
    Point centre;   // nearest point of the centre line
    Point along;    // unit direction; which of the two ways is arbitrary
    double width{}; // pixels
};

inline constexpr double onWire = 0.5;      // probability
inline constexpr double stillOnWire = 0.4; // while it is followed

inline double dot(const Point& a, const Point& b) {
    return a.x * b.x + a.y * b.y;
}

enum class From { Near, Afar };

// 'fields' and 'lab', as from smoothLab(), are of the same picture and outlive it.
class Map {
public:
    Map(Fields& fields, const cv::Mat& lab, From from = From::Near)
        : fields_(fields), lab_(lab), from_(from) {}

    // Five colours across the wire, its rims left out.
    using Section = std::array<cv::Vec3f, 5>;
    [[nodiscard]] Section section(const Point& centre, const Point& along, double width) const;

    [[nodiscard]] int columns() const { return fields_.columns(); }
    [[nodiscard]] int rows() const { return fields_.rows(); }
    static Point placeOf(int column, int row) { return {2.0 * column + 1.5, 2.0 * row + 1.5}; }
    [[nodiscard]] double wireAt(int column, int row) const { return told(column, row).wire; }
    [[nodiscard]] Seen cell(int column, int row) const;

    // The mean of the four cells around p, of those that speak of the same wire as the nearest.
    [[nodiscard]] Seen at(const Point& p) const;

    [[nodiscard]] bool contains(const Point& p) const {
        return p.x >= 0.0 && p.y >= 0.0 && p.x < 2.0 * columns() && p.y < 2.0 * rows();
    }

private:
    [[nodiscard]] Cell told(int column, int row) const {
        return from_ == From::Near ? fields_.cell(column, row) : fields_.cellFromAfar(column, row);
    }

    Fields& fields_;
    const cv::Mat& lab_;
    From from_;
};

} // namespace undercowl::sight
