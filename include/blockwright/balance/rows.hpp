// SPDX-License-Identifier: GPL-3.0-or-later
// Which rows of a draft feed a tally, so that a click on the Beam can lead to them.
//   rowsBehind(slotSets(gym, block), Pattern::Hinge) -> places and sets, together the tally
#pragma once
#include "blockwright/balance/balance.hpp"

#include <variant>

namespace bw {

// A slot with an exercise of the Shelf, and what it brings, averaged over weeks like the balance.
struct SlotSets {
    Place place;
    const Exercise* exercise = nullptr; // lives as long as the gym's Shelf has it
    double sets = 0;                    // of one session
    double hardSets = 0;                // of a week with all its visits, for a muscle in full
};
// In order of the session.
[[nodiscard]] std::vector<SlotSets> slotSets(const Gym& gym, const Block& block,
                                             std::optional<Week> week = {});

struct OneSided {};
using Tally = std::variant<Pattern, Plane, MuscleId, OneSided>;

struct TallyRow {
    Place place;
    double sets = 0; // what of the slot goes into the tally; above 0
};
// Largest first, then in order of the session.
[[nodiscard]] std::vector<TallyRow>
rowsBehind(const GymSettings& gym, const std::vector<SlotSets>& slots, const Tally& tally);

} // namespace bw
