#include "platform/linux/paper.h"

#include <QAbstractTextDocumentLayout>
#include <QImage>
#include <QPainter>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>

#include <algorithm>
#include <cmath>

namespace undercowl::platform::paper {
namespace {

using handover::Text;

// Points, on paper.
constexpr qreal bodyPt = 9.5;
constexpr qreal titlePt = 19;
constexpr qreal headingPt = 12.5;
constexpr qreal asidePt = 8;
constexpr qreal footerPt = 7.5;
constexpr qreal footerHeightPt = 22;

constexpr int picturesInRow = 3;
constexpr int pictureDotsPerInch = 220; // enough for paper; the original stays in the store

// In a PDF/A Qt writes a ligature as the one sign that it is drawn with, so that "off" is no longer found by
// its letters. Letters that are set apart, by however little, are not joined.
constexpr qreal noLigatures = 0.02;

const QColor ink{0x14, 0x18, 0x1B};
const QColor quiet{0x3F, 0x48, 0x4E};
const QColor accent{0x00, 0x4F, 0x40};
const QColor line{0xC9, 0xC4, 0xB8};
const QColor caution{0x65, 0x3C, 0x00};
const QColor cautionGround{0xFB, 0xF1, 0xDC};

class Setter {
public:
    Setter(QTextDocument& pages, qreal dotsPerPoint, qreal width, const handover::Words& words,
           const MediaFile& mediaFile)
        : pages_(pages), dots_(dotsPerPoint), width_(width), words_(words), mediaFile_(mediaFile),
          cursor_(&pages) {}

    void set(const handover::Document& document) {
        newBlock(block(0, 4));
        cursor_.insertText(said(document.title), letters(titlePt, ink, true));
        for (const handover::Section& section : document.sections) {
            QTextBlockFormat format = block(13, 4);
            format.setHeadingLevel(2);
            newBlock(format);
            cursor_.insertText(said(section.title), letters(headingPt, accent, true));
            for (const handover::Block& each : section.blocks)
                std::visit([this](const auto& which) { set(which); }, each);
        }
    }

private:
    [[nodiscard]] QString said(const Text& text) const { return QString::fromStdString(words_(text)); }

    [[nodiscard]] static QTextCharFormat letters(qreal points, const QColor& colour, bool bold = false) {
        QTextCharFormat format;
        format.setFontFamilies(families());
        format.setFontPointSize(points);
        format.setFontLetterSpacingType(QFont::AbsoluteSpacing);
        format.setFontLetterSpacing(noLigatures);
        format.setForeground(colour);
        if (bold)
            format.setFontWeight(QFont::Bold);
        return format;
    }

    // Spaces above and below in points.
    [[nodiscard]] QTextBlockFormat block(qreal above, qreal below) const {
        QTextBlockFormat format;
        format.setTopMargin(above * dots_);
        format.setBottomMargin(below * dots_);
        return format;
    }

    void newBlock(const QTextBlockFormat& format) {
        if (started_) {
            cursor_.movePosition(QTextCursor::End);
            cursor_.insertBlock(format);
        } else {
            cursor_.setBlockFormat(format);
            started_ = true;
        }
        cursor_.setBlockCharFormat(letters(bodyPt, ink));
    }

    void set(const handover::Paragraph& paragraph) {
        if (paragraph.weight == handover::Weight::Caution) {
            setCaution(paragraph);
            return;
        }
        const bool strong = paragraph.weight == handover::Weight::Strong;
        newBlock(block(strong ? 6 : 1, 2));
        cursor_.insertText(said(paragraph.text), letters(bodyPt, ink, strong));
    }

    // A box with a thick edge: told apart from the rest on a grey print too.
    void setCaution(const handover::Paragraph& paragraph) {
        QTextTableFormat format = bare();
        format.setTopMargin(2 * dots_);
        QTextTableCell inside = newTable(1, 1, format)->cellAt(0, 0);
        QTextTableCellFormat box;
        box.setBackground(cautionGround);
        box.setPadding(3.5 * dots_);
        box.setLeftPadding(7 * dots_);
        box.setLeftBorder(4 * dots_);
        box.setLeftBorderStyle(QTextFrameFormat::BorderStyle_Solid);
        box.setLeftBorderBrush(caution);
        inside.setFormat(box);
        inside.firstCursorPosition().insertText(said(paragraph.text), letters(bodyPt, ink, true));
    }

