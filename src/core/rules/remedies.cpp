// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/remedies.hpp"
#include "blockwright/model/fitting.hpp"

#include "blockwright/model/shorthand.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw {

Remedy advice(Message label) { return {std::move(label), {}}; }

Remedy setRestTo(const Facts& facts, Place group, Range<Millis> rest) {
    return {{"Set the rest of group %1 to %2", {groupLetter(facts.block, group), restText(rest)}},
            [group, rest](Block& b) {
                if (Group* g = groupAt(b, group)) g->rest = rest;
            }};
}

Remedy setDoseTo(const Facts& facts, const SlotFact& slot, const Dose& dose) {
    const Sides sides = slot.exercise ? slot.exercise->sides : Sides::Both;
    return {{"Set the dose of %1 to %2", {slotLabel(facts.block, slot), doseText(dose, sides)}},
            [place = slot.place, dose](Block& b) {
                if (Slot* s = slotAt(b, place)) s->dose = dose;
            }};
}

Remedy setTempoTo(const Facts& facts, const SlotFact& slot, const Tempo& tempo) {
    return {{"Set the tempo of %1 to %2", {slotLabel(facts.block, slot), tempo.text()}},
            [place = slot.place, tempo](Block& b) {
                if (Slot* s = slotAt(b, place)) s->tempo = tempo;
            }};
}

Remedy useExercise(const Facts& facts, const SlotFact& slot, const Exercise& exercise) {
    Message label = slot.exercise ? Message{"Use %1 instead of %2",
                                            {exercise.name, slotLabel(facts.block, slot)}}
                                  : Message{"Put %1 into the open slot %2",
                                            {exercise.name, slotLabel(facts.block, slot)}};
    const Dose dose = fittingDose(*slot.slot, exercise, slot.section->kind);
    return {std::move(label), [place = slot.place, id = exercise.id, dose](Block& b) {
                Slot* s = slotAt(b, place);
                if (!s) return;
                s->exercise = id;
                s->dose = dose;
            }};
}

std::function<void(Block&)> setRounds(Place group, Range<int> rounds) {
    return [group, rounds](Block& b) {
        if (Group* g = groupAt(b, group)) g->rounds = rounds;
    };
}

namespace {
template <class T> void moveWithin(std::vector<T>& list, int from, int to) {
    const auto at = [&](int i) { return list.begin() + i; };
    if (from < to)
        std::rotate(at(from), at(from + 1), at(to + 1));
    else
        std::rotate(at(to), at(from), at(from + 1));
}
} // namespace

std::function<void(Block&)> moveGroup(Place group, int to) {
    return [group, to](Block& b) {
        Section* s = sectionAt(b, group);
        const auto known = s ? static_cast<int>(s->groups.size()) : 0;
        if (group.group >= known || to >= known) return;
        moveWithin(s->groups, group.group, to);
        auto* counts = std::get_if<StartCounts>(&s->start);
        if (counts && static_cast<int>(counts->heads.size()) == known)
            moveWithin(counts->heads, group.group, to);
    };
}

std::optional<Range<int>> fewerRounds(Range<int> r, RoundsMode mode) {
    const auto [lo, hi] = std::pair{r.lo(), r.hi()};
    if (mode == RoundsMode::Low)
        return lo > 1 ? std::optional(Range<int>::between(lo - 1, hi)) : std::nullopt;
    if (hi < 2) return std::nullopt;
    return Range<int>::between(std::min(lo, hi - 1), hi - 1);
}

Range<Millis> restWithin(Range<Millis> rest, const LimitValue& seconds) {
    const Millis lo = toMillis(seconds.lo);
    const Millis hi = std::max(lo, toMillis(seconds.hi));
    return Range<Millis>::between(std::clamp(rest.lo(), lo, hi), std::clamp(rest.hi(), lo, hi));
}

std::optional<Dose> shifted(const Dose& dose, int steps) {
    const std::int64_t grain = Dose::smallestPerUnit(dose.measure());
    const bool coarse = dose.measure() == Measure::Seconds || dose.measure() == Measure::Metres;
    const std::int64_t step = coarse ? 5 * grain : grain;
    const auto moved = [&](std::int64_t n) {
        return std::max(std::min(n, step), n + steps * step);
    };
    const auto out = Dose::of(dose.measure(), moved(dose.amount().lo()), moved(dose.amount().hi()));
    return out && *out != dose ? std::optional(*out) : std::nullopt;
}

} // namespace bw
