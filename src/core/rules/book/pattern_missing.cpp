// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/families.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

double shareIn(const Family& family, const Exercise& e) {
    const auto one = e.patterns[family.one].billionths();
    const auto other = family.one == family.other ? 0 : e.patterns[family.other].billionths();
    return static_cast<double>(one + other) / Share::kWhole;
}

namespace {
int trainedIn(const Facts& facts, const Family& family, double least) {
    return static_cast<int>(
        std::count_if(facts.slots.begin(), facts.slots.end(), [&](const SlotFact& s) {
            return s.exercise && shareIn(family, *s.exercise) >= least;
        }));
}

bool couldTake(const SlotFact& slot, const Family& family) {
    const auto& wanted = slot.slot->patterns;
    return slot.slot->open() &&
           (wanted.empty() || std::find(wanted.begin(), wanted.end(), family.one) != wanted.end() ||
            std::find(wanted.begin(), wanted.end(), family.other) != wanted.end());
}

// Free to be replaced: nobody has locked it, it is no main lift, and each family that it trains is
// trained elsewhere too.
bool canBeSpared(const Facts& facts, const SlotFact& slot, double least) {
    if (!slot.exercise || slot.slot->locked || slot.slot->main) return false;
    if (slot.section->kind == SectionKind::WarmUp || slot.section->kind == SectionKind::Power)
        return false;
    return std::all_of(kFamilies.begin(), kFamilies.end(), [&](const Family& family) {
        return shareIn(family, *slot.exercise) < least || trainedIn(facts, family, least) > 1;
    });
}

// Mainly of the family, so that the slot really goes to it.
Fits mainlyOf(const Family& family) {
    return [&family](const Exercise& e) { return shareIn(family, e) >= 0.5; };
}

std::vector<Remedy> fillOpen(const Facts& facts, const Family& family) {
    constexpr std::size_t kMost = 3;
    std::vector<Remedy> out;
    for (const SlotFact& slot : facts.slots) {
        if (!couldTake(slot, family)) continue;
        for (const Exercise* e : substitutes(facts, slot, kMost - out.size(), mainlyOf(family)))
            out.push_back(useExercise(facts, slot, *e));
        if (out.size() >= kMost) break;
    }
    return out;
}

std::vector<Remedy> exchangeOne(const Facts& facts, const Family& family, double least) {
    constexpr std::size_t kMost = 2;
    std::vector<Remedy> out;
    for (auto slot = facts.slots.rbegin(); slot != facts.slots.rend(); ++slot) {
        if (!canBeSpared(facts, *slot, least)) continue;
        for (const Exercise* e : substitutes(facts, *slot, 1, mainlyOf(family)))
            out.push_back(useExercise(facts, *slot, *e));
        if (out.size() >= kMost) break;
    }
    return out;
}

Message textFor(const Facts& facts, const Family& family, const SlotFact* open) {
    if (!open) return {family.missing, {}};
    return {family.missingWithAPlace, {slotLabel(facts.block, *open)}};
}

void judge(const Facts& facts, Verdict& verdict) {
    const double least = verdict.limit("least_share").lo;
    const double wanted = verdict.limit("slots").lo;
    for (const Family& family : kFamilies) {
        const int slots = trainedIn(facts, family, least);
        if (slots >= wanted) continue;
        const auto open = std::find_if(facts.slots.begin(), facts.slots.end(),
                                       [&](const SlotFact& s) { return couldTake(s, family); });
        const SlotFact* first = open == facts.slots.end() ? nullptr : &*open;
        Finding& f = verdict.add(Level::Look, {}, slots, "slots", textFor(facts, family, first));
        f.about = family.key;
        if (first) f.also = {first->place};
        f.remedies = first ? fillOpen(facts, family) : std::vector<Remedy>{};
        if (f.remedies.empty()) f.remedies = exchangeOne(facts, family, least);
    }
}
} // namespace

Rule patternMissing() {
    return {
        "pattern-missing",
        {"Squat or lunge, hinge, a push, a pull, and the trunk are each trained at least once.",
         {}},
        {{"slots",
          atMost(1),
          "",
          {"Common practice. Iversen et al. 2021 (Sports Med 51:2079-2095) name as the least one "
           "leg press pattern, one upper pull and one upper push.",
           {}},
          {"Fewest exercises of the session that train each of them.", {}}},
         {"least_share",
          atMost(0.25),
          "share",
          commonPractice(),
          {"How much of an exercise must be of a pattern for it to count as training it.", {}}}},
        judge,
        {},
        false};
}

} // namespace bw::book
