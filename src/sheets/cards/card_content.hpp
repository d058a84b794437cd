// SPDX-License-Identifier: GPL-3.0-or-later
// The words of member cards, before anything is measured.
#pragma once
#include "blockwright/ledger/target.hpp"
#include "sheets/sheet_layout.hpp"

#include <QStringList>

#include <vector>

namespace bw {

struct CardWeek {
    QString name, days, aim; // "Week 1", "1–7, learn", "4 in reserve"
};

struct CardCell {
    QString load; // "62.5 kg"
    QString word; // in place of a load: "find it"
    QString how;  // what goes on the bar, or more about the set
};

struct CardRow {
    QString label, name, dose;
    QString instead; // "instead of Broad jump"
    bool main = false;
    bool opens = false;          // the first of its group
    std::vector<CardCell> cells; // one a week; none: nothing to write
};

// Neighbouring groups of a section with the same rounds and rest.
struct CardPart {
    QString head;       // "Strength, rest 60–90 s"
    QStringList rounds; // by week
    std::vector<CardRow> rows;
    bool brief = false; // a warm-up: one paragraph, nothing to write
};

struct Card {
    QString member;
    std::vector<CardPart> parts;
};

// What all cards of a month have in common.
struct CardFrame {
    QString block, whose;
    std::vector<CardWeek> weeks;
};

[[nodiscard]] CardFrame cardFrame(const SheetMatter& matter, const SheetOptions& options);
[[nodiscard]] Card cardOf(const SheetMatter& matter, const Member& member,
                          const std::vector<SlotTargets>& targets, MassUnit unit);

} // namespace bw
