// SPDX-License-Identifier: GPL-3.0-or-later
// What the simulated class says in words. Clocks are minutes and seconds, as on the Minute rail: an
// hour is 60:00.
#pragma once
#include "desk/floor/lane_plan.hpp"

#include <QString>

namespace bw {

[[nodiscard]] QString floorClock(MeanTime time); // "5:46"
[[nodiscard]] QString percent(double share);     // "31 %"
[[nodiscard]] QString kitName(const Gym& gym, const KitId& id);
[[nodiscard]] QString slotMark(const Block& block, Place place); // "D1", "D"

// "Finisher", "Strength D–E" where there are several of the kind.
[[nodiscard]] QString sectionName(const Block& block, int section);

// What a coach would want to know first: who, and when the class ends; then waits, budgets and
// rounds; and both in one.
[[nodiscard]] QString floorLead(const FloorView& view);
[[nodiscard]] QString floorDetails(const FloorView& view);
[[nodiscard]] QString floorSummary(const FloorView& view);
// "floor 57:40–61:10, 31 % of classes too late": for the head of the Minute rail.
[[nodiscard]] QString floorInShort(const FloorView& view);
// "Half of 1,000 classes end by 59:20, ...": the picture of the finishes in words.
[[nodiscard]] QString finishSentence(const FloorView& view);
// "Strength: half of the classes are through by 47:10, 9 in 10 by 49:00; planned 44:10."
[[nodiscard]] QString sectionEndSentence(const QString& section, const FloorTimes& end,
                                         Millis planned);
// "Member 4 · 17:20–17:58 (0:38) · D1 Trap-bar deadlift, round 2"
[[nodiscard]] QString pieceWords(const FloorView& view, const Lane& lane, const LanePiece& piece);

// "D 6, E 6; F 4, G 8"
[[nodiscard]] QString headsWords(const Block& block, const FloorHeads& heads);

} // namespace bw
