// What pages are made of: the typeface and the photos.
#include "platform/linux/paper.h"

#include <QFontDatabase>
#include <QImageReader>

#include <algorithm>

namespace undercowl::platform::paper {

// The app's own typeface, from the program itself; what it lacks (the shapes of severities) comes from the
// system.
const QStringList& families() {
    static const QStringList loaded = [] {
        QStringList names;
        for (const char* file :
             {":/undercowl/print/UndercowlSans-Regular.otf", ":/undercowl/print/UndercowlSans-Bold.otf"}) {
            const int id = QFontDatabase::addApplicationFont(QString::fromLatin1(file));
            if (id < 0)
                return QStringList{};
            for (const QString& name : QFontDatabase::applicationFontFamilies(id))
                if (!names.contains(name))
                    names << name;
        }
        return names << QStringLiteral("DejaVu Sans");
    }();
    return loaded;
}

QImage photo(const std::filesystem::path& file, int most) {
    QImageReader reader{QString::fromStdString(file.string())};
    reader.setAutoTransform(true); // upright, as it was shown
    // Twice as large as needed, then smoothly down: quick for a photo of many megapixels, and without jagged
    // edges.
    if (const QSize size = reader.size(); size.isValid() && std::max(size.width(), size.height()) > 2 * most)
        reader.setScaledSize(size.scaled(2 * most, 2 * most, Qt::KeepAspectRatio));
    QImage image = reader.read();
    if (std::max(image.width(), image.height()) > most)
        image = image.scaled(most, most, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    return image.isNull() ? image : image.convertToFormat(QImage::Format_RGB32);
}

} // namespace undercowl::platform::paper
