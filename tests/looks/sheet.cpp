#include "sheet.h"

#include <QPainter>

#include <algorithm>

namespace undercowl::looks {

QImage sheetOf(const std::vector<Picture>& pictures, int width) {
    if (pictures.empty())
        return {};
    constexpr int gap = 12;
    constexpr int caption = 24;
    const QSize one = pictures.front().image.size();
    const int columns = std::clamp((width - gap) / (one.width() + gap), 1, static_cast<int>(pictures.size()));
    const int rows = (static_cast<int>(pictures.size()) + columns - 1) / columns;
    QImage sheet(gap + columns * (one.width() + gap), gap + rows * (one.height() + caption + gap),
                 QImage::Format_RGB32);
    sheet.fill(QColor(0x80, 0x80, 0x80));
    QPainter painter(&sheet);
    QFont font = painter.font();
    font.setPixelSize(16);
    painter.setFont(font);
    for (int i = 0; i < static_cast<int>(pictures.size()); ++i) {
        const Picture& picture = pictures[static_cast<std::size_t>(i)];
        const QPoint at(gap + i % columns * (one.width() + gap),
                        gap + i / columns * (one.height() + caption + gap));
        painter.drawText(QRect(at, QSize(one.width(), caption)), Qt::AlignLeft | Qt::AlignVCenter,
                         picture.name);
        painter.drawImage(at + QPoint(0, caption), picture.image);
    }
    return sheet;
}

} // namespace undercowl::looks
