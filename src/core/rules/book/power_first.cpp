// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <array>

namespace bw::book {

namespace {
constexpr std::array kTiring{Demand::Grip, Demand::Lumbar, Demand::Overhead};

int worstDemand(const Exercise& e) {
    int worst = 0;
    for (const Demand d : kTiring) worst = std::max(worst, e.demands[d]);
    return worst;
}

std::string demandsAbove(const Exercise& e, double most) {
    std::vector<std::string> names;
    for (const Demand d : kTiring)
        if (e.demands[d] > most) names.emplace_back(wordOf(d));
    return listText(names);
}

Remedy moveBefore(int from, int to) {
    return {{"Move the power section to before the strength section", {}}, [from, to](Block& b) {
                if (from >= static_cast<int>(b.sections.size()) || to >= from) return;
                const auto at = b.sections.begin();
                std::rotate(at + to, at + from, at + from + 1);
            }};
}

void judgeOrder(const Facts& facts, Verdict& verdict) {
    const double most = verdict.limit("strength_before").hi;
    std::vector<int> strength; // sections so far
    for (int s = 0; s < static_cast<int>(facts.block.sections.size()); ++s) {
        const SectionKind kind = facts.block.sections[static_cast<std::size_t>(s)].kind;
        if (kind == SectionKind::Strength) strength.push_back(s);
        if (kind != SectionKind::Power || static_cast<double>(strength.size()) <= most) continue;
        Finding& f =
            verdict.add(Level::Look, {s}, static_cast<double>(strength.size()), "strength_before",
                        {"The power section stands after strength work, so it is done tired.", {}});
        for (const int before : strength) f.also.push_back({before});
        f.remedies = {moveBefore(s, strength.front())};
    }
}

void judgeWarmUp(const Facts& facts, Verdict& verdict) {
    const double most = verdict.limit("warm_up_demand").hi;
    for (const SlotFact& slot : facts.slots) {
        if (slot.section->kind != SectionKind::WarmUp || !slot.exercise) continue;
        const int worst = worstDemand(*slot.exercise);
        if (worst <= most) continue;
        Finding& f = verdict.add(
            Level::Look, slot.place, worst, "warm_up_demand",
            {"%1 in the warm-up asks a lot of: %2. What it tires is missing when the work starts.",
             {slotLabel(facts.block, slot), demandsAbove(*slot.exercise, most)}});
        const auto fresh = substitutes(facts, slot, 2, [&](const Exercise& e) {
            return worstDemand(e) <= most &&
                   e.patterns.largest() == slot.exercise->patterns.largest();
        });
        for (const Exercise* e : fresh) f.remedies.push_back(useExercise(facts, slot, *e));
    }
}

void judge(const Facts& facts, Verdict& verdict) {
    judgeOrder(facts, verdict);
    judgeWarmUp(facts, verdict);
}
} // namespace

Rule powerFirst() {
    return {
        "power-first",
        {"Power is trained fresh: before strength, after a warm-up that tires nothing it needs.",
         {}},
        {{"strength_before",
          atMost(0),
          "",
          commonPractice(),
          {"How many strength sections may stand before a power section.", {}}},
         {"warm_up_demand",
          atMost(2),
          "",
          commonPractice(),
          {"The most that a warm-up exercise may ask of grip, lumbar or overhead, from 0 to 3.",
           {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
