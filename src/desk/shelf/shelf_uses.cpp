// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/shelf/shelf_uses.hpp"

namespace bw {

ShelfUses::ShelfUses(const Gym& gym) {
    for (const auto& [month, block] : gym.blocks) {
        Place at{0, 0, 0};
        for (at.section = 0; const Section* s = sectionAt(*block, {at.section}); ++at.section)
            for (at.group = 0; at.group < static_cast<int>(s->groups.size()); ++at.group)
                for (at.slot = 0; const Slot* slot = slotAt(*block, at); ++at.slot) {
                    if (!slot->exercise) continue;
                    auto& uses = uses_[*slot->exercise];
                    if (uses.empty() || !(uses.back().month == month))
                        uses.push_back({month, {}, false});
                    uses.back().places.push_back(at);
                    uses.back().main = uses.back().main || slot->main;
                }
    }
}

const std::vector<ShelfUse>& ShelfUses::of(const ExerciseId& id) const {
    static const std::vector<ShelfUse> none;
    const auto it = uses_.find(id);
    return it == uses_.end() ? none : it->second;
}

} // namespace bw
