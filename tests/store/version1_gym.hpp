// SPDX-License-Identifier: GPL-3.0-or-later
// What files/v1.bwgym.bin holds. Never changes: the file was written by Blockwright 0.1.0 and
// stays.
#pragma once
#include "blockwright/model/gym.hpp"

#include <vector>

namespace bw::test {

[[nodiscard]] Gym version1Gym();
[[nodiscard]] std::vector<LiftResult> version1Results();

} // namespace bw::test
