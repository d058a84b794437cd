// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/facts.hpp"

namespace bw {

namespace {
template <class Visit> void eachExercise(const Block& block, Visit visit) {
    for (const Section& section : block.sections)
        for (const Group& group : section.groups)
            for (const Slot& slot : group.slots)
                if (slot.exercise) visit(*slot.exercise);
}

std::vector<SlotFact> slotsOf(const Gym& gym, const Block& block) {
    std::vector<SlotFact> out;
    Place at;
    for (at.section = 0; const Section& section : block.sections) {
        for (at.group = 0; const Group& group : section.groups) {
            for (at.slot = 0; const Slot& slot : group.slots) {
                SlotFact fact{at, &section, &group, &slot, nullptr, {}};
                if (slot.exercise) fact.exercise = gym.shelf.find(*slot.exercise);
                if (fact.exercise && slot.dose)
                    fact.work = setWork(*slot.dose, slot.tempo, *fact.exercise);
                out.push_back(fact);
                ++at.slot;
            }
            ++at.group;
        }
        ++at.section;
    }
    return out;
}
} // namespace

History::History(const Gym& gym, Month before) {
    for (auto it = gym.blocks.lower_bound(before); it != gym.blocks.begin();) {
        --it;
        blocks_.push_back(it->second);
        eachExercise(*it->second, [&](const ExerciseId& id) { last_.try_emplace(id, it->first); });
    }
}

Facts Facts::of(const Gym& gym, const Block& block, const History& history, Week week,
                const FloorWeek* floor) {
    return {gym,
            block,
            history,
            week,
            timeSession(gym.settings, gym.shelf, block, week),
            slotsOf(gym, block),
            floor,
            nullptr,
            nullptr};
}

const Balances& Facts::balance() const {
    if (!balanced) balanced = std::make_shared<const Balances>(balancesOf(gym, block));
    return *balanced;
}

} // namespace bw
