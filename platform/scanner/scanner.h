// Barcodes and QR codes in a picture, behind an interface: what reads them is loaded with the first scan.
#pragma once

#include <QImage>
#include <QStringList>
#include <QtPlugin>

namespace undercowl::platform {

// The plugin "scanner".
class Scanner {
public:
    virtual ~Scanner() = default;

    // The texts of all codes that are read in the picture, each once; a code that cannot be read through to
    // its check is none. Any thread.
    [[nodiscard]] virtual QStringList read(const QImage& picture) const = 0;
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::Scanner, "undercowl.scanner")
