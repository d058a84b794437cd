// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the board, before anything is measured.
#pragma once
#include "sheets/sheet_layout.hpp"

#include <QStringList>

#include <vector>

namespace bw {

struct BoardRow {
    QString label, name, dose, tempo;
    bool main = false;
};

struct BoardGroup {
    QString head; // "3 rounds, rest 60–90 s, 3 in reserve"
    std::vector<BoardRow> rows;
};

struct BoardPart {
    int section = 0; // of the block
    QString name;
    Millis planned{0}; // whole seconds; 0: nothing timed
    std::vector<BoardGroup> groups;
};

struct BoardLoads {
    struct Line {
        QString member;
        QStringList cells; // one a label; "–": nothing to choose
    };
    QStringList labels; // of slots in which some member has a load to take
    std::vector<Line> lines;
};

// The sections that have slots, as one week takes them.
[[nodiscard]] std::vector<BoardPart> boardParts(const Gym& gym, const Block& block, Week week);
// For each part the loads of the active members. As on a card nothing tells of a flag: a member
// with another exercise reads "see card".
[[nodiscard]] std::vector<BoardLoads> boardLoads(const SheetMatter& matter, Week week,
                                                 MassUnit unit,
                                                 const std::vector<BoardPart>& parts);
// "Strength. A1 Back squat, 5, 31X1. …", to be read out.
[[nodiscard]] QString readOut(const BoardPart& part);

} // namespace bw
