#include "core/sight/networks.h"

#include "core/sight/weights.h"

#include <opencv2/dnn.hpp>
#include <opencv2/imgproc.hpp>

#include <algorithm>
#include <cmath>
#include <mutex>

namespace undercowl::sight {
namespace {

cv::dnn::Net netFrom(std::span<const unsigned char> weights) {
    cv::dnn::Net net =
        cv::dnn::readNetFromONNX(reinterpret_cast<const char*>(weights.data()), weights.size());
    net.setPreferableBackend(cv::dnn::DNN_BACKEND_OPENCV);
    net.setPreferableTarget(cv::dnn::DNN_TARGET_CPU);
    return net;
}

// A network keeps its last input and output, so only one reading at a time may use it.
struct Networks {
    std::mutex one;
    cv::dnn::Net finder = netFrom(finderWeights());
    std::array<cv::dnn::Net, judges> light{netFrom(lightWeights(0)), netFrom(lightWeights(1)),
                                           netFrom(lightWeights(2))};
    std::array<cv::dnn::Net, judges> colours{netFrom(colourWeights(0)), netFrom(colourWeights(1)),
                                             netFrom(colourWeights(2))};
};

Networks& networks() {
    static Networks all;
    return all;
}

// Pieces overlap by what a place's answer hangs on, so that no seam shows.
constexpr int piece = 320; // pixels of the picture
constexpr int margin = 64;
constexpr int pieceCells = piece / 2;

// Red, green, blue and whether it is seen, 0 to 1.
void fillPlanes(const Strip& strip, float* cell) {
    constexpr int cells = stripAcross * stripAlong;
    for (int row = 0; row < stripAcross; ++row)
        for (int column = 0; column < stripAlong; ++column, ++cell) {
            const auto& pixel = strip.rgb.at<cv::Vec3b>(row, column);
            const bool seen = strip.seen.at<uchar>(row, column) != 0;
            for (int channel = 0; channel < 3; ++channel)
                cell[channel * cells] = seen ? float(pixel[channel]) / 255.0F : 0.0F;
            cell[3 * cells] = seen ? 1.0F : 0.0F;
        }
}

} // namespace

Fields::Fields(const cv::Mat& rgb)
    : columns_((rgb.cols + 1) / 2), rows_((rgb.rows + 1) / 2),
      piecesAcross_((columns_ + pieceCells - 1) / pieceCells),
      cells_(std::size_t(columns_) * std::size_t(rows_)),
      known_(std::size_t(piecesAcross_) * std::size_t((rows_ + pieceCells - 1) / pieceCells)) {
    const auto beyond = [](int side) { return (side + piece - 1) / piece * piece + margin - side; };
    cv::copyMakeBorder(rgb, padded_, margin, beyond(rgb.rows), margin, beyond(rgb.cols),
                       cv::BORDER_REFLECT_101);
}

const Fields::Cell& Fields::cell(int column, int row) {
    const int across = column / pieceCells;
    const int down = row / pieceCells;
    if (known_[std::size_t(down) * std::size_t(piecesAcross_) + std::size_t(across)] == 0)
        work(across, down);
    return cells_[std::size_t(row) * std::size_t(columns_) + std::size_t(column)];
}

void Fields::workAll(const std::function<bool()>& cancelled) {
    for (int i = 0; i < int(known_.size()) && !(cancelled && cancelled()); ++i)
        if (known_[std::size_t(i)] == 0)
            work(i % piecesAcross_, i / piecesAcross_);
}

void Fields::work(int pieceColumn, int pieceRow) {
    const cv::Rect cut(pieceColumn * piece, pieceRow * piece, piece + 2 * margin, piece + 2 * margin);
    const cv::Mat blob = cv::dnn::blobFromImage(padded_(cut), 1.0 / 255.0, {}, {}, false, false, CV_32F);
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    nets.finder.setInput(blob);
    const cv::Mat out = nets.finder.forward();
    for (int row = 0; row < pieceCells && pieceRow * pieceCells + row < rows_; ++row)
        for (int column = 0; column < pieceCells && pieceColumn * pieceCells + column < columns_; ++column) {
            const auto at = [&](int channel) {
                return out.ptr<float>(0, channel)[(row + margin / 2) * out.size[3] + column + margin / 2];
            };
            constexpr float scale = 8.0F; // the network speaks in eights of pixels
            cells_[std::size_t(pieceRow * pieceCells + row) * std::size_t(columns_) +
                   std::size_t(pieceColumn * pieceCells + column)] = {
                1.0F / (1.0F + std::exp(-at(0))), scale * at(1), scale * at(2), at(3), at(4),
                scale * std::exp(at(5))};
        }
    known_[std::size_t(pieceRow) * std::size_t(piecesAcross_) + std::size_t(pieceColumn)] = 1;
}

LightCodes lightOf(const cv::Mat& rgb) {
    cv::Mat small;
    cv::resize(rgb, small, {64, 48}, 0, 0, cv::INTER_AREA);
    const cv::Mat blob = cv::dnn::blobFromImage(small, 1.0 / 255.0, {}, {}, false, false, CV_32F);
    LightCodes codes{};
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    for (std::size_t i = 0; i < judges; ++i) {
        nets.light.at(i).setInput(blob);
        const cv::Mat out = nets.light.at(i).forward();
        std::copy_n(out.ptr<float>(), codes.at(i).size(), codes.at(i).begin());
    }
    return codes;
}

ColourOdds colourOddsOf(std::size_t judge, const Strip& strip, const LightCodes& light, const White& white) {
    constexpr int cells = stripAcross * stripAlong;
    constexpr int colours = 4; // red, green, blue, seen
    const int lights = int(light[0].size() + white.size());
    const std::array<int, 4> shape{1, colours + lights, stripAcross, stripAlong};
    const std::array<int, 4> lightShape{1, lights, 1, 1};
    cv::Mat planes(int(shape.size()), shape.data(), CV_32F);
    cv::Mat code(int(lightShape.size()), lightShape.data(), CV_32F);
    fillPlanes(strip, planes.ptr<float>());
    std::copy(light.at(judge).begin(), light.at(judge).end(), code.ptr<float>());
    std::copy(white.begin(), white.end(), code.ptr<float>() + light.at(judge).size());
    for (int channel = 0; channel < lights; ++channel)
        std::fill_n(planes.ptr<float>(0, colours + channel), cells, code.ptr<float>()[channel]);
    Networks& nets = networks();
    const std::lock_guard lock(nets.one);
    nets.colours.at(judge).setInput(planes, "planes");
    nets.colours.at(judge).setInput(code, "light");
    const cv::Mat out = nets.colours.at(judge).forward();
    ColourOdds odds{};
    std::copy_n(out.ptr<float>(), odds.size(), odds.begin());
    return odds;
}

} // namespace undercowl::sight
