// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/care.hpp"

#include <algorithm>

namespace bw::book {

std::vector<CareCase> careCases(const Facts& facts, double skill) {
    std::vector<CareCase> out;
    for (const SlotFact& slot : facts.slots) {
        if (!slot.exercise) continue;
        const auto known = std::find_if(out.begin(), out.end(), [&](const CareCase& c) {
            return c.slot->exercise == slot.exercise;
        });
        if (known != out.end()) {
            known->also.push_back(slot.place);
            continue;
        }
        const bool fresh = !facts.history.empty() && !facts.history.knows(slot.exercise->id);
        if (fresh || slot.exercise->skill >= skill) out.push_back({&slot, {}, fresh});
    }
    return out;
}

} // namespace bw::book
