#include "platform/labels.h"

#include "platform/linux/paper.h"

#include <QBuffer>
#include <QFont>
#include <QFontMetricsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace undercowl::platform {
namespace {

constexpr int dotsPerInch = 600;
constexpr qreal mmPerInch = 25.4;

// Millimetres from the sheet's upper left corner.
struct Grid {
    QPageSize::PageSizeId page;
    int columns;
    int rows;
    qreal left, top;     // of the first label
    qreal width, height; // of a label
    qreal acrossStep, downStep;
};

Grid gridOf(LabelStock stock) {
    if (stock == LabelStock::Letter)
        return {QPageSize::Letter,
                3,
                10,
                0.1875 * mmPerInch,
                0.5 * mmPerInch,
                2.625 * mmPerInch,
                1.0 * mmPerInch,
                2.75 * mmPerInch,
                1.0 * mmPerInch};
    return {QPageSize::A4, 3, 8, 0, 0.5, 70, 37, 70, 37};
}

struct FreeCode {
    void operator()(QRcode* code) const { QRcode_free(code); }
};
using Code = std::unique_ptr<QRcode, FreeCode>;

// Quarter of the modules may be soiled: bags lie in a workshop.
Code codeOf(const std::string& text) {
    return Code(QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_Q));
}

class Printer {
public:
    Printer(QPainter& painter, const QStringList& families) : painter_(painter), families_(families) {}

    // False when the code cannot be made.
    [[nodiscard]] bool draw(const handover::BagLabel& label, const QRectF& box) {
        const Code code = codeOf(label.code);
        if (code == nullptr)
            return false;
        const qreal air = mm(2.5);
        const QRectF inside = box.adjusted(air, air, -air, -air);
        const qreal side = std::min(inside.height(), inside.width() * 0.42);
        drawCode(*code, {inside.right() - side, inside.top() + (inside.height() - side) / 2, side, side});
        QRectF words(inside.left(), inside.top(), inside.width() - side - mm(2), inside.height());
        line(words, QStringLiteral("Bag %1").arg(told(label.bag)), 15, true);
        line(words, told(label.machine), 7.5, true);
        if (!label.jobNumber.empty())
            line(words, QStringLiteral("job %1").arg(told(label.jobNumber)), 6.5, false);
        paragraph(words, lines(label.steps), 7, true);
        paragraph(words, lines(label.content), 7, false);
        return true;
    }

private:
    static qreal mm(qreal length) { return length / mmPerInch * dotsPerInch; }
    static QString told(const std::string& text) { return QString::fromStdString(text); }
    static QString lines(const std::vector<std::string>& all) {
        QStringList list;
        for (const std::string& one : all)
            list << told(one);
        return list.join(QStringLiteral(", "));
    }

    // Whole dots for each module, so that none is thinner than its neighbour; four modules stay white around.
    void drawCode(const QRcode& code, const QRectF& box) {
        constexpr int quietZone = 4;
        const int across = code.width + 2 * quietZone;
        const int dot = std::max(1, static_cast<int>(box.width()) / across);
        const int left = static_cast<int>(box.left() + (box.width() - dot * across) / 2) + quietZone * dot;
        const int top = static_cast<int>(box.top() + (box.height() - dot * across) / 2) + quietZone * dot;
        for (int y = 0; y < code.width; ++y)
            for (int x = 0; x < code.width; ++x)
                if ((code.data[y * code.width + x] & 1) != 0)
                    painter_.fillRect(QRect(left + x * dot, top + y * dot, dot, dot), Qt::black);
    }

    [[nodiscard]] QFont font(qreal points, bool bold) const {
        QFont made{families_};
        made.setPointSizeF(points);
        made.setBold(bold);
        return made;
    }

