// SPDX-License-Identifier: GPL-3.0-or-later
// What the members of a simulated class want to lift, for classes in which loads are looked at.
#pragma once
#include "blockwright/model/gym.hpp"

#include <map>
#include <span>
#include <vector>

namespace bw {

// By member of the class, then by exercise: the load as results have it, a pair with both bells
// together. A class takes the first so many; who is not there, or has no load, takes any.
struct FloorTargets {
    std::vector<std::map<ExerciseId, Mass>> members;
    bool operator==(const FloorTargets&) const = default;
};

// Of the gym's active members, in order: the load of their most recent result (the last set of the
// last day). None where that was without a load. Results in any order.
[[nodiscard]] FloorTargets latestLoads(const Gym& gym, std::span<const LiftResult> results);

} // namespace bw
