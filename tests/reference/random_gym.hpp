// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/gym.hpp"

#include <cstdint>

namespace bw::test {

// A gym with one month, both drawn from the seed: every kind of dose, sides, tempos, half rounds,
// odd paces and rests, open slots, exercises that are on the Shelf with no pace for their dose.
[[nodiscard]] Gym randomGym(std::uint64_t seed);

} // namespace bw::test
