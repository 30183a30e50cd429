#include "core/sight/fields.h"

#include "core/sight/networks.h"

#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace undercowl::sight {
namespace {

// Pieces overlap by what a place's answer hangs on, so that no seam shows.
constexpr int piece = 320; // pixels of the picture
constexpr int margin = 64;
constexpr int pieceCells = piece / 2;

constexpr float onWire = 0.5F; // probability; below it the views from further away are asked
// Chosen on photos kept back: from so sure on a view from further away is hardly ever wrong.
constexpr float plainly = 0.6F;
constexpr float inside = 0.9F; // of half the width: the rim is not told as well

cv::Mat smaller(const cv::Mat& rgb, double share) {
    if (share == 1.0)
        return rgb;
    cv::Mat small;
    cv::resize(rgb, small, {}, share, share, cv::INTER_AREA);
    return small;
}

} // namespace

View::View(const cv::Mat& rgb, double share) : share_(share) {
    const cv::Mat picture = smaller(rgb, share);
    columns_ = (picture.cols + 1) / 2;
    rows_ = (picture.rows + 1) / 2;
    piecesAcross_ = (columns_ + pieceCells - 1) / pieceCells;
    cells_.resize(std::size_t(columns_) * std::size_t(rows_));
    known_.resize(std::size_t(piecesAcross_) * std::size_t((rows_ + pieceCells - 1) / pieceCells));
    const auto beyond = [](int side) { return (side + piece - 1) / piece * piece + margin - side; };
    cv::copyMakeBorder(picture, padded_, margin, beyond(picture.rows), margin, beyond(picture.cols),
                       cv::BORDER_REFLECT_101);
}

const Cell& View::cell(int column, int row) {
    const int across = column / pieceCells;
    const int down = row / pieceCells;
    if (known_[std::size_t(down) * std::size_t(piecesAcross_) + std::size_t(across)] == 0)
        work(across, down);
    return cells_[std::size_t(row) * std::size_t(columns_) + std::size_t(column)];
}

void View::work(int pieceColumn, int pieceRow) {
    const cv::Rect cut(pieceColumn * piece, pieceRow * piece, piece + 2 * margin, piece + 2 * margin);
    const cv::Mat out = fieldsOf(padded_(cut));
    for (int row = 0; row < pieceCells && pieceRow * pieceCells + row < rows_; ++row)
        for (int column = 0; column < pieceCells && pieceColumn * pieceCells + column < columns_; ++column) {
            const auto* at = out.ptr<float>(row + margin / 2, column + margin / 2);
            constexpr float scale = 8.0F; // the network speaks in eights of pixels
            cells_[std::size_t(pieceRow * pieceCells + row) * std::size_t(columns_) +
                   std::size_t(pieceColumn * pieceCells + column)] = {
                1.0F / (1.0F + std::exp(-at[0])), scale * at[1], scale * at[2], at[3], at[4],
                scale * std::exp(at[5])};
        }
    known_[std::size_t(pieceRow) * std::size_t(piecesAcross_) + std::size_t(pieceColumn)] = 1;
}

Fields::Fields(const cv::Mat& rgb) : rgb_(rgb) {
    views_.emplace_back(rgb, 1.0);
}

void Fields::stepBack() {
    constexpr int leastSide = 160; // pixels; less shows no more
    if (rgb_.empty())
        return;
    for (const double share : {0.7, 0.5})
        if (share * std::min(rgb_.cols, rgb_.rows) >= leastSide)
            views_.emplace_back(rgb_, share);
    rgb_.release();
}

Cell Fields::cellFromAfar(int column, int row) {
    const Cell near = cell(column, row);
    if (near.wire >= onWire)
        return near;
    stepBack();
    for (std::size_t i = 1; i < views_.size(); ++i) {
        View& view = views_[i];
        const double share = view.share();
        const auto there = [&](int at, int count) {
            return std::clamp(int(std::lround((share * (2.0 * at + 1.5) - 1.5) / 2.0)), 0, count - 1);
        };
        const int farColumn = there(column, view.columns());
        const int farRow = there(row, view.rows());
        const Cell& far = view.cell(farColumn, farRow);
        if (far.wire < plainly || std::hypot(far.dx, far.dy) > inside * far.halfWidth)
            continue;
        const auto shift = [&](int at, int farAt) {
            return float((2.0 * farAt + 1.5) / share - (2.0 * at + 1.5));
        };
        const auto larger = float(1.0 / share);
        return {far.wire,
                larger * far.dx + shift(column, farColumn),
                larger * far.dy + shift(row, farRow),
                far.cos2,
                far.sin2,
                larger * far.halfWidth};
    }
    return near;
}

void Fields::workAll(const std::function<bool()>& cancelled) {
    stepBack();
    for (View& view : views_)
        for (int row = 0; row < view.rows(); row += pieceCells)
            for (int column = 0; column < view.columns(); column += pieceCells) {
                if (cancelled && cancelled())
                    return;
                (void)view.cell(column, row);
            }
}

} // namespace undercowl::sight
