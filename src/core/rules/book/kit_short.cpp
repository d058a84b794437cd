// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/floor.hpp"
#include "core/rules/alike.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/book/floor_facts.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
const SlotFact& slotOf(const Facts& facts, Place place) {
    return *std::find_if(facts.slots.begin(), facts.slots.end(),
                         [&](const SlotFact& s) { return s.place == place; });
}

Message shortOf(const Facts& facts, const SlotFact& slot, const FloorShortage& shortage) {
    const std::string label = slotLabel(facts.block, slot), kit = kitName(facts.gym, shortage.kit);
    if (shortage.units == 0)
        return {"%1 takes %2 of “%3” and the gym has none: nobody can do it, even in turns.",
                {label, std::to_string(shortage.needed), kit}};
    return {"%1 takes %2 of “%3” and the gym has %4: nobody can do it, even in turns.",
            {label, std::to_string(shortage.needed), kit, std::to_string(shortage.units)}};
}

// A gym that has told no kit at all owns everything.
void judge(const Facts& facts, Verdict& verdict) {
    if (facts.gym.kit.empty()) return;
    constexpr std::size_t kMost = 3;
    const double slack = verdict.limit("missing_units").hi;
    for (const FloorShortage& shortage : floorShortages(facts.gym, facts.block)) {
        const int missing = shortage.needed - shortage.units;
        if (missing <= slack) continue;
        const SlotFact& slot = slotOf(facts, shortage.place);
        Finding& f = verdict.add(Level::Stop, shortage.place, missing, "missing_units",
                                 shortOf(facts, slot, shortage));
        f.about = shortage.kit.text();
        const auto alike = [&](const Exercise& e) { return standsFor(e, *slot.exercise); };
        for (const Exercise* e : substitutes(facts, slot, kMost, alike))
            f.remedies.push_back(useExercise(facts, slot, *e));
    }
}
} // namespace

Rule kitShort() {
    return {"kit-short",
            {"The gym has the kit of every exercise for at least one member at a time.", {}},
            {{"missing_units",
              atMost(0),
              "",
              {"Arithmetic.", {}},
              {"How many units of a kit item may be missing, if they will be borrowed.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
