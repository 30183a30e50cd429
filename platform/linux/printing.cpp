#include "platform/printing.h"

#include "platform/linux/paper.h"

#include <QBuffer>
#include <QByteArray>
#include <QCryptographicHash>
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
// same bytes, so the stamp is written over, digit for digit so that the file's offsets still hold. The file's
// identifier, which Qt draws by chance, becomes the digest of its bytes.
void paper::forgetWhenPrinted(QByteArray& bytes) {
    const auto overwrite = [&bytes](qsizetype at, const QByteArray& with) {
        bytes.replace(at, with.size(), with);
    };
    static const QByteArray key = "/CreationDate (D:";
    if (const qsizetype at = bytes.indexOf(key); at >= 0) {
        static const QByteArray fixed = "20000101000000";
        overwrite(at + key.size(), fixed);
        const qsizetype zone = at + key.size() + fixed.size();
        const qsizetype end = bytes.indexOf(')', zone);
        for (qsizetype i = zone; i < end; ++i)
            if (bytes.at(i) >= '0' && bytes.at(i) <= '9')
                bytes[i] = '0';
            else if (bytes.at(i) == '-')
                bytes[i] = '+';
    }
    static const QByteArray identifier = "/ID [ <";
    if (const qsizetype at = bytes.lastIndexOf(identifier); at >= 0) {
        const qsizetype first = at + identifier.size();
        const qsizetype length = bytes.indexOf('>', first) - first;
        const qsizetype second = bytes.indexOf('<', first) + 1;
        overwrite(first, QByteArray(length, '0'));
        overwrite(second, QByteArray(length, '0'));
        const QByteArray digest =
            QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().left(length);
        overwrite(first, digest);
        overwrite(second, digest);
    }
}

namespace {

// What a PDF/A says of itself (ISO 19005-1, 6.7): part and conformance, and the same title, programs and time
// as the file's own description, which Qt writes and paper::forgetWhenPrinted() changes.
QByteArray aboutItself(const QPdfWriter& writer) {
    const QString form = QStringLiteral(R"(<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
 <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
  <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
   <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1</rdf:li></rdf:Alt></dc:title>
  </rdf:Description>
  <rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmp:CreatorTool="%2" xmp:CreateDate="2000-01-01T00:00:00%4"/>
  <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" pdf:Producer="Qt %3"/>
  <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" pdfaid:part="1" pdfaid:conformance="B"/>
 </rdf:RDF>
</x:xmpmeta>
<?xpacket end="w"?>)");
    return form
        .arg(writer.title().toHtmlEscaped(), writer.creator().toHtmlEscaped(),
             QString::fromLatin1(qVersion()), QStringLiteral("+00:00"))
        .toUtf8();
}

} // namespace

tl::expected<std::vector<std::byte>, std::string>
pdf(const handover::Document& document, const handover::Words& words, const MediaFile& mediaFile) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    if (!buffer.open(QIODevice::WriteOnly))
        return tl::unexpected(std::string{"no memory for the PDF: close other programs and print again"});
    {
        QPdfWriter writer{&buffer};
        // It is kept for as long as the machine lives, longer than today's programs: PDF/A-1b.
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(dotsPerInch);
        writer.setPageSize(QPageSize{QPageSize::A4});
        writer.setPageMargins(QMarginsF{marginMm, marginMm, marginMm, marginMm}, QPageLayout::Millimeter);
        writer.setTitle(QString::fromStdString(words(document.title)));
        writer.setCreator(QStringLiteral("Undercowl"));
        writer.setDocumentXmpMetadata(aboutItself(writer));
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
