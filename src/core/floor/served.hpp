// SPDX-License-Identifier: GPL-3.0-or-later
// What a gym can ever serve, however long a member waits.
#pragma once
#include "blockwright/model/gym.hpp"

#include <map>

namespace bw {

// The exercise of a slot that takes part: null for an open slot, one without a dose, one not on the
// Shelf.
[[nodiscard]] const Exercise* exerciseOf(const Shelf& shelf, const Slot& slot);
// What one alternative asks of each kit item; named twice, it is asked for twice.
[[nodiscard]] std::map<KitId, int> countsOf(const std::vector<KitNeed>& alternative);
[[nodiscard]] bool served(const Gym& gym, const std::vector<KitNeed>& alternative);
// Does some alternative that can be served take this kit?
[[nodiscard]] bool mayTake(const Gym& gym, const Exercise& exercise, const KitId& kit);
// Is some of it kept through the group?
[[nodiscard]] bool keepsKit(const Gym& gym, const std::vector<KitNeed>& alternative);

} // namespace bw
