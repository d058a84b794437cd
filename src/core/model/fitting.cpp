// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/fitting.hpp"

#include <algorithm>

namespace bw {

namespace {
Dose usualReps(const Exercise& e, SectionKind kind) {
    switch (kind) {
    case SectionKind::Power: return Dose::reps(5, 5).value();
    case SectionKind::Finisher: return Dose::reps(10, 12).value();
    case SectionKind::Strength:
        if (e.hasRole("strength-heavy") && !e.hasRole("strength-long"))
            return Dose::reps(5, 5).value();
        break;
    case SectionKind::WarmUp: break;
    }
    return Dose::reps(8, 10).value();
}
} // namespace

bool canTime(const Slot& slot, const Exercise& e, const Dose& dose) {
    return e.pace.times(dose.measure()) || (dose.measure() == Measure::Reps && slot.tempo);
}

Dose usualDose(const Exercise& e, SectionKind kind) {
    const auto lone = [](Measure m, std::int64_t n) { return Dose::of(m, n, n).value(); };
    switch (e.pace.usual()) {
    case Measure::Reps: return usualReps(e, kind);
    case Measure::Seconds:
        return lone(Measure::Seconds, kind == SectionKind::Power ? 10'000 : 30'000);
    case Measure::Metres: return lone(Measure::Metres, 20'000);
    case Measure::Kcal: return lone(Measure::Kcal, 8'000);
    }
    return usualReps(e, kind);
}

Dose fittingDose(const Slot& slot, const Exercise& e, SectionKind kind) {
    return slot.dose && canTime(slot, e, *slot.dose) ? *slot.dose : usualDose(e, kind);
}

const std::vector<KitNeed>* kitAtHand(const Gym& gym, const Exercise& e) {
    const auto owned = [&](const KitNeed& need) {
        if (gym.kit.empty()) return true;
        const KitItem* item = gym.findKit(need.kit);
        return item && item->units >= need.count;
    };
    const auto it = std::find_if(e.needs.begin(), e.needs.end(), [&](const auto& all) {
        return std::all_of(all.begin(), all.end(), owned);
    });
    return it == e.needs.end() ? nullptr : &*it;
}

bool ownsKitFor(const Gym& gym, const Exercise& e) {
    return e.needs.empty() || kitAtHand(gym, e) != nullptr;
}

} // namespace bw
