// Sets a hand-over document on pages. Not for use outside this folder.
#pragma once

#include "platform/printing.h"

#include <QByteArray>
#include <QImage>
#include <QPagedPaintDevice>
#include <QStringList>

namespace undercowl::platform::paper {

// Paints all pages on the device, whose page layout is set. Fails when the fonts cannot be loaded.
[[nodiscard]] tl::expected<void, std::string> print(QPagedPaintDevice& device,
                                                    const handover::Document& document,
                                                    const handover::Words& words, const MediaFile& mediaFile);

// The app's own typeface, then the system's; empty when it cannot be loaded.
[[nodiscard]] const QStringList& families();

// Writes over the time of printing in a PDF, so that the same content gives the same bytes.
void forgetWhenPrinted(QByteArray& bytes);

// The photo turned upright, at most so many pixels wide and high; null when the file is no photo.
[[nodiscard]] QImage photo(const std::filesystem::path& file, int most);

} // namespace undercowl::platform::paper
