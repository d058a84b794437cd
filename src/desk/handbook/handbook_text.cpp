// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/handbook_text.hpp"

#include "desk/frame/theme.hpp"

#include <QRegularExpression>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextList>
#include <QTextTable>

#include <algorithm>

namespace bw {

namespace {
constexpr double kCode = 0.9; // of the text's size
constexpr double kLine = 112; // per cent

// Code in a table is mostly the long name of a limit; it may break behind a dot or a dash.
QString breakable(const QString& row) {
    static const QRegularExpression code(QStringLiteral("`[^`]{20,}`")),
        joint(QStringLiteral("([._])"));
    QString out;
    qsizetype done = 0;
    for (auto it = code.globalMatch(row); it.hasNext();) {
        const auto found = it.next();
        out += row.mid(done, found.capturedStart() - done) +
               found.captured().replace(joint, QStringLiteral("\\1\u200B"));
        done = found.capturedEnd();
    }
    return out + row.mid(done);
}

QString linkSource(const QString& file, const QString& label, const QString& target) {
    const QString place = handbookPlace(file, target);
    if (handbookSpot(place).found()) return QStringLiteral("[%1](%2)").arg(label, place);
    const bool outside = target.contains(u':');
    const QString address = outside ? target : QStringLiteral("docs/") + place.section(u'#', 0, 0);
    return label == target ? label : QStringLiteral("%1 (%2)").arg(label, address);
}

QString lineSource(const QString& file, const QString& line) {
    static const QRegularExpression link(QStringLiteral(R"((?<!!)\[([^\]]*)\]\(([^)]*)\))")),
        bare(QStringLiteral("<(https?:[^>]*)>"));
    QString out;
    qsizetype done = 0;
    for (auto it = link.globalMatch(line); it.hasNext();) {
        const auto found = it.next();
        out += line.mid(done, found.capturedStart() - done) +
               linkSource(file, found.captured(1), found.captured(2));
        done = found.capturedEnd();
    }
    out += line.mid(done);
    out.replace(bare, QStringLiteral("\\1"));
    return line.startsWith(u'|') ? breakable(out) : out;
}

class Setter {
public:
    explicit Setter(QTextDocument& text)
        : text_(text), size_(text.defaultFont().pointSizeF()), ink_(inks()) {}

    void set() {
        QSet<QTextTable*> tables;
        for (QTextBlock b = text_.begin(); b.isValid(); b = b.next()) {
            setBlock(b);
            QTextCursor cursor(b);
            if (cursor.currentTable()) tables << cursor.currentTable();
        }
        for (QTextTable* table : tables) setTable(*table);
    }

private:
    void setBlock(const QTextBlock& block) {
        QTextCursor cursor(block);
        cursor.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
        QTextBlockFormat format = block.blockFormat();
        const int level = format.headingLevel();
        if (level > 0)
            setHeading(cursor, format, level);
        else if (isCode(block))
            setCode(block, format);
        else if (format.intProperty(QTextFormat::BlockQuoteLevel) > 0)
            setQuote(format);
        else
            setPlain(block, format, cursor.currentTable() != nullptr);
        QTextCursor(block).setBlockFormat(format);
        setFragments(block, level > 0);
    }

    static bool isCode(const QTextBlock& block) {
        return block.blockFormat().hasProperty(QTextFormat::BlockCodeLanguage);
    }

    static bool hasPicture(const QTextBlock& block) {
        return block.text().contains(QChar::ObjectReplacementCharacter);
    }

    // Steps of Qt's own scale: 0 is the text's size, 1 a fifth more, 2 half as much again.
    void setHeading(QTextCursor& cursor, QTextBlockFormat& format, int level) const {
        const bool title = cursor.blockNumber() == 0;
        QTextCharFormat type;
        type.setProperty(QTextFormat::FontSizeAdjustment, title ? 2 : level < 4 ? 1 : 0);
        type.setFontWeight(QFont::Bold);
        type.setForeground(ink_.ink);
        cursor.mergeCharFormat(type);
        format.setTopMargin(title ? 0 : size_ * (level < 4 ? 2.2 : 1.6));
        format.setBottomMargin(size_ * 0.5);
    }

    // Each line is a block of its own; only the first and the last keep a distance.
    void setCode(const QTextBlock& block, QTextBlockFormat& format) const {
        format.setBackground(ink_.desk);
        format.setNonBreakableLines(false);
        format.setLeftMargin(10);
        format.setTopMargin(isCode(block.previous()) ? 0 : size_ * 0.6);
        format.setBottomMargin(isCode(block.next()) ? 0 : size_ * 0.8);
    }