    void set(const handover::Table& table) {
        const bool headed = !table.head.empty();
        std::size_t columns = table.head.size();
        for (const handover::Row& row : table.rows)
            columns = std::max(columns, row.cells.size());
        if (columns == 0 || table.rows.empty())
            return;
        QTextTableFormat format = bare();
        if (headed)
            format.setHeaderRowCount(1); // again on each page
        format.setColumnWidthConstraints(shares(table, columns));
        QTextTable* grid = newTable(static_cast<int>(table.rows.size()) + (headed ? 1 : 0),
                                    static_cast<int>(columns), format);
        int at = 0;
        if (headed)
            setRow(*grid, at++, table.head, true, false);
        for (const handover::Row& row : table.rows)
            setRow(*grid, at++, row.cells, false, !headed);
    }

    void setRow(QTextTable& grid, int at, const std::vector<Text>& cells, bool head, bool labelled) {
        for (int column = 0; column < grid.columns(); ++column) {
            QTextTableCell cell = grid.cellAt(at, column);
            QTextTableCellFormat format;
            format.setTopPadding(2.2 * dots_);
            format.setBottomPadding(2.2 * dots_);
            format.setRightPadding(column + 1 == grid.columns() ? 0 : 7 * dots_);
            format.setBottomBorder((head ? 1.2 : 0.6) * dots_);
            format.setBottomBorderStyle(QTextFrameFormat::BorderStyle_Solid);
            format.setBottomBorderBrush(head ? quiet : line);
            cell.setFormat(format);
            if (static_cast<std::size_t>(column) >= cells.size())
                continue;
            const bool aside = head || (labelled && column == 0);
            const Text& text = cells.at(static_cast<std::size_t>(column));
            cell.firstCursorPosition().insertText(
                said(text), letters(aside ? asidePt : bodyPt, aside ? quiet : ink, head || emphatic(text)));
        }
    }

    // What a glance down the table must catch.
    [[nodiscard]] static bool emphatic(const Text& text) {
        const auto* message = std::get_if<handover::Message>(&text);
        return message != nullptr &&
               (message->key == "record.severity.unsafe" || message->key == "record.verdict.outside" ||
                message->key == "record.verdict.close" || message->key == "record.wiring.matches-not");
    }

    // Each column is given room for its longest word, since a number must not be split from its unit; what is
    // left of the width is shared by what the columns hold besides.
    [[nodiscard]] QVector<QTextLength> shares(const handover::Table& table, std::size_t columns) const {
        constexpr qreal letterPt = 5.4; // of the body, about
        constexpr qreal most = 44;
        const qreal lineLetters = width_ / dots_ / letterPt;
        std::vector<qreal> words(columns, 1);
        std::vector<qreal> texts(columns, 1);
        const auto measure = [&](const std::vector<Text>& cells) {
            for (std::size_t i = 0; i < cells.size(); ++i) {
                const QString text = said(cells.at(i));
                for (const QString& word : text.split(u' '))
                    words.at(i) = std::max(words.at(i), static_cast<qreal>(word.size()));
                texts.at(i) = std::clamp(static_cast<qreal>(text.size()), texts.at(i), most);
            }
        };
        measure(table.head);
        for (const handover::Row& row : table.rows)
            measure(row.cells);
        constexpr qreal gapLetters = 2;
        qreal needed = 0;
        qreal wanted = 0;
        for (std::size_t i = 0; i < columns; ++i) {
            needed += words.at(i) + gapLetters;
            wanted += texts.at(i);
        }
        const qreal left = std::max(0.0, lineLetters - needed);
        QVector<QTextLength> lengths;
        for (std::size_t i = 0; i < columns; ++i) {
            const qreal share = words.at(i) + gapLetters + left * texts.at(i) / wanted;
            lengths << QTextLength{QTextLength::PercentageLength,
                                   100 * share / std::max(lineLetters, needed)};
        }
        return lengths;
    }

