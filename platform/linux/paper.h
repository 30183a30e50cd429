// Sets a hand-over document on pages. Not for use outside this folder.
#pragma once

#include "platform/printing.h"

#include <QPagedPaintDevice>

namespace undercowl::platform::paper {

// Paints all pages on the device, whose page layout is set. Fails when the fonts cannot be loaded.
[[nodiscard]] tl::expected<void, std::string> print(QPagedPaintDevice& device,
                                                    const handover::Document& document,
                                                    const handover::Words& words, const MediaFile& mediaFile);

} // namespace undercowl::platform::paper
