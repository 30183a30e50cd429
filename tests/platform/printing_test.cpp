// The text is taken out of the PDF by poppler's pdftotext: another program than the one that wrote it.
#include "platform/printing.h"
#include "tests/handover/sample.h"

#include <catch2/catch.hpp>

#include <QImage>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <regex>
#include <sstream>

using namespace undercowl;
using Catch::Contains;

namespace {

std::vector<std::byte> printed(const job::Job& job, const platform::MediaFile& mediaFile = {}) {
    const auto document = handover::ownersRecord(job, handover::sample::machine(), handover::sample::owner(),
                                                 handover::sample::mechanics());
    auto bytes = platform::pdf(document, handover::englishWords(), mediaFile);
    REQUIRE(bytes);
    return *bytes;
}

std::filesystem::path scratch(const std::string& name) {
    return std::filesystem::temp_directory_path() / ("undercowl-printing-" + name);
}

void write(const std::filesystem::path& file, const std::vector<std::byte>& bytes) {
    std::ofstream out{file, std::ios::binary};
    out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
}

std::string output(const std::string& command) {
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe{popen(command.c_str(), "r"), pclose};
    REQUIRE(pipe);
    std::string text;
    for (int letter = std::fgetc(pipe.get()); letter != EOF; letter = std::fgetc(pipe.get()))
        text += static_cast<char>(letter);
    return text;
}

std::string textOf(const std::vector<std::byte>& bytes) {
    const auto file = scratch("text.pdf");
    write(file, bytes);
    return output("pdftotext -layout " + file.string() + " -");
}

} // namespace

TEST_CASE("the PDF says what the record says") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    const std::string text = textOf(printed(handover::sample::job()));
    CHECK_THAT(text, Contains("Record of work 2025-014"));
    CHECK_THAT(text, Contains("Marrowin Tern 125, 1987"));
    CHECK_THAT(text, Contains("GN/WH"));
    CHECK_THAT(text, Contains("green with white tracer"));
    CHECK_THAT(text, Contains("perished brake hose"));
    CHECK_THAT(text, Contains("■ unsafe"));
    CHECK_THAT(text, Contains("✓ within"));
    CHECK_THAT(text, Contains("Do not ride it."));
}

TEST_CASE("typed text is printed as it was typed") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    job::Job job = handover::sample::job();
    job.reason = "<b>bold</b> & \"quoted\" %1";
    CHECK_THAT(textOf(printed(job)), Contains("<b>bold</b> & \"quoted\" %1"));
}

TEST_CASE("the same record gives the same bytes") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    CHECK(printed(handover::sample::job()) == printed(handover::sample::job()));
}

TEST_CASE("photos are printed with their captions, one that is lost or is no photo leaves no gap") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    job::Job job = handover::sample::job();
    job::Photo photo;
    photo.media = "a.png";
    photo.note = "left side, lid off";
    job.photos = {photo, photo};
    job.photos.at(1).media = "lost.png";
    job.photos.at(1).note = "nobody sees this";
    const auto file = scratch("photo.png");
    QImage image{640, 480, QImage::Format_RGB32};
    image.fill(Qt::darkCyan);
    REQUIRE(image.save(QString::fromStdString(file.string())));
    const auto bytes = printed(job, [&](const std::string& media) {
        return media == "a.png" ? file : std::filesystem::path{"/nowhere/lost.png"};
    });
    const std::string text = textOf(bytes);
    CHECK_THAT(text, Contains("left side, lid off"));
    CHECK_THAT(text, !Contains("nobody sees this"));
    const auto pdf = scratch("images.pdf");
    write(pdf, bytes);
    CHECK_THAT(output("pdfimages -list " + pdf.string()), Contains("image"));
}

