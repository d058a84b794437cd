// SPDX-License-Identifier: GPL-3.0-or-later
// Which loads the kit of a plan has, and which of them each member takes for each need.
#pragma once
#include "core/floor/floor_plan.hpp"

#include <map>

namespace bw {

// As the options ask: planFloor, and the loads when they are to be looked at.
[[nodiscard]] FloorPlan planClass(const Gym& gym, const Block& block, const FloorOptions& options,
                                  int members);

// The loads of a kit item that somebody would rather have than any other, and how many units of it
// at once.
[[nodiscard]] std::map<Mass, int> wantedLoads(const FloorPlan& plan, int kit);

} // namespace bw
