// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/floor/served.hpp"

#include "blockwright/floor/floor.hpp"

#include <algorithm>

namespace bw {

namespace {
int unitsOf(const Gym& gym, const KitId& id) {
    const KitItem* item = gym.findKit(id);
    return item ? item->units : 0;
}

void judge(const Gym& gym, const Block& block, Place place, std::vector<FloorShortage>& found) {
    const Exercise* e = exerciseOf(gym.shelf, *slotAt(block, place));
    if (!e || e->needs.empty()) return;
    if (std::ranges::any_of(e->needs, [&](const auto& one) { return served(gym, one); })) return;
    for (const auto& [id, count] : countsOf(e->needs.front())) {
        if (count <= unitsOf(gym, id)) continue;
        found.push_back({place, id, count, unitsOf(gym, id)});
        return;
    }
}
} // namespace

const Exercise* exerciseOf(const Shelf& shelf, const Slot& slot) {
    return slot.exercise && slot.dose ? shelf.find(*slot.exercise) : nullptr;
}

std::map<KitId, int> countsOf(const std::vector<KitNeed>& alternative) {
    std::map<KitId, int> counts;
    for (const KitNeed& need : alternative) counts[need.kit] += need.count;
    return counts;
}

bool served(const Gym& gym, const std::vector<KitNeed>& alternative) {
    return std::ranges::all_of(countsOf(alternative), [&](const auto& one) {
        return one.second <= unitsOf(gym, one.first);
    });
}

bool mayTake(const Gym& gym, const Exercise& exercise, const KitId& kit) {
    return std::ranges::any_of(exercise.needs, [&](const std::vector<KitNeed>& one) {
        return served(gym, one) &&
               std::ranges::any_of(one, [&](const KitNeed& need) { return need.kit == kit; });
    });
}

bool keepsKit(const Gym& gym, const std::vector<KitNeed>& alternative) {
    return std::ranges::any_of(alternative, [&](const KitNeed& need) {
        const KitItem* item = gym.findKit(need.kit);
        return item && item->claim == Claim::Group;
    });
}

std::vector<FloorShortage> floorShortages(const Gym& gym, const Block& block) {
    std::vector<FloorShortage> found;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = *sectionAt(block, {s, -1, -1});
        for (int g = 0; g < static_cast<int>(section.groups.size()); ++g) {
            const Group& group = *groupAt(block, {s, g, -1});
            for (int i = 0; i < static_cast<int>(group.slots.size()); ++i)
                judge(gym, block, {s, g, i}, found);
        }
    }
    return found;
}

} // namespace bw