TEST_CASE("each picture is printed where it belongs, the signature under the signature alone") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    job::Job job = handover::sample::job();
    job::Photo photo;
    photo.media = "cyan.png";
    photo.purpose = job::PhotoPurpose::AsFound;
    job.photos = {photo};
    job.signature = job::Signature{"sig", "Wim", "red.png", {}};
    const auto paint = [](const char* name, Qt::GlobalColor colour) {
        QImage image{640, 480, QImage::Format_RGB32};
        image.fill(colour);
        const auto file = scratch(name);
        REQUIRE(image.save(QString::fromStdString(file.string())));
        return file;
    };
    const auto cyan = paint("cyan.png", Qt::darkCyan);
    const auto red = paint("red.png", Qt::darkRed);
    const auto pdf = scratch("each.pdf");
    write(pdf, printed(job, [&](const std::string& media) { return media == "red.png" ? red : cyan; }));
    const auto folder = scratch("each");
    std::filesystem::create_directories(folder);
    output("pdfimages -png " + pdf.string() + " " + (folder / "p").string());
    int cyans = 0;
    int reds = 0;
    for (const auto& each : std::filesystem::directory_iterator(folder)) {
        const QImage image{QString::fromStdString(each.path().string())};
        const QColor colour = image.pixelColor(image.width() / 2, image.height() / 2);
        cyans += colour.green() > 80 && colour.red() < 80 ? 1 : 0;
        reds += colour.red() > 80 && colour.green() < 80 ? 1 : 0;
    }
    std::filesystem::remove_all(folder);
    CHECK(cyans == 1);
    CHECK(reds == 1);
}

TEST_CASE("no page holds the last words alone, and no heading stands at a page's foot") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    const std::regex heading{
        "^(The machine|Before you ride|What was .*|Parts|Photos|Handed over|Please note)$"};
    for (int more = 0; more < 24; ++more) { // the page is filled to every height
        job::Job job = handover::sample::job();
        for (int i = 0; i < more; ++i)
            job.parts.push_back({"p" + std::to_string(i), "part", "1", job::PartState::Fitted, {}, {}, {}});
        job.signature = job::Signature{"sig", "Wim", "none.png", {}};
        std::istringstream pages{textOf(printed(job))};
        std::string page;
        while (std::getline(pages, page, '\f')) {
            std::vector<std::string> lines;
            std::istringstream in{page};
            for (std::string line; std::getline(in, line);)
                if (line.find_first_not_of(' ') != std::string::npos)
                    lines.push_back(line.substr(line.find_first_not_of(' ')));
            if (lines.size() < 2)
                continue;
            lines.pop_back(); // the footer
            INFO(more);
            INFO(page);
            CHECK_FALSE(lines.front() == "Please note");
            CHECK_FALSE(std::regex_match(lines.back(), heading));
        }
    }
}

TEST_CASE("a full job fits on three pages") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    job::Job job = handover::sample::job();
    for (int i = 0; i < 8; ++i) {
        job.findings.push_back({"f",
                                "a finding that takes a good line to tell, number " + std::to_string(i),
                                job::Severity::Soon,
                                "look at it again",
                                false,
                                "",
                                {}});
        job.readings.push_back(job.readings.at(0));
    }
    auto& gathering = job.gatherings.at(0);
    gathering.places = 16;
    for (int place = 1; place <= gathering.places; ++place)
        gathering.at({wiring::Half::Loom, place, 1}).answer(wiring::Answer::AsFound) =
            handover::sample::wire(colour::Insulation::GY, colour::Insulation::RD);
    const auto file = scratch("full.pdf");
    write(file, printed(job));
    const std::string info = output("pdfinfo " + file.string());
    std::smatch match;
    REQUIRE(std::regex_search(info, match, std::regex{"Pages: +([0-9]+)"}));
    CHECK(std::stoi(match[1]) <= 3);
}

