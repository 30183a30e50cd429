// A picture of the screen's as the core looks at it.
#pragma once

#include "core/sight/preview.h"

#include <QImage>

#include <algorithm>
#include <vector>

namespace undercowl::ui {

class PreviewPixels {
public:
    // Reduced where its longer side is more than 'longest'.
    PreviewPixels(const QImage& picture, int longest) {
        const bool large = std::max(picture.width(), picture.height()) > longest;
        const QImage rgb =
            (large ? picture.scaled(longest, longest, Qt::KeepAspectRatio, Qt::SmoothTransformation)
                   : picture)
                .convertToFormat(QImage::Format_RGB888);
        width_ = rgb.width();
        height_ = rgb.height();
        levels_.reserve(std::size_t{3} * static_cast<std::size_t>(width_) *
                        static_cast<std::size_t>(height_));
        for (int y = 0; y < height_; ++y) { // QImage pads its rows
            const auto* row = rgb.constScanLine(y);
            levels_.insert(levels_.end(), row, row + std::ptrdiff_t{3} * width_);
        }
    }

    [[nodiscard]] sight::Preview preview() const {
        return {levels_, width_, height_};
    } // lives as long as this

private:
    std::vector<std::uint8_t> levels_;
    int width_{};
    int height_{};
};

} // namespace undercowl::ui
