// SPDX-License-Identifier: GPL-3.0-or-later
// The session for a display on the wall, read at five metres during the class: one section at a
// time, what comes next below, the time on top. Laid out in millimetres of a display of 40 inches
// (885.5 × 498.1 mm at 16:9); on any other it grows and shrinks with the screen. Whoever shows it
// gives the time.
#pragma once
#include "sheets/band.hpp"
#include "sheets/board/board_clock.hpp"
#include "sheets/board/board_words.hpp"

namespace bw {

// Capitals of what is read from afar stand at least so high: 3.4 times the threshold of sight at
// 5 m (legibility.hpp). The rest is twice that threshold.
inline constexpr double kBoardCap = 25, kBoardLesserCap = 15;

struct BoardSection {
    BoardPart part;
    std::vector<Band> rows;  // never empty
    std::vector<Band> loads; // empty until addLoads()
    QString next;            // one line
};

struct Board {
    QSizeF paper;
    QString title, family;
    int week = 1;
    std::vector<BoardSection> sections; // those with slots
};

// `shape` is the screen's. Needs a QGuiApplication.
[[nodiscard]] Board layoutBoard(const Gym& gym, const Block& block, Week week, QSizeF shape,
                                const QString& family = QStringLiteral("DejaVu Sans"));
// The matter must be of the same gym and block.
void addLoads(Board& board, const SheetMatter& matter, Week week, MassUnit unit);

struct BoardMoment {
    std::size_t section = 0, page = 0;
    bool loads = false;
    BoardTime time;
};
// One page. The section and page must exist.
[[nodiscard]] Layout boardPage(const Board& board, const BoardMoment& moment);

} // namespace bw
