// SPDX-License-Identifier: GPL-3.0-or-later
// What one class came to.
#pragma once
#include "core/floor/floor_plan.hpp"

#include <algorithm>

namespace bw {

struct ClassRecord {
    ClassRecord(const FloorPlan& plan, int members)
        : sectionEnd(plan.sections.size()), wait(static_cast<std::size_t>(members)),
          kitWait(static_cast<std::size_t>(members) * plan.kit.size()), busy(plan.kit.size()),
          rounds(plan.groups.size()), reachedHigh(plan.groups.size()) {}

    void clear() {
        for (auto* list : {&sectionEnd, &wait, &kitWait, &busy, &rounds, &reachedHigh})
            std::ranges::fill(*list, 0);
    }

    std::vector<Ticks> sectionEnd;          // from class start
    std::vector<Ticks> wait;                // by member
    std::vector<Ticks> kitWait;             // by member, then by kit
    std::vector<Ticks> busy;                // units times time, by kit
    std::vector<Ticks> rounds, reachedHigh; // of all members, by group
    Ticks finish = 0;
};

} // namespace bw
