#pragma once

#include "platform/scanner/scanner.h"

#include <QObject>

namespace undercowl::platform {

class ScannerPlugin : public QObject, public Scanner {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.scanner")
    Q_INTERFACES(undercowl::platform::Scanner)

public:
    [[nodiscard]] QStringList read(const QImage& picture) const override;
};

} // namespace undercowl::platform
