// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/kit_use.hpp"

#include "blockwright/model/fitting.hpp"

#include <algorithm>
#include <set>

namespace bw {

namespace {
using Alternative = std::vector<KitNeed>;

bool names(const Alternative& all, const KitId& id) {
    return std::any_of(all.begin(), all.end(), [&](const KitNeed& n) { return n.kit == id; });
}

std::set<KitId> kitOf(const Exercise& e) {
    std::set<KitId> out;
    for (const Alternative& all : e.needs)
        for (const KitNeed& need : all) out.insert(need.kit);
    return out;
}

void eachSlot(const Block& block, const auto& visit) {
    Place at{0, 0, 0};
    for (at.section = 0; const Section* s = sectionAt(block, {at.section}); ++at.section)
        for (at.group = 0; at.group < static_cast<int>(s->groups.size()); ++at.group)
            for (at.slot = 0; const Slot* slot = slotAt(block, at); ++at.slot) visit(at, *slot);
}
} // namespace

std::map<KitId, KitUse> kitUses(const Shelf& shelf) {
    std::map<KitId, KitUse> uses;
    for (const auto& e : shelf.entries()) {
        if (e->retired) continue;
        for (const KitId& id : kitOf(*e)) {
            ++uses[id].can;
            if (std::all_of(e->needs.begin(), e->needs.end(),
                            [&](const Alternative& all) { return names(all, id); }))
                ++uses[id].must;
        }
    }
    return uses;
}

std::vector<Place> slotsAsking(const Gym& gym, const Block& block, const KitId& kit) {
    std::vector<Place> out;
    eachSlot(block, [&](Place at, const Slot& slot) {
        const Exercise* e = slot.exercise ? gym.shelf.find(*slot.exercise) : nullptr;
        if (e && kitOf(*e).contains(kit)) out.push_back(at);
    });
    return out;
}

KitLoss lossBy(const Gym& gym, const KitItem& then) {
    Gym after = gym;
    after.put(then);
    std::set<ExerciseId> lost;
    KitLoss loss;
    for (const auto& e : gym.shelf.entries()) {
        if (!kitOf(*e).contains(then.id) || !ownsKitFor(gym, *e) || ownsKitFor(after, *e)) continue;
        lost.insert(e->id);
        if (!e->retired) loss.exercises.push_back(e.get());
    }
    for (const auto& [month, block] : gym.blocks)
        eachSlot(*block, [&, month = month](Place at, const Slot& slot) {
            if (slot.exercise && lost.contains(*slot.exercise)) loss.slots[month].push_back(at);
        });
    return loss;
}

} // namespace bw
