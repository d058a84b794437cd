// SPDX-License-Identifier: GPL-3.0-or-later
// The Stair in words: on the steps, in the cells and for screen readers.
#pragma once
#include "blockwright/ledger/target.hpp"

#include <QString>

namespace bw {

[[nodiscard]] QString roundsWord(RoundsMode mode); // "low rounds"
[[nodiscard]] QString inReserve(Rir rir);          // "2.5 in reserve"
[[nodiscard]] QString rpeText(Rir rir);            // "RPE 7.5"
// "Week 2 of 4: build, open rounds, 3 in reserve, RPE 7."
[[nodiscard]] QString stepSentence(const Block& block, Week week);
// All weeks in a sentence each.
[[nodiscard]] QString stairSummary(const Block& block);

[[nodiscard]] QString planCell(const PlanStep& step); // "2–3 · 4 left", "2"
[[nodiscard]] QString planSentence(const PlanStep& step, const Exercise* exercise);
// As short as it can be said: "62.5 kg", "find it", "harder".
[[nodiscard]] QString targetCell(const Target& target, MassUnit unit);
// What to put on the bar and why.
[[nodiscard]] QString targetSentence(const Target& target, MassUnit unit);

} // namespace bw
