#include "qml/shell/burst.h"

#include "core/sight/preview.h"
#include "qml/shell/previewpixels.h"

#include <QFileInfo>
#include <QImageReader>

namespace undercowl::ui {

namespace {

constexpr QChar mark = u'~';
constexpr int comparedAt = 2048; // pixels: a hand's tremble is seen, and a phone decodes three in a moment

} // namespace

QString burstName(const QString& first, int number) {
    const QFileInfo info(first);
    return QStringLiteral("%1/%2%3%4.%5")
        .arg(info.path(), info.completeBaseName(), mark, QString::number(number), info.suffix());
}

QString burstOf(const QString& file) {
    const QFileInfo info(file);
    const QString name = info.completeBaseName();
    const auto at = name.lastIndexOf(mark);
    return at < 0 ? file : QStringLiteral("%1/%2.%3").arg(info.path(), name.left(at), info.suffix());
}

QString sharpestOf(const QStringList& files) {
    QString best;
    double most = -1;
    for (const QString& file : files) {
        QImageReader reader(file);
        if (reader.size().isValid() && std::max(reader.size().width(), reader.size().height()) > comparedAt)
            reader.setScaledSize(reader.size().scaled(comparedAt, comparedAt, Qt::KeepAspectRatio));
        const QImage picture = reader.read();
        if (picture.isNull())
            continue;
        const PreviewPixels pixels(picture, comparedAt);
        const double sharp = sight::sharpness(sight::greyOf(pixels.preview(), comparedAt)).value_or(0);
        if (sharp > most) {
            most = sharp;
            best = file;
        }
    }
    return best;
}

} // namespace undercowl::ui
