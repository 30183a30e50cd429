#include "tests/sight/reliability.h"

#include <cmath>
#include <cstdio>
#include <vector>

namespace undercowl::tests {

namespace {

constexpr double left = 60.0;
constexpr double top = 20.0;
constexpr double side = 400.0; // of the square, SVG units

double across(double share) {
    return left + side * share;
}

double down(double share) {
    return top + side * (1.0 - share);
}

template<class... Values>
std::string written(const char* format, Values... values) {
    std::vector<char> room(400);
    const int length = std::snprintf(room.data(), room.size(), format, values...);
    return {room.data(), static_cast<std::size_t>(length)};
}

} // namespace

std::string reliabilityPlot(std::span<const ReliabilityBin> bins, double error) {
    int all = 0;
    for (const ReliabilityBin& bin : bins)
        all += bin.answers;
    std::string svg =
        written("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 480 500\" "
                "font-family=\"sans-serif\" font-size=\"14\">\n"
                "<rect width=\"480\" height=\"500\" fill=\"#ffffff\"/>\n"
                "<rect x=\"%g\" y=\"%g\" width=\"%g\" height=\"%g\" fill=\"none\" stroke=\"#404040\"/>\n"
                "<path d=\"M%g %gL%g %g\" stroke=\"#808080\" stroke-dasharray=\"6 4\"/>\n",
                left, top, side, side, across(0), down(0), across(1), down(1));
    for (int tenth = 0; tenth <= 10; tenth += 2) {
        const double share = tenth / 10.0;
        svg += written("<text x=\"%g\" y=\"%g\" text-anchor=\"middle\">%g</text>\n"
                       "<text x=\"%g\" y=\"%g\" text-anchor=\"end\">%g</text>\n",
                       across(share), top + side + 20.0, share, left - 8.0, down(share) + 5.0, share);
    }
    for (const ReliabilityBin& bin : bins) {
        if (bin.answers == 0)
            continue;
        const double said = bin.probability / bin.answers;
        const double was = static_cast<double>(bin.right) / bin.answers;
        svg +=
            written("<path d=\"M%.2f %.2fV%.2f\" stroke=\"#b03030\" stroke-width=\"2\"/>\n"
                    "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"#2060a0\" fill-opacity=\"0.7\">"
                    "<title>%d answers, said %.3f, right %.3f</title></circle>\n",
                    across(said), down(was), down(said), across(said), down(was),
                    3.0 + 18.0 * std::sqrt(static_cast<double>(bin.answers) / all), bin.answers, said, was);
    }
    return svg + written("<text x=\"%g\" y=\"%g\" text-anchor=\"middle\">probability that was said</text>\n"
                         "<text x=\"18\" y=\"%g\" text-anchor=\"middle\" transform=\"rotate(-90 18 "
                         "%g)\">share that was "
                         "right</text>\n"
                         "<text x=\"%g\" y=\"%g\" text-anchor=\"middle\">%d answers, calibration error "
                         "%.3f</text>\n</svg>\n",
                         across(0.5), top + side + 42.0, down(0.5), down(0.5), across(0.5), top + side + 66.0,
                         all, error);
}

} // namespace undercowl::tests
