// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/load_plan.hpp"

#include <algorithm>
#include <numeric>

namespace bw {

namespace {
// Loads that are told as more units than there are can't be believed.
bool believed(const KitItem& item) {
    const int told = std::accumulate(item.loads.begin(), item.loads.end(), 0,
                                     [](int sum, const auto& load) { return sum + load.second; });
    return told <= item.units;
}

// The loads that a kit item is told to have, lightest first; then its other units.
void addLoads(FloorPlan& plan, PlanKit& kit, const KitItem& item) {
    kit.loads.begin = static_cast<int>(plan.loads.size());
    int rest = item.units;
    if (believed(item))
        for (const auto& [mass, units] : item.loads) {
            plan.loads.push_back({mass, units});
            rest -= units;
        }
    if (rest > 0) plan.loads.push_back({std::nullopt, rest});
    kit.loads.end = static_cast<int>(plan.loads.size());
}

// The nearest of the loads of which there are enough, then its neighbours among them, nearer first,
// lighter first when both are as near.
PlanWish wishFor(const FloorPlan& plan, const PlanNeed& need, Mass wanted) {
    std::vector<int> ladder;
    const IndexSpan loads = plan.kit[need.kit].loads;
    for (int l = loads.begin; l < loads.end; ++l)
        if (plan.loads[l].mass && plan.loads[l].units >= need.count) ladder.push_back(l);
    const auto off = [&](int l) {
        return std::abs(plan.loads[l].mass->micrograms() * need.count - wanted.micrograms());
    };
    const auto nearer = [&](int a, int b) { return off(a) < off(b); };
    const auto nearest = std::min_element(ladder.begin(), ladder.end(), nearer);
    std::vector<int> order;
    if (nearest != ladder.end()) {
        if (nearest != ladder.begin()) order.push_back(*(nearest - 1));
        order.push_back(*nearest);
        if (nearest + 1 != ladder.end()) order.push_back(*(nearest + 1));
    }
    std::stable_sort(order.begin(), order.end(), nearer);
    PlanWish wish;
    for (const int l : order) wish.loads[static_cast<std::size_t>(wish.count++)] = l;
    return wish;
}

void addWishes(FloorPlan& plan, const PlanSlot& slot, const ExerciseId& exercise,
               const FloorTargets& targets, int members) {
    for (int m = 0; m < std::min(members, static_cast<int>(targets.members.size())); ++m) {
        const auto& loads = targets.members[static_cast<std::size_t>(m)];
        const auto target = loads.find(exercise);
        if (target == loads.end()) continue;
        PlanWish* const mine = plan.wishes.data() + m * static_cast<int>(plan.needs.size());
        for (int a = slot.alternatives.begin; a < slot.alternatives.end; ++a)
            for (const IndexSpan needs : {plan.alternatives[a].group, plan.alternatives[a].set})
                for (int n = needs.begin; n < needs.end; ++n)
                    mine[n] = wishFor(plan, plan.needs[n], target->second);
    }
}
} // namespace

FloorPlan planClass(const Gym& gym, const Block& block, const FloorOptions& options, int members) {
    FloorPlan plan = planFloor(gym, block, options.week);
    if (!options.loadAware) return plan;
    for (PlanKit& kit : plan.kit) addLoads(plan, kit, *gym.findKit(kit.id));
    plan.wishes.resize(static_cast<std::size_t>(members) * plan.needs.size());
    for (const PlanSlot& slot : plan.slots)
        addWishes(plan, slot, *slotAt(block, slot.place)->exercise, options.targets, members);
    return plan;
}

std::map<Mass, int> wantedLoads(const FloorPlan& plan, int kit) {
    std::map<Mass, int> wanted;
    for (std::size_t i = 0; i < plan.wishes.size(); ++i) {
        const PlanNeed& need = plan.needs[i % plan.needs.size()];
        if (plan.wishes[i].count == 0 || need.kit != kit) continue;
        int& units = wanted[*plan.loads[plan.wishes[i].loads[0]].mass];
        units = std::max(units, need.count);
    }
    return wanted;
}

} // namespace bw
