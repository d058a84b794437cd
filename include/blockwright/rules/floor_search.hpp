// SPDX-License-Identifier: GPL-3.0-or-later
// What a study of the simulated class should look for: problems by the gym's limits of kit-queue
// and overrun-chance, and what to try on them besides other starts: an exercise that takes other
// kit, a round less, another place in the section.
#pragma once
#include "blockwright/floor/study.hpp"

namespace bw {

// Gym and block must outlive what is given.
[[nodiscard]] FloorSearch floorSearch(const Gym& gym, const Block& block);

} // namespace bw
