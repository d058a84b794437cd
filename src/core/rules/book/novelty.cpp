// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
// One slot an exercise that no earlier month had, where it stands first.
std::vector<const SlotFact*> freshIn(const Facts& facts) {
    std::vector<const SlotFact*> out;
    for (const SlotFact& s : facts.slots) {
        if (!s.exercise || facts.history.knows(s.exercise->id)) continue;
        const auto same = [&](const SlotFact* o) { return o->exercise == s.exercise; };
        if (std::none_of(out.begin(), out.end(), same)) out.push_back(&s);
    }
    return out;
}

Fits alike(const SlotFact& slot, const History& history, bool known) {
    return [&slot, &history, known](const Exercise& e) {
        return history.knows(e.id) == known &&
               e.patterns.largest() == slot.exercise->patterns.largest();
    };
}

bool free(const SlotFact& s) { return s.exercise && !s.slot->locked && !s.slot->main; }

void judgeMany(const Facts& facts, Verdict& verdict, const std::vector<const SlotFact*>& fresh) {
    std::vector<std::string> names;
    names.reserve(fresh.size());
    for (const SlotFact* s : fresh) names.push_back(slotLabel(facts.block, *s));
    Finding& f = verdict.add(
        Level::Look, {}, static_cast<double>(fresh.size()), "new",
        {"%1 exercises are new to this gym, more than %2: %3. Each takes coaching in week 1.",
         {std::to_string(fresh.size()), numberText(verdict.limit("new").hi), listText(names)}});
    for (const SlotFact* s : fresh) f.also.push_back(s->place);
    for (auto s = fresh.rbegin(); s != fresh.rend() && f.remedies.size() < 2; ++s)
        if (free(**s))
            for (const Exercise* e : substitutes(facts, **s, 1, alike(**s, facts.history, true)))
                f.remedies.push_back(useExercise(facts, **s, *e));
    if (f.remedies.empty()) f.remedies = {advice({"Keep one of them for next month", {}})};
}

// The first place outside the strength section where something unknown of the same pattern fits.
std::vector<Remedy> bringNew(const Facts& facts) {
    for (auto s = facts.slots.rbegin(); s != facts.slots.rend(); ++s) {
        if (!free(*s) || s->section->kind == SectionKind::Strength) continue;
        for (const Exercise* e : substitutes(facts, *s, 1, alike(*s, facts.history, false)))
            return {useExercise(facts, *s, *e)};
    }
    return {advice({"One exercise that members do not know yet", {}})};
}

void judge(const Facts& facts, Verdict& verdict) {
    if (facts.history.empty()) return; // to a gym without months everything is new
    const LimitValue band = verdict.limit("new");
    const auto fresh = freshIn(facts);
    const auto count = static_cast<double>(fresh.size());
    const bool open = std::any_of(facts.slots.begin(), facts.slots.end(),
                                  [](const SlotFact& s) { return s.slot->open(); });
    if (count > band.hi) judgeMany(facts, verdict, fresh);
    if (count >= band.lo || open || facts.slots.empty()) return;
    Finding& f =
        verdict.add(Level::Note, {}, count, "new",
                    fresh.empty() ? Message{"Nothing in this month is new to this gym.", {}}
                                  : Message{"Exercises new to this gym: %1, fewer than %2.",
                                            {std::to_string(fresh.size()), numberText(band.lo)}});
    f.remedies = bringNew(facts);
}
} // namespace

Rule novelty() {
    return {"novelty",
            {"A month brings something new, and not too much of it.", {}},
            {{"new",
              within(1, 3),
              "",
              commonPractice(),
              {"Exercises that no earlier month of this gym had. More than the band is a look, "
               "fewer a note.",
               {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