// No validator of PDF/A is to be had here: what ISO 19005-1 forbids and asks for is looked up in the file's
// bytes, each rule by its clause, and what other programs say of it.
TEST_CASE("the record is a PDF/A-1b as far as its bytes tell") {
    const platform::PrintingWithoutScreen session; // not static: Qt's globals go before statics do
    job::Job job = handover::sample::job();
    job.number = "A & <B> \"\u00fc\"";
    job::Photo photo;
    photo.media = "clear.png";
    photo.note = "a photo with clear parts";
    job.photos = {photo};
    QImage image{640, 480, QImage::Format_ARGB32};
    image.fill(QColor{0, 120, 120, 90});
    const auto clear = scratch("clear.png");
    REQUIRE(image.save(QString::fromStdString(clear.string())));
    const auto bytes = printed(job, [&](const std::string&) { return clear; });
    const std::string file{reinterpret_cast<const char*>(bytes.data()), bytes.size()};
    const auto where = scratch("archive.pdf");
    write(where, bytes);

    CHECK(file.starts_with("%PDF-1.4\n%")); // 6.1.2: four bytes above 127 after it
    for (std::size_t i = 10; i < 14; ++i)
        CHECK(static_cast<unsigned char>(file[i]) > 127);
    CHECK(std::regex_search(file, std::regex{"/ID \\[ <([0-9a-f]+)> <\\1> \\]"})); // 6.1.3
    for (const char* never :
         {"/Encrypt", "/LZWDecode", "/EmbeddedFile", "/F (", // 6.1.3, 6.1.10, 6.1.11, 6.1.7
          "/Interpolate true", "/Alternates", "/OPI",        // 6.2.4
          "/TR ", "/TR2",                                    // 6.2.8
          "/S /Transparency", "/Group",                      // 6.4
          "/JavaScript", "/Launch", "/AA "}) {               // 6.6
        INFO(never);
        CHECK_THAT(file, !Contains(never));
    }
    CHECK(std::regex_search(file, std::regex{"/OutputIntents \\["})); // 6.2.2
    CHECK_THAT(file, Contains("/GTS_PDFA1") && Contains("/DestOutputProfile"));
    CHECK_FALSE(std::regex_search(file, std::regex{"/SMask [0-9]"})); // 6.4
    const std::regex opacity{"/(ca|CA) ([0-9.]+)"};
    for (std::sregex_iterator at{file.begin(), file.end(), opacity}; at != std::sregex_iterator{}; ++at)
        CHECK(std::stod((*at)[2]) == 1);
    const auto count = [&](const std::string& what) {
        std::size_t found = 0;
        for (auto at = file.find(what); at != std::string::npos; at = file.find(what, at + 1))
            ++found;
        return found;
    };
    CHECK(count("/Type /FontDescriptor") >= 2);
    CHECK(count("/FontFile2") == count("/Type /FontDescriptor"));    // 6.3.4: embedded
    CHECK(count("/CIDSet") == count("/Type /FontDescriptor"));       // 6.3.5: subsets say of what
    CHECK(count("/CIDToGIDMap") == count("/Subtype /CIDFontType2")); // 6.3.3.2
    std::istringstream fonts{output("pdffonts " + where.string())};
    int named = 0;
    for (std::string line; std::getline(fonts, line); ++named)
        if (named > 1) // two lines of heading
            CHECK(std::regex_search(line, std::regex{"Identity-H +yes "}));
    CHECK(named > 3);

    const std::string about = output("pdfinfo -meta " + where.string()); // 6.7
    CHECK_THAT(about, Contains("pdfaid:part=\"1\"") && Contains("pdfaid:conformance=\"B\""));
    CHECK_THAT(about, Contains("Record of work A &amp; &lt;B&gt; &quot;\u00fc&quot;</rdf:li>"));
    const std::string info =
        output("TZ=UTC pdfinfo -isodates " + where.string()); // 6.7.3: it agrees with the XMP
    CHECK_THAT(info, Contains("Record of work A & <B> \"\u00fc\""));
    CHECK_THAT(info, Contains("2000-01-01T00:00:00") && Contains("Undercowl"));
    CHECK_THAT(about, Contains("xmp:CreateDate=\"2000-01-01T00:00:00+00:00\"") &&
                          Contains("xmp:CreatorTool=\"Undercowl\""));
    std::smatch producer;
    REQUIRE(std::regex_search(info, producer, std::regex{"Producer: +(.+)"}));
    CHECK_THAT(about, Contains("pdf:Producer=\"" + producer[1].str() + "\""));
}
