// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/board_sheet.hpp"
#include "sheets/board/board_setter.hpp"
#include "sheets/sheet_words.hpp"

#include <algorithm>

namespace bw {

namespace {
// Millimetres on the display of 40 inches: from the top, or for the last two from the foot.
constexpr double kWide = 885.5, kHigh = 498.1, kMargin = 18;
constexpr double kNameBase = 50, kHeadBase = 75, kBarTop = 84, kBarHigh = 11, kBodyTop = 104;
constexpr double kNextBase = 24, kBodyFoot = 52;
constexpr double kNameSize = 1.15, kStep = 0.96;

QSizeF paperOf(QSizeF shape) {
    const double ratio = shape.isEmpty() ? kWide / kHigh : shape.width() / shape.height();
    return ratio >= kWide / kHigh ? QSizeF(kHigh * ratio, kHigh) : QSizeF(kWide, kWide / ratio);
}
double widthOf(const Board& board) { return board.paper.width() - 2 * kMargin; }

BoardSetter setterFor(const Board& board, const TypeRuler& ruler) {
    return {ruler,
            {widthOf(board), board.paper.height() - kBodyTop - kBodyFoot},
            ruler.emOfCap(kBoardCap)};
}
Type lesser(const TypeRuler& ruler) { return {ruler.emOfCap(kBoardLesserCap)}; }

// As many exercises as one line holds, and how many there are beside them.
QString nextLine(const BoardPart& next, const TypeRuler& ruler, double width) {
    QStringList names;
    for (const BoardGroup& group : next.groups)
        for (const BoardRow& row : group.rows) names << row.name;
    const auto all = names.size();
    for (;; names.removeLast()) {
        QString text = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Next: %1")).arg(next.name);
        if (!names.isEmpty()) text += QStringLiteral(" · ") + names.join(QStringLiteral(", "));
        if (names.size() < all)
            text += QStringLiteral(" · ") +
                    sheetSay(names.isEmpty() ? QT_TRANSLATE_NOOP("bw::sheets", "%1 exercises")
                                             : QT_TRANSLATE_NOOP("bw::sheets", "%1 more"))
                        .arg(all - names.size());
        if (names.isEmpty() || ruler.width(text, lesser(ruler)) <= width) return text;
    }
}

QString underName(const Board& board, const BoardMoment& m, std::size_t pages) {
    QString text = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "Week %1")).arg(board.week);
    if (m.loads) text += QStringLiteral(" · ") + sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "loads"));
    if (pages > 1)
        text +=
            QStringLiteral(" · ") + pageText(static_cast<int>(m.page) + 1, static_cast<int>(pages));
    return text;
}

void putFitted(PagePen& pen, const QString& text, QPointF at, double room, PagePen::Look look) {
    while (pen.ruler().width(text, look.type) > room) look.type.em *= kStep;
    pen.left(text, at, room, look);
}
} // namespace

Board layoutBoard(const Gym& gym, const Block& block, Week week, QSizeF shape,
                  const QString& family) {
    Board board;
    board.paper = paperOf(shape);
    board.title = blockText(block);
    board.family = family;
    board.week = week.number();
    const TypeRuler ruler(family);
    const BoardSetter setter = setterFor(board, ruler);
    for (BoardPart& part : boardParts(gym, block, week)) {
        if (!board.sections.empty())
            board.sections.back().next = nextLine(part, ruler, widthOf(board));
        std::vector<Band> rows = setter.rows(part);
        board.sections.push_back({std::move(part), std::move(rows), {}, {}});
    }
    if (!board.sections.empty())
        board.sections.back().next = sheetSay(QT_TRANSLATE_NOOP("bw::sheets", "The last section"));
    return board;
}

void addLoads(Board& board, const SheetMatter& matter, Week week, MassUnit unit) {
    const TypeRuler ruler(board.family);
    const BoardSetter setter = setterFor(board, ruler);
    std::vector<BoardPart> parts;
    for (const BoardSection& section : board.sections) parts.push_back(section.part);
    const auto loads = boardLoads(matter, week, unit, parts);
    for (std::size_t i = 0; i < loads.size(); ++i) board.sections[i].loads = setter.loads(loads[i]);
}

Layout boardPage(const Board& board, const BoardMoment& moment) {
    const BoardSection& section = board.sections.at(moment.section);
    const auto& bands = moment.loads ? section.loads : section.rows;
    Layout layout;
    layout.title = board.title;
    layout.paper = board.paper;
    layout.margin = kMargin;
    layout.family = board.family;
    const TypeRuler ruler(board.family);
    PagePen pen(ruler, layout.pages.emplace_back().items);
    const double width = widthOf(board), least = ruler.emOfCap(kBoardCap);
    const ClockWords words = clockWords(section.part.planned, moment.time);
    const double used = putClock(pen, words, moment.time,
                                 {board.paper.width() - kMargin, kHeadBase}, 0.66 * width, least);
    const double room = width - used - least;
    putFitted(pen, section.part.name, {kMargin, kNameBase}, room,
              {{kNameSize * least, Weight::Bold}, Ink::Accent, Rank::Head});
    putFitted(pen, underName(board, moment, bands.size()), {kMargin, kHeadBase}, room,
              {lesser(ruler), Ink::Quiet, Rank::Second});
    putClockBar(pen, section.part.planned, moment.time, {kMargin, kBarTop, width, kBarHigh});
    pen.put(bands.at(moment.page).items, {kMargin, kBodyTop});
    const double foot = board.paper.height();
    pen.line({kMargin, foot - kBodyFoot + 4}, {kMargin + width, foot - kBodyFoot + 4}, 0.8,
             Ink::Hair);
    putFitted(pen, section.next, {kMargin, foot - kNextBase}, width,
              {lesser(ruler), Ink::Quiet, Rank::Second});
    return layout;
}

} // namespace bw
