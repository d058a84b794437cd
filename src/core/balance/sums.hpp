// SPDX-License-Identifier: GPL-3.0-or-later
// The balance while it is added up, in whole grains: a grain is a billionth of half a set. Even the
// fullest months of the most visits, 36 of them, stay far below 2^63.
#pragma once
#include "blockwright/balance/balance.hpp"

#include <cstdint>

namespace bw {

using Grains = std::int64_t;

// A slot with an exercise of the Shelf, over all weeks that were asked for.
struct SlotGrains {
    Place place;
    const Exercise* exercise = nullptr;
    int halfRounds = 0;
    int visits = 1;
    Share weight, hardWeight;

    [[nodiscard]] Grains sets(Share part = Share::whole()) const;     // one session a week
    [[nodiscard]] Grains hardSets(Share part = Share::whole()) const; // all visits
};

// In order of the session; one week, or all weeks of the stair.
[[nodiscard]] std::vector<SlotGrains> slotGrains(const Gym& gym, const Block& block,
                                                 std::optional<Week> week);
[[nodiscard]] int weeksAskedFor(const Block& block, std::optional<Week> week);
[[nodiscard]] double averageSets(Grains grains, int weeks);

[[nodiscard]] inline bool oneSideAtATime(const Exercise& e) { return e.sides != Sides::Both; }
// As the Shelf tells it; but when the gym counts all muscles that only help alike
// ("balance.indirect_share"), one that is told less than the whole counts as that.
[[nodiscard]] Share muscleShare(const GymSettings& gym, Share told);

} // namespace bw
