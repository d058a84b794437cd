// SPDX-License-Identifier: GPL-3.0-or-later
// The words of a wall sheet, before anything is measured.
#pragma once
#include "sheets/sheet_options.hpp"

#include <QStringList>

#include <vector>

namespace bw {

struct WallRow {
    QString label; // "A1"
    QString name;  // empty: an open slot
    QString dose, tempo, effort;
    QString easier, harder; // whole phrases; empty: none
    bool main = false;
};

struct WallGroup {
    QString rounds, rest;
    std::vector<WallRow> rows;
};

struct WallSection {
    QString name, minutes; // "24–28 min" over the weeks of the stair; empty: nothing timed
    std::vector<WallGroup> groups; // those with slots
};

struct WallWeek {
    QString week, intent, rir, rounds;
    int tread = 0; // height on the stair: 0 for the most repetitions in reserve
};

struct WallContent {
    QString month, title, format, formatSentence;
    QString running, whose; // head of later pages; foot of all
    std::vector<WallSection> sections;
    std::vector<WallWeek> weeks;
    QStringList legend; // sentences on the marks that this sheet uses
};

[[nodiscard]] WallContent wallContent(const Gym& gym, const Block& block,
                                      const SheetOptions& options);
[[nodiscard]] QString openSlotText(); // "coach’s choice"

} // namespace bw
