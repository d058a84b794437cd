// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/main_lifts.hpp"

#include <algorithm>

namespace bw::book {

bool isMainIn(const Block& block, const ExerciseId& id) {
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.main && slot.exercise == id) return true;
    return false;
}

std::vector<const Exercise*> mainsOf(const Gym& gym, const Block& block) {
    std::vector<const Exercise*> out;
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots) {
                const Exercise* e =
                    slot.main && slot.exercise ? gym.shelf.find(*slot.exercise) : nullptr;
                if (e && std::find(out.begin(), out.end(), e) == out.end()) out.push_back(e);
            }
    return out;
}

std::vector<const SlotFact*> mainLifts(const Facts& facts) {
    std::vector<const SlotFact*> out;
    for (const SlotFact& s : facts.slots) {
        if (!s.exercise || !s.slot->main) continue;
        const auto same = [&](const SlotFact* o) { return o->exercise == s.exercise; };
        if (std::none_of(out.begin(), out.end(), same)) out.push_back(&s);
    }
    return out;
}

std::vector<const Block*> monthsInARow(const Facts& facts) {
    std::vector<const Block*> out;
    Month next = facts.block.month;
    for (const Gym::BlockPtr& block : facts.history.blocks()) {
        if (next.monthsSince(block->month) != 1) break;
        out.push_back(block.get());
        next = block->month;
    }
    return out;
}

} // namespace bw::book
