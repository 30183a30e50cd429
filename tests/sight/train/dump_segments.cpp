// Prints the features of every segment along the strokes given on standard input, for learning:
//   PHOTO-FILE N X1 Y1 ... XN YN        (a line for each stroke)
// Answers, for each stroke: "stroke K" and a line "at width slope f1 f2 ..." for each segment.
#include "core/sight/photo.h"
#include "core/sight/pixels.h"
#include "core/sight/segment.h"

#include <cstdio>
#include <iostream>
#include <string>

using namespace undercowl::sight;

int main() {
    std::string file;
    std::string opened;
    cv::Mat lab;
    double scale = 1;
    int strokes = 0;
    std::size_t n = 0;
    while (std::cin >> file >> n) {
        Polyline stroke(n);
        for (Point& p : stroke)
            std::cin >> p.x >> p.y;
        if (file != opened) {
            const auto photo = Photo::read(file);
            if (!photo)
                return 2;
            lab = smoothLab(photo->pixels().rgb);
            scale = photo->pixels().scale;
            opened = file;
        }
        for (Point& p : stroke)
            p = {p.x * scale, p.y * scale};
        const Ribbon ribbon = ribbonAlong(lab, stroke, 40);
        std::printf("stroke %d\n", strokes++);
        const auto edges = edgesOf(ribbon);
        for (const Segment& segment : segmentsOf(ribbon, edges)) {
            const Point p = ribbon.toPicture(segment.at, 0);
            std::printf("%.2f %.2f %.2f %.3f", p.x / scale, p.y / scale, segment.width / scale,
                        segment.slope);
            for (const float f : segment.features)
                std::printf(" %.4g", double(f));
            std::printf(" %zu %zu\n", segment.left, segment.right);
        }
    }
    return 0;
}
