// SPDX-License-Identifier: GPL-3.0-or-later
// What exercises ask of a gym's kit, and what goes when some of it goes.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"

#include <map>
#include <vector>

namespace bw {

// Exercises of the Shelf, without the retired ones.
struct KitUse {
    int can = 0;  // are done with it, or with something else
    int must = 0; // of these, are done with nothing else
    bool operator==(const KitUse&) const = default;
};
[[nodiscard]] std::map<KitId, KitUse> kitUses(const Shelf& shelf);

// The slots whose exercise can use it, or needs it.
[[nodiscard]] std::vector<Place> slotsAsking(const Gym& gym, const Block& block, const KitId& kit);

// What this gym can do for one member, and could not with the item as it would be then.
struct KitLoss {
    std::vector<const Exercise*> exercises; // of the gym's Shelf, not retired
    std::map<Month, std::vector<Place>> slots;
    [[nodiscard]] bool nothing() const { return exercises.empty() && slots.empty(); }
};
[[nodiscard]] KitLoss lossBy(const Gym& gym, const KitItem& then);

} // namespace bw
