// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/substitutes.hpp"

#include "blockwright/model/fitting.hpp"

#include <algorithm>
#include <tuple>

namespace bw {

namespace {
bool inDraft(const Facts& facts, const ExerciseId& id) {
    return std::any_of(facts.slots.begin(), facts.slots.end(),
                       [&](const SlotFact& s) { return s.slot->exercise == id; });
}

// In heavy-then-long a pair has a heavy and a long end.
bool strengthRole(const Facts& facts, const SlotFact& slot, const Exercise& e) {
    const bool pair = facts.block.format == Format::HeavyThenLong && slot.group->slots.size() == 2;
    const bool heavy = e.hasRole("strength-heavy") && !(pair && slot.place.slot == 1);
    const bool lasting = e.hasRole("strength-long") && !(pair && slot.place.slot == 0);
    return heavy || lasting;
}

bool roleFits(const Facts& facts, const SlotFact& slot, const Exercise& e) {
    if (slot.exercise == nullptr && slot.slot->role) return e.hasRole(slot.slot->role->text());
    if (slot.section->kind == SectionKind::Strength) return strengthRole(facts, slot, e);
    return e.hasRole(wordOf(slot.section->kind));
}

bool patternFits(const Slot& slot, const Exercise& e) {
    return !slot.open() || slot.patterns.empty() ||
           std::find(slot.patterns.begin(), slot.patterns.end(), e.patterns.largest()) !=
               slot.patterns.end();
}

// 0 an easier version, 1 a swap, 2 anything else.
int kinship(const SlotFact& slot, const ExerciseId& id) {
    if (!slot.exercise) return 2;
    const auto in = [&](const std::vector<ExerciseId>& list) {
        return std::find(list.begin(), list.end(), id) != list.end();
    };
    return in(slot.exercise->easier) ? 0 : in(slot.exercise->swaps) ? 1 : 2;
}
} // namespace

std::vector<const Exercise*> substitutes(const Facts& facts, const SlotFact& slot, std::size_t most,
                                         const Fits& fits) {
    std::vector<const Exercise*> found;
    for (const Shelf::Entry& entry : facts.gym.shelf.entries()) {
        const Exercise& e = *entry;
        if (e.retired || !fits(e) || !patternFits(*slot.slot, e) || inDraft(facts, e.id)) continue;
        if (kinship(slot, e.id) == 2 && !roleFits(facts, slot, e)) continue;
        if (ownsKitFor(facts.gym, e)) found.push_back(&e);
    }
    std::stable_sort(found.begin(), found.end(), [&](const Exercise* a, const Exercise* b) {
        const auto rank = [&](const Exercise& e) {
            return std::tuple{kinship(slot, e.id), !facts.history.knows(e.id), e.skill};
        };
        return rank(*a) < rank(*b);
    });
    if (found.size() > most) found.resize(most);
    return found;
}

} // namespace bw
