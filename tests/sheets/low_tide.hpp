// SPDX-License-Identifier: GPL-3.0-or-later
// Saltmarsh Boathouse in September 2026: four sections, seven groups, fourteen slots, one of them
// open.
#pragma once
#include "blockwright/model/gym.hpp"

#include <cstdint>

namespace bw::test {

[[nodiscard]] Gym saltmarsh();
[[nodiscard]] Block lowTide();

// A block of 1 to 5 sections whose exercises are on the gym's shelf, with names of 1 to `longest`
// characters. The same for the same seed.
struct RandomMonth {
    Gym gym;
    Block block;
};
[[nodiscard]] RandomMonth randomMonth(std::uint32_t seed, int longest);

} // namespace bw::test