    // One line, cut with dots where it is too long; what is left of the box moves down.
    void line(QRectF& box, const QString& text, qreal points, bool bold) {
        if (text.isEmpty())
            return;
        painter_.setFont(font(points, bold));
        const QFontMetricsF measure(painter_.font(), painter_.device());
        if (measure.height() > box.height() + 1)
            return;
        painter_.drawText(QRectF(box.left(), box.top(), box.width(), measure.height()),
                          Qt::AlignLeft | Qt::AlignVCenter,
                          measure.elidedText(text, Qt::ElideRight, box.width()));
        box.setTop(box.top() + measure.height());
    }

    // Words on as many lines as there is room for.
    void paragraph(QRectF& box, const QString& text, qreal points, bool bold) {
        const QFontMetricsF measure(font(points, bold), painter_.device());
        QString rest = text;
        while (!rest.isEmpty() && box.height() >= measure.height()) {
            QString now = rest;
            const bool last = box.height() < 2 * measure.height();
            while (!last && measure.horizontalAdvance(now) > box.width()) {
                const auto blank = now.lastIndexOf(u' ');
                if (blank <= 0)
                    break;
                now.truncate(blank);
            }
            line(box, now, points, bold);
            rest = rest.mid(now.size()).trimmed();
        }
    }

    QPainter& painter_;
    const QStringList& families_;
};

} // namespace

std::optional<LabelStock> labelStock(std::string_view word) {
    if (word == "a4")
        return LabelStock::A4;
    return word == "letter" ? std::optional(LabelStock::Letter) : std::nullopt;
}

int labelsOnSheet(LabelStock stock) {
    const Grid grid = gridOf(stock);
    return grid.columns * grid.rows;
}

tl::expected<std::vector<std::byte>, std::string> labelSheet(const std::vector<handover::BagLabel>& labels,
                                                             LabelStock stock, int first) {
    const Grid grid = gridOf(stock);
    const int each = labelsOnSheet(stock);
    if (labels.empty())
        return tl::unexpected(std::string("this job has no bags: give a strip step its bag first"));
    if (first < 1 || first > each)
        return tl::unexpected("first: the sheet has places 1 to " + std::to_string(each) + ", given was " +
                              std::to_string(first));
    if (paper::families().isEmpty())
        return tl::unexpected(std::string(
            "the fonts for printing cannot be loaded: install Undercowl again, it lacks its own"));
    QByteArray bytes;
    QBuffer buffer{&bytes};
    if (!buffer.open(QIODevice::WriteOnly))
        return tl::unexpected(std::string("no memory for the labels: close other programs and print again"));
    {
        QPdfWriter writer{&buffer};
        writer.setResolution(dotsPerInch);
        writer.setPageSize(QPageSize{grid.page});
        writer.setPageMargins(QMarginsF{0, 0, 0, 0}, QPageLayout::Millimeter);
        writer.setTitle(QStringLiteral("Bag labels"));
        writer.setCreator(QStringLiteral("Undercowl"));
        QPainter painter{&writer};
        if (!painter.isActive())
            return tl::unexpected(
                std::string("the labels cannot be painted: free some memory and print again"));
        Printer printer{painter, paper::families()};
        const auto dots = [](qreal mm) { return mm / mmPerInch * dotsPerInch; };
        int place = first - 1;
        for (const handover::BagLabel& label : labels) {
            if (place == each) {
                writer.newPage();
                place = 0;
            }
            const int column = place % grid.columns;
            const int row = place / grid.columns;
            const QRectF box(dots(grid.left + grid.acrossStep * column), dots(grid.top + grid.downStep * row),
                             dots(grid.width), dots(grid.height));
            ++place;
            if (!printer.draw(label, box))
                return tl::unexpected("bag \"" + label.bag +
                                      "\": its name does not fit into a code; give it a shorter one");
        }
    }
    buffer.close();
    paper::forgetWhenPrinted(bytes);
    const auto* data = reinterpret_cast<const std::byte*>(bytes.constData());
    return std::vector<std::byte>{data, data + bytes.size()};
}

} // namespace undercowl::platform
