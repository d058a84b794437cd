// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/may_stand.hpp"

#include "blockwright/model/fitting.hpp"

#include <algorithm>

namespace bw::test {

namespace {
std::vector<std::string> rolesOf(const Block& block, Place p) {
    const Slot& slot = *slotAt(block, p);
    if (slot.role) return {slot.role->text()};
    const SectionKind kind = sectionAt(block, p)->kind;
    if (kind != SectionKind::Strength) return {std::string(wordOf(kind))};
    const bool pair = groupAt(block, p)->slots.size() == 2, last = pair && p.slot == 1;
    if (block.format == Format::HeavyThenLong && pair)
        return {last ? "strength-long" : "strength-heavy"};
    if (block.format == Format::HeavyThenFast && last) return {"power"};
    return {"strength-heavy", "strength-long"};
}

bool standsIn(const Block& block, const ExerciseId& id) {
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise == id) return true;
    return false;
}
} // namespace

std::vector<ExerciseId> mayStand(const Gym& gym, const Block& block, Place p) {
    const Slot& slot = *slotAt(block, p);
    const auto roles = rolesOf(block, p);
    std::vector<ExerciseId> out;
    for (const auto& e : gym.shelf.entries()) {
        const bool role = std::any_of(roles.begin(), roles.end(),
                                      [&](const std::string& r) { return e->hasRole(r); });
        const bool pattern =
            slot.patterns.empty() ||
            std::count(slot.patterns.begin(), slot.patterns.end(), e->patterns.largest()) > 0;
        const bool dose = !slot.dose || canTime(slot, *e, *slot.dose);
        if (role && pattern && dose && !e->retired && ownsKitFor(gym, *e) &&
            !standsIn(block, e->id))
            out.push_back(e->id);
    }
    return out;
}

std::vector<Place> openSlots(const Block& block) {
    std::vector<Place> out;
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s)
        for (int g = 0; g < static_cast<int>(sectionAt(block, {s})->groups.size()); ++g)
            for (int i = 0; i < static_cast<int>(groupAt(block, {s, g})->slots.size()); ++i)
                if (slotAt(block, {s, g, i})->open()) out.push_back({s, g, i});
    return out;
}

} // namespace bw::test