    // What the program would say: set apart by where it stands.
    static void setQuote(QTextBlockFormat& format) {
        format.setLeftMargin(16);
        format.setRightMargin(0);
        format.setTopMargin(0);
        format.setBottomMargin(0);
        format.setLineHeight(kLine, QTextBlockFormat::ProportionalHeight);
    }

    void setPlain(const QTextBlock& block, QTextBlockFormat& format, bool inTable) const {
        const bool picture = hasPicture(block), item = block.textList() != nullptr;
        if (!picture) format.setLineHeight(kLine, QTextBlockFormat::ProportionalHeight);
        const double apart = inTable ? 0 : item ? size_ * 0.2 : picture ? size_ : size_ * 0.75;
        format.setTopMargin(picture ? apart : 0);
        format.setBottomMargin(apart);
    }

    struct Link {
        int position, length;
        QString place;
    };

    void setFragments(const QTextBlock& block, bool heading) {
        QList<std::pair<int, int>> code;
        QList<Link> links;
        for (auto it = block.begin(); !it.atEnd(); ++it) {
            const QTextFragment f = it.fragment();
            if (f.charFormat().isAnchor())
                links << Link{f.position(), f.length(), f.charFormat().anchorHref()};
            if (f.charFormat().fontFixedPitch() && !heading)
                code << std::pair{f.position(), f.length()};
        }
        QTextCharFormat small;
        small.setFontPointSize(size_ * kCode);
        if (!isCode(block)) small.setBackground(ink_.desk);
        for (const Link& link : links) setLink(link);
        for (const auto& [at, length] : code) merge(at, length, small);
    }

    // The typesetter makes links of bare addresses by itself; they stay words.
    void setLink(const Link& link) {
        const bool inside = handbookSpot(link.place).found();
        QTextCharFormat format;
        format.setAnchor(inside);
        if (!inside) format.setAnchorHref({});
        format.setForeground(inside ? ink_.accent : ink_.ink);
        format.setFontUnderline(inside);
        merge(link.position, link.length, format);
    }

    void merge(int position, int length, const QTextCharFormat& format) {
        QTextCursor cursor(&text_);
        cursor.setPosition(position);
        cursor.setPosition(position + length, QTextCursor::KeepAnchor);
        cursor.mergeCharFormat(format);
    }

    void setTable(QTextTable& table) const {
        QTextTableFormat format = table.format();
        format.setBorder(0);
        format.setBorderCollapse(true);
        format.setCellSpacing(0);
        format.setCellPadding(0);
        format.setWidth(QTextLength(QTextLength::PercentageLength, 99));
        format.setTopMargin(size_ * 0.3);
        format.setBottomMargin(size_);
        table.setFormat(format);
        for (int row = 0; row < table.rows(); ++row)
            for (int column = 0; column < table.columns(); ++column)
                setCell(table.cellAt(row, column), row == 0);
    }

    void setCell(QTextTableCell cell, bool head) const {
        QTextTableCellFormat format = cell.format().toTableCellFormat();
        format.setTopPadding(4);
        format.setBottomPadding(4);
        format.setRightPadding(14);
        format.setBottomBorder(1);
        format.setBottomBorderStyle(QTextFrameFormat::BorderStyle_Solid);
        format.setBottomBorderBrush(head ? ink_.quiet : ink_.line);
        format.setVerticalAlignment(QTextCharFormat::AlignTop);
        cell.setFormat(format);
        if (!head) return;
        QTextCursor cursor = cell.firstCursorPosition();
        cursor.setPosition(cell.lastCursorPosition().position(), QTextCursor::KeepAnchor);
        QTextCharFormat type;
        type.setFontWeight(QFont::Bold);
        type.setForeground(ink_.quiet);
        cursor.mergeCharFormat(type);
    }

    QTextDocument& text_;
    double size_; // points
    const Inks& ink_;
};
} // namespace

QString handbookSource(const HandbookPage& page) {
    QString out;
    bool fenced = false;
    for (const QString& line : page.markdown().split(u'\n')) {
        if (line.startsWith(QLatin1String("```"))) fenced = !fenced;
        out += (fenced ? line : lineSource(page.file, line)) + u'\n';
    }
    return out;
}

void setHandbookPage(QTextDocument& text, const HandbookPage& page) {
    text.setUndoRedoEnabled(false);
    text.setMarkdown(handbookSource(page), QTextDocument::MarkdownDialectGitHub);
    Setter(text).set();
}

int blockOfHeading(const QTextDocument& text, int heading) {
    int seen = 0;
    for (QTextBlock b = text.begin(); b.isValid(); b = b.next())
        if (b.blockFormat().headingLevel() > 0 && seen++ == heading) return b.blockNumber();
    return -1;
}

} // namespace bw
