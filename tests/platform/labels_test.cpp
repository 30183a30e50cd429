// The sheet is turned into a picture by poppler's pdftoppm and its codes are read by zxing: other programs
// than those that made them.
#define ZX_USE_UTF8 1
#include "platform/labels.h"
#include "platform/printing.h"

#include <ZXing/ReadBarcode.h>
#include <catch2/catch.hpp>

#include <QImage>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>

using namespace undercowl;
using handover::BagLabel;

namespace {

constexpr int dotsPerInch = 200;

std::vector<BagLabel> labelsFor(int count) {
    std::vector<BagLabel> all;
    for (int i = 1; i <= count; ++i) {
        const std::string bag = i == 2 ? "Vergaser, groß" : std::to_string(i);
        all.push_back({bag,
                       "Marrowin Tern 125, 1987",
                       "2026-014",
                       {"unplug 6-place connector, right switch cluster"},
                       {"2 x screw M5 x 16 mm", "1 x clip"},
                       false,
                       handover::written({"0190f7a2-1111-7222-8333-444455556666", bag})});
    }
    return all;
}

QImage pageOf(const std::vector<std::byte>& pdf, int page) {
    const auto folder = std::filesystem::temp_directory_path() / "undercowl-labels";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "sheet.pdf", std::ios::binary)
        .write(reinterpret_cast<const char*>(pdf.data()), static_cast<std::streamsize>(pdf.size()));
    const std::string to = (folder / ("page" + std::to_string(page))).string();
    const std::string command = "pdftoppm -r " + std::to_string(dotsPerInch) + " -singlefile -png -f " +
                                std::to_string(page) + " -l " + std::to_string(page) + " '" +
                                (folder / "sheet.pdf").string() + "' '" + to + "' 2> /dev/null";
    if (std::system(command.c_str()) != 0) // NOLINT(concurrency-mt-unsafe): one thread
        return {};
    return QImage(QString::fromStdString(to + ".png")).convertToFormat(QImage::Format_Grayscale8);
}

// Each label is looked at alone, as a bag is held before the camera.
std::multiset<std::string> codesOn(const QImage& whole, platform::LabelStock stock) {
    std::multiset<std::string> read;
    // Inches, as the sheet is sold.
    const bool a4 = stock == platform::LabelStock::A4;
    const QRectF first = a4 ? QRectF(0, 0.5 / 25.4, 70 / 25.4, 37 / 25.4) : QRectF(0.1875, 0.5, 2.625, 1);
    const QPointF step = a4 ? QPointF(70 / 25.4, 37 / 25.4) : QPointF(2.75, 1);
    for (int place = 0; place < platform::labelsOnSheet(stock) && !whole.isNull(); ++place) {
        const QRectF inches = first.translated(place % 3 * step.x(), place / 3 * step.y());
        const QImage page =
            whole.copy(QRectF(inches.topLeft() * dotsPerInch, inches.size() * dotsPerInch).toRect());
        ZXing::DecodeHints hints;
        hints.setFormats(ZXing::BarcodeFormat::QRCode).setTryHarder(true);
        const ZXing::ImageView view(page.constBits(), page.width(), page.height(), ZXing::ImageFormat::Lum,
                                    static_cast<int>(page.bytesPerLine()));
        for (const ZXing::Result& one : ZXing::ReadBarcodes(view, hints))
            if (one.isValid())
                read.insert(one.text());
    }
    return read;
}

} // namespace

TEST_CASE("every label of a sheet is read back by another program") {
    const platform::PrintingWithoutScreen session;
    for (const auto stock : {platform::LabelStock::A4, platform::LabelStock::Letter}) {
        const int each = platform::labelsOnSheet(stock);
        const auto labels = labelsFor(each + 2);
        const auto pdf = platform::labelSheet(labels, stock, 2); // the first place is used up already
        REQUIRE(pdf);
        std::multiset<std::string> expected;
        for (const BagLabel& label : labels)
            expected.insert(label.code);
        auto read = codesOn(pageOf(*pdf, 1), stock);
        CHECK(static_cast<int>(read.size()) == each - 1);
        read.merge(codesOn(pageOf(*pdf, 2), stock));
        CHECK(read == expected);
        for (const std::string& text : read)
            CHECK(handover::bagCode(text));
        CHECK(pageOf(*pdf, 3).isNull());
        const auto again = platform::labelSheet(labels, stock, 2);
        CHECK(*again == *pdf);
    }
}

TEST_CASE("what cannot be printed is refused with a reason") {
    const platform::PrintingWithoutScreen session;
    using platform::LabelStock;
    CHECK(platform::labelSheet({}, LabelStock::A4).error().find("no bags") != std::string::npos);
    CHECK(platform::labelSheet(labelsFor(1), LabelStock::A4, 0).error().find("places 1 to 24") !=
          std::string::npos);
    CHECK_FALSE(platform::labelSheet(labelsFor(1), LabelStock::Letter, 31));
    auto endless = labelsFor(1);
    endless[0].code += std::string(4000, 'x');
    CHECK(platform::labelSheet(endless, LabelStock::A4).error().find("does not fit") != std::string::npos);
    CHECK(platform::labelStock("a4") == LabelStock::A4);
    CHECK_FALSE(platform::labelStock("a5"));
}
