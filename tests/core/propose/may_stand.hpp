// SPDX-License-Identifier: GPL-3.0-or-later
// The hard limits of a proposal as docs/proposals.md has them, apart from the program's own.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"

#include <vector>

namespace bw::test {

// In the order of the Shelf.
[[nodiscard]] std::vector<ExerciseId> mayStand(const Gym& gym, const Block& block, Place place);
[[nodiscard]] std::vector<Place> openSlots(const Block& block);

} // namespace bw::test
