// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/pairs.hpp"

namespace bw::book {

void eachStrengthPair(const Facts& facts,
                      const std::function<void(const SlotFact&, const SlotFact&)>& visit) {
    for (std::size_t i = 0; i + 1 < facts.slots.size(); ++i) {
        const SlotFact& first = facts.slots[i];
        const SlotFact& second = facts.slots[i + 1];
        if (first.section->kind != SectionKind::Strength || first.group->slots.size() != 2)
            continue;
        if (first.place.slot != 0) continue;
        const auto filled = [](const SlotFact& s) { return s.exercise && s.slot->dose; };
        if (filled(first) && filled(second)) visit(first, second);
    }
}

} // namespace bw::book
