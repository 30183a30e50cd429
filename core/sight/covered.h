// Which part of a picture belongs to wires that were followed. Only core/sight includes this.
#pragma once

#include "core/sight/strip.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

namespace undercowl::sight {

// Which cells belong to a wire that was followed.
class Covered {
public:
    Covered(int columns, int rows) : mask_(cv::Mat::zeros(rows, columns, CV_8UC1)) {}

    // So much of the wire's width.
    void add(const Tube& tube, double share) {
        std::vector<cv::Point> points;
        for (const Point& p : tube.centre)
            points.emplace_back(cellOf(p));
        cv::polylines(mask_, points, false, 255, std::max(1, int(std::lround(share * tube.width / 2.0))));
    }
    [[nodiscard]] bool at(int column, int row) const { return mask_.at<uchar>(row, column) != 0; }
    [[nodiscard]] bool at(const Point& p) const {
        const cv::Point cell = cellOf(p);
        return at(std::clamp(cell.x, 0, mask_.cols - 1), std::clamp(cell.y, 0, mask_.rows - 1));
    }
    [[nodiscard]] double shareOf(const Polyline& line) const {
        int inside = 0;
        for (const Point& p : line)
            inside += at(p) ? 1 : 0;
        return double(inside) / double(line.size());
    }

private:
    static cv::Point cellOf(const Point& p) { return {int((p.x - 0.5) / 2.0), int((p.y - 0.5) / 2.0)}; }
    cv::Mat mask_;
};

} // namespace undercowl::sight
