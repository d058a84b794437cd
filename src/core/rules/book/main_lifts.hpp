// SPDX-License-Identifier: GPL-3.0-or-later
// The main lifts of a month, for the rules on rotation and for proposals.
#pragma once
#include "blockwright/rules/facts.hpp"

namespace bw::book {

[[nodiscard]] bool isMainIn(const Block& block, const ExerciseId& id);
// Main lifts of any month that are on the Shelf, each once, in the order drafted.
[[nodiscard]] std::vector<const Exercise*> mainsOf(const Gym& gym, const Block& block);
// One slot a main lift with an exercise of the Shelf, where it stands first.
[[nodiscard]] std::vector<const SlotFact*> mainLifts(const Facts& facts);

// The months before, newest first, as long as each is the calendar month before the one after it.
[[nodiscard]] std::vector<const Block*> monthsInARow(const Facts& facts);

} // namespace bw::book
