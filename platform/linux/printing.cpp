#include "platform/printing.h"

#include "platform/linux/paper.h"

#include <QBuffer>
#include <QByteArray>
#include <QGuiApplication>
#include <QHash>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>

#include <array>
#include <cstdio>

namespace undercowl::platform {
namespace {

constexpr int dotsPerInch = 600;
constexpr qreal marginMm = 16;

} // namespace

// Qt stamps the pages with the time of printing and offers no way to set it. The same record is to give the
// same bytes, so the stamp is written over, digit for digit so that the file's offsets still hold.
void paper::forgetWhenPrinted(QByteArray& bytes) {
    static const QByteArray key = "/CreationDate (D:";
    const qsizetype at = bytes.indexOf(key);
    if (at < 0)
        return;
    static const QByteArray fixed = "20000101000000";
    bytes.replace(at + key.size(), fixed.size(), fixed);
    const qsizetype zone = at + key.size() + fixed.size();
    const qsizetype end = bytes.indexOf(')', zone);
    for (qsizetype i = zone; i < end; ++i)
        if (bytes.at(i) >= '0' && bytes.at(i) <= '9')
            bytes[i] = '0';
        else if (bytes.at(i) == '-')
            bytes[i] = '+';
}

tl::expected<std::vector<std::byte>, std::string>
pdf(const handover::Document& document, const handover::Words& words, const MediaFile& mediaFile) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    if (!buffer.open(QIODevice::WriteOnly))
        return tl::unexpected(std::string{"no memory for the PDF: close other programs and print again"});
    {
        QPdfWriter writer{&buffer};
        writer.setResolution(dotsPerInch);
        writer.setPageSize(QPageSize{QPageSize::A4});
        writer.setPageMargins(QMarginsF{marginMm, marginMm, marginMm, marginMm}, QPageLayout::Millimeter);
        writer.setTitle(QString::fromStdString(words(document.title)));
        writer.setCreator(QStringLiteral("Undercowl"));
        if (auto printed = paper::print(writer, document, words, mediaFile); !printed)
            return tl::unexpected(printed.error());
    }
    buffer.close();
    if (!bytes.startsWith("%PDF-"))
        return tl::unexpected(std::string{"the PDF could not be written: free some memory and print again"});
    paper::forgetWhenPrinted(bytes);
    const auto* first = reinterpret_cast<const std::byte*>(bytes.constData());
    return std::vector<std::byte>{first, first + bytes.size()};
}

std::string pictureAddress(const std::filesystem::path& file) {
    constexpr int mostPixels = 1000;
    const QImage image = paper::photo(file, mostPixels);
    QByteArray bytes;
    QBuffer buffer{&bytes};
    constexpr int quality = 85;
    if (image.isNull() || !buffer.open(QIODevice::WriteOnly) || !image.save(&buffer, "JPG", quality))
        return {};
    return "data:image/jpeg;base64," + bytes.toBase64().toStdString();
}

struct PrintingWithoutScreen::Program {
    // Qt keeps references to these.
    int count{1};
    std::array<char, 13> name{"undercowlctl"};
    std::array<char*, 2> arguments{name.data(), nullptr};
    std::unique_ptr<QGuiApplication> application;
};

PrintingWithoutScreen::PrintingWithoutScreen() : program_(std::make_unique<Program>()) {
    // Without a session of a desktop Qt remarks on standard error that it made a folder for itself: no
    // complaint of ours, and of no use to whoever prints.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString& message) {
        if (!message.startsWith(QLatin1String{"QStandardPaths: XDG_RUNTIME_DIR"}))
            std::fprintf(stderr, "%s\n", qPrintable(message));
    });
    QHashSeed::setDeterministicGlobalSeed(); // the order of fonts and pictures in a PDF follows from hashes
    qputenv("QT_QPA_PLATFORM", "offscreen"); // there may be no display, and none is wanted
    program_->application = std::make_unique<QGuiApplication>(program_->count, program_->arguments.data());
}

PrintingWithoutScreen::~PrintingWithoutScreen() {
    qInstallMessageHandler(nullptr);
}

} // namespace undercowl::platform
