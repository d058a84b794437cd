// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/balance/rows.hpp"

#include "core/balance/sums.hpp"

#include <algorithm>

namespace bw {

namespace {
struct PartOf {
    const GymSettings& gym;
    const SlotSets& slot;

    double operator()(Pattern p) const { return slot.sets * slot.exercise->patterns[p].part(); }
    double operator()(Plane p) const { return slot.sets * slot.exercise->planes[p].part(); }
    double operator()(OneSided) const { return oneSideAtATime(*slot.exercise) ? slot.sets : 0; }
    double operator()(const MuscleId& muscle) const {
        const auto it = slot.exercise->muscles.find(muscle);
        if (it == slot.exercise->muscles.end()) return 0;
        return slot.hardSets * muscleShare(gym, it->second).part();
    }
};
} // namespace

std::vector<SlotSets> slotSets(const Gym& gym, const Block& block, std::optional<Week> week) {
    const int weeks = weeksAskedFor(block, week);
    std::vector<SlotSets> out;
    for (const SlotGrains& slot : slotGrains(gym, block, week))
        out.push_back({slot.place, slot.exercise, averageSets(slot.sets(), weeks),
                       averageSets(slot.hardSets(), weeks)});
    return out;
}

std::vector<TallyRow> rowsBehind(const GymSettings& gym, const std::vector<SlotSets>& slots,
                                 const Tally& tally) {
    std::vector<TallyRow> out;
    for (const SlotSets& slot : slots) {
        const double sets = std::visit(PartOf{gym, slot}, tally);
        if (sets > 0) out.push_back({slot.place, sets});
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const TallyRow& a, const TallyRow& b) { return a.sets > b.sets; });
    return out;
}

} // namespace bw
