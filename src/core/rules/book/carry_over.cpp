// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/main_lifts.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
Remedy markMain(const Facts& facts, const SlotFact& slot) {
    return {{"Mark %1 as a main lift", {slotLabel(facts.block, slot)}},
            [place = slot.place](Block& b) {
                if (Slot* s = slotAt(b, place)) s->main = true;
            }};
}

// Last month's lift in the place of one of this month's of the same pattern.
std::optional<Remedy> bringBack(const Facts& facts, const Exercise& lift) {
    for (const SlotFact& s : facts.slots) {
        if (s.section->kind != SectionKind::Strength || s.slot->locked) continue;
        if (s.exercise == &lift) return markMain(facts, s);
    }
    for (const SlotFact* s : mainLifts(facts)) {
        if (s->slot->locked || s->exercise->patterns.largest() != lift.patterns.largest()) continue;
        const auto found =
            substitutes(facts, *s, 1, [&](const Exercise& e) { return e.id == lift.id; });
        if (!found.empty()) return useExercise(facts, *s, lift);
    }
    return std::nullopt;
}

void judge(const Facts& facts, Verdict& verdict) {
    if (facts.history.empty() || facts.slots.empty()) return;
    const auto last = mainsOf(facts.gym, *facts.history.blocks().front());
    if (last.empty()) return;
    const double least = verdict.limit("lifts").lo;
    const auto carried = static_cast<double>(std::count_if(
        last.begin(), last.end(), [&](const Exercise* e) { return isMainIn(facts.block, e->id); }));
    if (carried >= least) return;
    std::vector<std::string> names;
    names.reserve(last.size());
    for (const Exercise* e : last) names.push_back(e->name);
    Finding& f = verdict.add(
        Level::Note, {}, carried, "lifts",
        carried < 1
            ? Message{"No main lift is carried over from last month, which had: %1. Members begin "
                      "everything anew.",
                      {listText(names)}}
            : Message{"%1 of last month's main lifts is carried over, fewer than %2. It had: %3.",
                      {numberText(carried), numberText(least), listText(names)}});
    for (const Exercise* e : last)
        if (f.remedies.size() < 2 && !isMainIn(facts.block, e->id))
            if (auto remedy = bringBack(facts, *e)) f.remedies.push_back(std::move(*remedy));
    if (f.remedies.empty()) f.remedies = {advice({"Keep one of them for another month", {}})};
}
} // namespace

Rule carryOver() {
    return {"carry-over",
            {"At least one main lift stays from last month.", {}},
            {{"lifts",
              atMost(1),
              "",
              commonPractice(),
              {"Fewest main lifts of the newest month before that are main lifts again.", {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
