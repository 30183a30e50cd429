// The record as one HTML page. It stands alone: no script, no file beside it but the pictures that the caller
// names.
#include "core/handover/record.h"

#include <string>
#include <string_view>

namespace undercowl::handover {
namespace {

constexpr std::string_view style = R"(
:root { color-scheme: light; }
body { font: 17px/1.45 "B612", "DejaVu Sans", Verdana, sans-serif; color: #14181B; background: #FFFFFF;
       max-width: 56rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.7rem; margin: 0 0 1rem; }
h2 { font-size: 1.2rem; margin: 1.6rem 0 .5rem; padding-bottom: .2rem; border-bottom: 2px solid #004F40; }
p { margin: .4rem 0; }
p.strong { font-weight: bold; }
p.caution { border-left: 6px solid #653C00; background: #FBF1DC; padding: .4rem .7rem; font-weight: bold; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; margin: .4rem 0; }
th, td { text-align: left; vertical-align: top; padding: .3rem .6rem .3rem 0; border-bottom: 1px solid #C9C4B8; }
thead th { border-bottom: 2px solid #6F7672; }
tbody th { font-weight: normal; color: #3F484E; width: 12rem; }
.pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(16rem, 1fr)); gap: 1rem; }
figure { margin: 0; }
figure img { width: 100%; height: auto; border-radius: 6px; }
figcaption { font-size: .9rem; color: #3F484E; }
@page { size: A4; margin: 16mm; }
@media print { body { font-size: 10pt; max-width: none; padding: 0; } h2, p.strong { break-after: avoid; }
               tr, figure, p.caution { break-inside: avoid; } }
)";

std::string escaped(std::string_view text) {
    std::string safe;
    safe.reserve(text.size());
    for (const char letter : text) {
        switch (letter) {
        case '&': safe += "&amp;"; break;
        case '<': safe += "&lt;"; break;
        case '>': safe += "&gt;"; break;
        case '"': safe += "&quot;"; break;
        case '\'': safe += "&#39;"; break;
        case '\n': safe += "<br>"; break;
        default: {
            const auto byte = static_cast<unsigned char>(letter);
            // Control characters are not allowed in a page at all.
            constexpr unsigned char space = 0x20;
            safe += byte < space && letter != '\t' ? ' ' : letter;
        }
        }
    }
    return safe;
}

class Writer {
public:
    Writer(const Words& words, const std::function<std::string(const std::string&)>& imageSource)
        : words_(words), imageSource_(imageSource) {}

    std::string page(const Document& document, std::string_view language) {
        out_ = "<!DOCTYPE html>\n<html lang=\"";
        out_ += escaped(language);
        out_ += "\">\n<head>\n<meta charset=\"utf-8\">\n"
                "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>";
        out_ += text(document.title);
        out_ += "</title>\n<style>";
        out_ += style;
        out_ += "</style>\n</head>\n<body>\n";
        element("h1", document.title);
        for (const Section& section : document.sections) {
            out_ += "<section>\n";
            element("h2", section.title);
            for (const Block& block : section.blocks) {
                std::visit([this](const auto& which) { write(which); }, block);
            }
            out_ += "</section>\n";
        }
        out_ += "</body>\n</html>\n";
        return std::move(out_);
    }

private:
    [[nodiscard]] std::string text(const Text& said) const { return escaped(words_(said)); }

    // 'open' is a tag with its attributes.
    void element(std::string_view open, const Text& said) {
        const std::string_view name = open.substr(0, open.find(' '));
        out_.append("<").append(open).append(">").append(text(said)).append("</").append(name).append(">\n");
    }

    void write(const Paragraph& paragraph) {
        switch (paragraph.weight) {
        case Weight::Strong: return element("p class=\"strong\"", paragraph.text);
        case Weight::Caution: return element("p class=\"caution\"", paragraph.text);
        case Weight::Plain: break;
        }
        element("p", paragraph.text);
    }

    void write(const Table& table) {
        out_ += "<div class=\"scroll\"><table>\n";
        if (!table.head.empty()) {
            out_ += "<thead><tr>\n";
            for (const Text& cell : table.head) {
                element("th scope=\"col\"", cell);
            }
            out_ += "</tr></thead>\n";
        }
        out_ += "<tbody>\n";
        for (const Row& row : table.rows) {
            out_ += "<tr>\n";
            // Without a head the first cell of a row says what the others are.
            bool label = table.head.empty();
            for (const Text& cell : row.cells) {
                element(label ? "th scope=\"row\"" : "td", cell);
                label = false;
            }
            out_ += "</tr>\n";
        }
        out_ += "</tbody></table></div>\n";
    }

    void write(const Pictures& pictures) {
        out_ += "<div class=\"pictures\">\n";
        for (const Picture& picture : pictures.pictures) {
            const std::string source = imageSource_ ? imageSource_(picture.media) : std::string{};
            if (source.empty()) {
                continue;
            }
            out_ += "<figure><img src=\"" + escaped(source) + "\" alt=\"" + text(picture.caption) + "\">\n";
            element("figcaption", picture.caption);
            out_ += "</figure>\n";
        }
        out_ += "</div>\n";
    }

    const Words& words_;
    const std::function<std::string(const std::string&)>& imageSource_;
    std::string out_;
};

} // namespace

std::string html(const Document& document, const Words& words,
                 const std::function<std::string(const std::string& media)>& imageSource,
                 std::string_view language) {
    return Writer(words, imageSource).page(document, language);
}

} // namespace undercowl::handover