    void set(const handover::Pictures& pictures) {
        std::vector<std::pair<QImage, QString>> shown;
        for (const handover::Picture& picture : pictures.pictures)
            if (QImage image = read(picture.media); !image.isNull())
                shown.emplace_back(std::move(image), said(picture.caption));
        if (shown.empty())
            return;
        const int count = static_cast<int>(shown.size());
        const int rows = (count + picturesInRow - 1) / picturesInRow;
        QTextTableFormat format = bare();
        format.setColumnWidthConstraints(QVector<QTextLength>(
            picturesInRow, QTextLength{QTextLength::PercentageLength, 100.0 / picturesInRow}));
        QTextTable* grid = newTable(rows, picturesInRow, format);
        for (int i = 0; i < rows * picturesInRow; ++i) {
            QTextTableCell cell = grid->cellAt(i / picturesInRow, i % picturesInRow);
            QTextTableCellFormat inside;
            inside.setTopPadding(4 * dots_);
            inside.setRightPadding(gapPt * dots_);
            cell.setFormat(inside);
            if (i < count)
                setPicture(cell, shown.at(static_cast<std::size_t>(i)));
        }
    }

    void setPicture(const QTextTableCell& cell, const std::pair<QImage, QString>& shown) {
        // Counted over the whole document: a name that comes twice shows the later picture in both places.
        const QUrl name{QStringLiteral("picture:%1").arg(pictures_++)};
        pages_.addResource(QTextDocument::ImageResource, name, shown.first);
        QTextImageFormat image;
        image.setName(name.toString());
        // Portrait photos are set no higher than landscape ones are wide.
        const qreal scale = pictureWidth() / std::max(shown.first.width(), shown.first.height());
        image.setWidth(scale * shown.first.width());
        image.setHeight(scale * shown.first.height());
        QTextCursor at = cell.firstCursorPosition();
        at.insertImage(image);
        at.insertBlock(block(1, 0));
        at.insertText(shown.second, letters(asidePt, quiet));
    }

    [[nodiscard]] QImage read(const std::string& media) const {
        const std::filesystem::path file = mediaFile_ ? mediaFile_(media) : std::filesystem::path{};
        return file.empty()
                   ? QImage{}
                   : photo(file, qRound(pictureWidth() / dots_ / pointsPerInch * pictureDotsPerInch));
    }

    [[nodiscard]] qreal pictureWidth() const { return width_ / picturesInRow - gapPt * dots_; }

    [[nodiscard]] QTextTableFormat bare() const {
        QTextTableFormat format;
        format.setWidth(QTextLength{QTextLength::PercentageLength, 100});
        format.setBorder(0);
        format.setCellSpacing(0);
        format.setCellPadding(0);
        format.setBorderCollapse(false);
        return format;
    }

    QTextTable* newTable(int rows, int columns, const QTextTableFormat& format) {
        cursor_.movePosition(QTextCursor::End);
        QTextTable* table = cursor_.insertTable(rows, columns, format);
        cursor_.movePosition(QTextCursor::End);
        // A table is always followed by a block; it is used by what comes next only as a gap.
        QTextBlockFormat after = block(0, 0);
        after.setLineHeight(2 * dots_, QTextBlockFormat::FixedHeight);
        cursor_.setBlockFormat(after);
        tiny(cursor_);
        return table;
    }

    static void tiny(QTextCursor at) { at.setBlockCharFormat(letters(1, ink)); }

    static constexpr qreal pointsPerInch = 72;
    static constexpr qreal gapPt = 8;

