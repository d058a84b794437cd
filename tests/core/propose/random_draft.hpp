// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"

#include <cstdint>
#include <vector>

namespace bw::test {

struct RandomDraft {
    Gym gym; // with up to three months before, kit, flagged members, and limits set at random
    Block block;
};
// A draft of two to four sections with so many open slots; the Shelf has so many exercises, each
// of them with cues, cautions, roles, kit, demands, shares as it comes.
[[nodiscard]] RandomDraft randomDraft(std::uint64_t seed, int exercises, int openSlots);

// A month with these exercises in these places; a slot without a dose gets its usual one.
[[nodiscard]] Block withExercises(const Gym& gym, Block block, const std::vector<Place>& places,
                                  const std::vector<ExerciseId>& exercises);

} // namespace bw::test
