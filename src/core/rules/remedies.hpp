// SPDX-License-Identifier: GPL-3.0-or-later
// What several rules offer to try. Each action changes only the place that it names, and nothing
// when that place has gone.
#pragma once
#include "blockwright/rules/facts.hpp"
#include "blockwright/rules/finding.hpp"

#include <optional>
#include <vector>

namespace bw {

[[nodiscard]] Remedy advice(Message label); // only the coach can do it
[[nodiscard]] Remedy setRestTo(const Facts& facts, Place group, Range<Millis> rest);
[[nodiscard]] Remedy setDoseTo(const Facts& facts, const SlotFact& slot, const Dose& dose);
[[nodiscard]] Remedy setTempoTo(const Facts& facts, const SlotFact& slot, const Tempo& tempo);
// Keeps the slot's dose when the exercise can be timed by it; else takes its usual one.
[[nodiscard]] Remedy useExercise(const Facts& facts, const SlotFact& slot,
                                 const Exercise& exercise);

[[nodiscard]] std::function<void(Block&)> setRounds(Place group, Range<int> rounds);
// To the place of another group of its section; heads told by count go with their groups.
[[nodiscard]] std::function<void(Block&)> moveGroup(Place group, int to);

// One round less where a week of this mode feels it; none when there is no round to spare.
[[nodiscard]] std::optional<Range<int>> fewerRounds(Range<int> rounds, RoundsMode mode);
// The rest as it stands, moved no further than needed to lie in [lo, hi] seconds.
[[nodiscard]] Range<Millis> restWithin(Range<Millis> rest, const LimitValue& seconds);
// The same dose, each end `steps` further up or down (1 rep, 5 s, 5 m, 1 kcal a step) and never
// below one step; none at the bounds of a dose.
[[nodiscard]] std::optional<Dose> shifted(const Dose& dose, int steps);

// Ways to make the session shorter in this week, each with what it saves: a round less in the
// longest group, every rest at its short end, no talk. In one section, or (-1) in all.
[[nodiscard]] std::vector<Remedy> shorten(const Facts& facts, int section);
// A round more in the shortest group of a section that keeps within `most`; none when none does.
[[nodiscard]] std::optional<Remedy> addRound(const Facts& facts, int section, Millis most);

} // namespace bw
