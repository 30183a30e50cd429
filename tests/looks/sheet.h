// Contact sheets: pictures side by side, each under its name.
#pragma once

#include <QImage>
#include <QString>

#include <vector>

namespace undercowl::looks {

struct Picture {
    QString name;
    QImage image;
};

// Lays the pictures out in rows, as many to a row as fit into 'width' pixels. All have the same size.
[[nodiscard]] QImage sheetOf(const std::vector<Picture>& pictures, int width);

} // namespace undercowl::looks
