// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/block_verbs.hpp"

#include "blockwright/model/fitting.hpp"
#include "blockwright/model/place.hpp"
#include "blockwright/model/shorthand.hpp"

namespace bw {

namespace {
// One field of the slot, group or section at the spot.
template <class T, class V>
Did setField(OpenGym& gym, Spot at, Message what, T* (*find)(Block&, Place), V T::*field, V value) {
    return editBlock(gym, at, std::move(what), [&](Block& b) {
        if (T* thing = find(b, at.place)) thing->*field = std::move(value);
    });
}
Slot* slotOf(Block& b, Place p) { return slotAt(b, p); }
Group* groupOf(Block& b, Place p) { return groupAt(b, p); }
Section* sectionOf(Block& b, Place p) { return sectionAt(b, p); }

std::string nameAt(const OpenGym& gym, Spot at) {
    const auto block = gym.gym().block(at.month);
    const Slot* slot = block ? slotAt(*block, at.place) : nullptr;
    const Exercise* e = slot && slot->exercise ? gym.gym().shelf.find(*slot->exercise) : nullptr;
    return e ? e->name : std::string("open slot");
}
} // namespace

Did editBlock(OpenGym& gym, Spot at, Message what, const std::function<void(Block&)>& edit,
              std::optional<Place> after) {
    const auto old = gym.gym().block(at.month);
    if (!old) return false;
    auto block = std::make_shared<Block>(*old);
    edit(*block);
    block->month = at.month;
    return gym.change(
        {std::move(what), {PutBlock{block}}, at, Spot{at.month, after.value_or(at.place)}});
}

Did setExercise(OpenGym& gym, Spot at, const ExerciseId& exercise) {
    const Exercise* e = gym.gym().shelf.find(exercise);
    if (!e) return Message{"“%1” is not on the Shelf.", {exercise.text()}};
    return editBlock(gym, at, {"exercise %1", {e->name}}, [&](Block& b) {
        Slot* slot = slotAt(b, at.place);
        if (!slot) return;
        slot->exercise = exercise;
        slot->role.reset();
        slot->patterns.clear();
        slot->dose = fittingDose(*slot, *e, sectionAt(b, at.place)->kind);
    });
}

Did openSlot(OpenGym& gym, Spot at) {
    return editBlock(gym, at, {"open the slot of %1", {nameAt(gym, at)}}, [&](Block& b) {
        Slot* slot = slotAt(b, at.place);
        if (!slot || slot->open()) return;
        slot->exercise.reset();
        slot->main = slot->locked = false;
    });
}

Did setDose(OpenGym& gym, Spot at, const Dose& dose) {
    const auto block = gym.gym().block(at.month);
    const Slot* slot = block ? slotAt(*block, at.place) : nullptr;
    if (!slot) return false;
    const Exercise* e = slot->exercise ? gym.gym().shelf.find(*slot->exercise) : nullptr;
    if (e && !canTime(*slot, *e, dose))
        return Message{
            "%1 has no pace in %2. Dose it in %3, or give it a pace on the Shelf.",
            {e->name, std::string(wordOf(dose.measure())), std::string(wordOf(e->pace.usual()))}};
    return setField(gym, at, {"dose of %1", {nameAt(gym, at)}}, slotOf, &Slot::dose,
                    std::optional(dose));
}
Did setTempo(OpenGym& gym, Spot at, std::optional<Tempo> tempo) {
    return setField(gym, at, {"tempo of %1", {nameAt(gym, at)}}, slotOf, &Slot::tempo, tempo);
}
Did setEffort(OpenGym& gym, Spot at, std::optional<Range<Rir>> effort) {
    return setField(gym, at, {"effort of %1", {nameAt(gym, at)}}, slotOf, &Slot::effort, effort);
}
Did setMain(OpenGym& gym, Spot at, bool main) {
    return setField(gym, at, {"main lift %1", {nameAt(gym, at)}}, slotOf, &Slot::main, main);
}
Did setLocked(OpenGym& gym, Spot at, bool locked) {
    return setField(gym, at, {"lock on %1", {nameAt(gym, at)}}, slotOf, &Slot::locked, locked);
}
Did setNote(OpenGym& gym, Spot at, std::string note) {
    return setField(gym, at, {"note on %1", {nameAt(gym, at)}}, slotOf, &Slot::note,
                    std::move(note));
}
Did setRounds(OpenGym& gym, Spot at, Range<int> rounds) {
    return setField(gym, at, {"rounds", {}}, groupOf, &Group::rounds, rounds);
}
Did setRest(OpenGym& gym, Spot at, Range<Millis> rest) {
    return setField(gym, at, {"rest", {}}, groupOf, &Group::rest, rest);
}
Did setTalk(OpenGym& gym, Spot at, Millis talk) {
    return setField(gym, at, {"talk", {}}, sectionOf, &Section::talk, talk);
}
Did setBudget(OpenGym& gym, Spot at, std::optional<Range<Millis>> budget) {
    return setField(gym, at, {"budget", {}}, sectionOf, &Section::budget, budget);
}
Did setStart(OpenGym& gym, Spot at, Start start) {
    return setField(gym, at, {"start", {}}, sectionOf, &Section::start, std::move(start));
}

Did applyRemedy(OpenGym& gym, Month month, const Remedy& remedy, Place place) {
    if (!remedy.action) return false;
    return editBlock(gym, {month, place}, remedy.label, remedy.action);
}

} // namespace bw
