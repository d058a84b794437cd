// SPDX-License-Identifier: GPL-3.0-or-later
// What of a draft and a gym goes with an exercise: the dose of a slot, the kit at hand.
#pragma once
#include "blockwright/model/gym.hpp"

namespace bw {

// Can this dose of the exercise be timed? Reps also by the slot's tempo.
[[nodiscard]] bool canTime(const Slot& slot, const Exercise& exercise, const Dose& dose);
// What a coach would first write down in a kind of section (common practice, no source).
[[nodiscard]] Dose usualDose(const Exercise& exercise, SectionKind kind);
// The slot's dose when the exercise can be timed by it, else the usual one.
[[nodiscard]] Dose fittingDose(const Slot& slot, const Exercise& exercise, SectionKind kind);

// The first alternative of which the gym owns enough for one member; null when there is none. A gym
// that has told no kit at all owns everything. Needs nothing: null as well, so ask needs.empty().
[[nodiscard]] const std::vector<KitNeed>* kitAtHand(const Gym& gym, const Exercise& exercise);
[[nodiscard]] bool ownsKitFor(const Gym& gym, const Exercise& exercise);

} // namespace bw
