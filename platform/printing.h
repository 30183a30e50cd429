// A hand-over document as PDF.
#pragma once

#include "core/handover/record.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace undercowl::platform {

// Where the file of a media name lies; an empty answer leaves the picture out.
using MediaFile = std::function<std::filesystem::path(const std::string& media)>;

// The document on A4 pages, with its photos turned upright, in the words that 'words' give. The same document
// and photos give the same bytes on the same system. Works on any thread, but only while a QGuiApplication
// lives: the app has one, a program without a screen makes a PrintingWithoutScreen. Fails, with the remedy in
// words, when the fonts cannot be loaded or the pages cannot be written.
[[nodiscard]] tl::expected<std::vector<std::byte>, std::string>
pdf(const handover::Document& document, const handover::Words& words, const MediaFile& mediaFile);

// The photo, upright and reduced to what a page shows, as a "data:image/jpeg;base64,..." address for a page
// that stands alone. Empty when the file is no photo that can be read. Needs a QGuiApplication like pdf().
[[nodiscard]] std::string pictureAddress(const std::filesystem::path& file);

// What printing needs in a program that shows no window. Make it when something is to be printed, not at the
// start: it costs tens of milliseconds.
class PrintingWithoutScreen {
public:
    PrintingWithoutScreen();
    ~PrintingWithoutScreen();
    PrintingWithoutScreen(const PrintingWithoutScreen&) = delete;
    PrintingWithoutScreen& operator=(const PrintingWithoutScreen&) = delete;
    PrintingWithoutScreen(PrintingWithoutScreen&&) = delete;
    PrintingWithoutScreen& operator=(PrintingWithoutScreen&&) = delete;

private:
    struct Program;
    std::unique_ptr<Program> program_;
};

} // namespace undercowl::platform