    QTextDocument& pages_;
    qreal dots_; // of the layout to a point
    qreal width_;
    const handover::Words& words_;
    const MediaFile& mediaFile_;
    QTextCursor cursor_;
    int pictures_{};
    bool started_{};
};

bool isHeading(const QTextBlock& block) {
    return block.blockFormat().headingLevel() > 0;
}

void breakBefore(const QTextBlock& block) {
    QTextCursor at{block};
    QTextBlockFormat format = block.blockFormat();
    format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
    at.setBlockFormat(format);
}

// No heading at the foot of a page: one with too little room below it, or whose first line or picture goes to
// the next page, goes there with it. And no last page with a few lines alone: the section before comes along,
// where that leaves the page before it no emptier than half.
void keepHeadingsWithText(QTextDocument& pages, qreal roomNeeded) {
    const qreal height = pages.pageSize().height();
    const auto topOf = [&](const QTextBlock& block) {
        return pages.documentLayout()->blockBoundingRect(block).top();
    };
    const auto pageOf = [&](const QTextBlock& block) { return std::floor(topOf(block) / height); };
    QTextBlock last;
    QTextBlock before;
    for (QTextBlock block = pages.begin(); block.isValid(); block = block.next()) {
        if (!isHeading(block))
            continue;
        before = last;
        last = block;
        QTextBlock text = block.next();
        while (text.isValid() && text.length() <= 1) // the gap behind a table, an empty cell
            text = text.next();
        const bool parted = text.isValid() && !isHeading(text) && pageOf(text) > pageOf(block);
        if (parted || height - std::fmod(topOf(block), height) < roomNeeded)
            breakBefore(block);
    }
    if (!before.isValid() || pageOf(last) == 0 || pageOf(before) == pageOf(last))
        return;
    constexpr qreal nearTop = 0.1;
    const qreal into = topOf(last) - pageOf(last) * height;
    const bool alone = into < nearTop * height && pageOf(last) + 1 == pages.pageCount();
    const qreal beforeIn = topOf(before) - pageOf(before) * height;
    if (alone && pageOf(before) + 1 == pageOf(last) && beforeIn > height / 2) {
        QTextCursor free{last}; // it follows on the page that the section before begins
        QTextBlockFormat format = last.blockFormat();
        format.setPageBreakPolicy(QTextFormat::PageBreak_Auto);
        free.setBlockFormat(format);
        breakBefore(before);
    }
}

} // namespace

tl::expected<void, std::string> print(QPagedPaintDevice& device, const handover::Document& document,
                                      const handover::Words& words, const MediaFile& mediaFile) {
    if (families().isEmpty())
        return tl::unexpected(std::string{
            "the fonts for printing cannot be loaded: install Undercowl again, it lacks its own"});
    QPainter painter{&device};
    if (!painter.isActive())
        return tl::unexpected(std::string{"the pages cannot be painted: free some memory and print again"});
    const qreal dots = device.logicalDpiY() / 72.0;
    const QSizeF whole{static_cast<qreal>(device.width()), static_cast<qreal>(device.height())};
    const QSizeF page{whole.width(), whole.height() - footerHeightPt * dots};

    QTextDocument pages;
    pages.documentLayout()->setPaintDevice(&device);
    pages.setDocumentMargin(0);
    pages.setUndoRedoEnabled(false);
    QFont font{families()};
    font.setPointSizeF(bodyPt);
    pages.setDefaultFont(font);
    pages.setPageSize(page);
    // Sizes in a text document's formats are in dots of 96 to the inch, whatever the device.
    constexpr qreal layoutDotsPerInch = 96;
    Setter{pages, layoutDotsPerInch / 72, page.width() * layoutDotsPerInch / device.logicalDpiX(), words,
           mediaFile}
        .set(document);
    constexpr qreal roomForHeadingPt = 80;
    keepHeadingsWithText(pages, roomForHeadingPt * dots);

    font.setPointSizeF(footerPt);
    font.setLetterSpacing(QFont::AbsoluteSpacing, noLigatures);
    const int count = pages.pageCount();
    for (int number = 0; number < count; ++number) {
        if (number > 0)
            device.newPage();
        painter.save();
        painter.translate(0, -number * page.height());
        const QRectF view{0, number * page.height(), page.width(), page.height()};
        painter.setClipRect(view);
        QAbstractTextDocumentLayout::PaintContext context;
        context.clip = view;
        context.palette.setColor(QPalette::Text, ink);
        pages.documentLayout()->draw(&painter, context);
        painter.restore();

        painter.setFont(font);
        painter.setPen(quiet);
        const QRectF foot{0, page.height(), whole.width(), footerHeightPt * dots};
        painter.drawText(foot, Qt::AlignLeft | Qt::AlignBottom,
                         QString::fromStdString(words(document.title)));
        painter.drawText(foot, Qt::AlignRight | Qt::AlignBottom,
                         QStringLiteral("%1 / %2").arg(number + 1).arg(count));
    }
    return {};
}

} // namespace undercowl::platform::paper
