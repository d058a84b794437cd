// SPDX-License-Identifier: GPL-3.0-or-later
// What the minute rail says in words: under the pointer, to a screen reader, along its top.
#pragma once
#include "desk/bench/minute_rail_plan.hpp"

#include <QString>
#include <QStringList>

namespace bw {

[[nodiscard]] QString railClock(ExactTime time); // "26:10"; an hour is "60:00", as on the ruler
[[nodiscard]] QString railBudget(const Range<Millis>& budget); // "8–12 min", "7:30–10:00"
[[nodiscard]] QString pieceName(const RailPiece& piece);       // "Opening", "Strength"

// The line along the top, most important first; what does not fit is left out from the end.
[[nodiscard]] QStringList railHeadline(const RailPlan& plan);
// "Planned 56:10 of 60:00, 3:50 to spare. Opening 3:00. Warm-up 10:20 in 8–12 min. ..."
[[nodiscard]] QString railSummary(const RailPlan& plan);
// "Strength: planned 26:10; short 22:00, long 31:30; budget 22–30 min."
[[nodiscard]] QString pieceSentence(const RailPiece& piece);
[[nodiscard]] QString groupSentence(const RailPiece& piece, const RailGroup& group);

} // namespace bw
