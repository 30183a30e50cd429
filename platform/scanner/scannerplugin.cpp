#define ZX_USE_UTF8 1
#include "platform/scanner/scannerplugin.h"

#include <ZXing/ReadBarcode.h>

namespace undercowl::platform {

QStringList ScannerPlugin::read(const QImage& picture) const {
    if (picture.isNull())
        return {};
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    const ZXing::ImageView view(grey.constBits(), grey.width(), grey.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(grey.bytesPerLine()));
    ZXing::DecodeHints hints;
    hints.setTryHarder(true);
    hints.setTryRotate(true);
    QStringList texts;
    for (const ZXing::Result& result : ZXing::ReadBarcodes(view, hints))
        if (result.isValid())
            texts += QString::fromStdString(result.text());
    texts.removeDuplicates();
    return texts;
}

} // namespace undercowl::platform
