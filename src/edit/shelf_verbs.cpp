// SPDX-License-Identifier: GPL-3.0-or-later
#include "edit/shelf_verbs.hpp"

#include <algorithm>

namespace bw {

namespace {
using Kind = std::vector<ExerciseId> Exercise::*;

Kind listOf(Kin kin) {
    if (kin == Kin::Easier) return &Exercise::easier;
    return kin == Kin::Harder ? &Exercise::harder : &Exercise::swaps;
}

bool has(const std::vector<ExerciseId>& list, const ExerciseId& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

PutExercise put(Exercise e) { return PutExercise{std::make_shared<const Exercise>(std::move(e))}; }

std::string fieldName(ExerciseField field) {
    switch (field) {
    case ExerciseField::Name: return "name";
    case ExerciseField::Patterns: return "patterns";
    case ExerciseField::Planes: return "planes";
    case ExerciseField::Muscles: return "muscles";
    case ExerciseField::Sides: return "sides";
    case ExerciseField::Roles: return "roles";
    case ExerciseField::Demands: return "demands";
    case ExerciseField::Skill: return "skill";
    case ExerciseField::Kit: return "kit";
    case ExerciseField::Load: return "load";
    case ExerciseField::Measure: return "measure";
    case ExerciseField::Pace: return "pace";
    case ExerciseField::Setup: return "set-up";
    case ExerciseField::NoEasier: return "why nothing is easier";
    case ExerciseField::NoHarder: return "why nothing is harder";
    }
    return {};
}

// The first month with a dose of it that this pace can't time; a tempo times repetitions.
const Block* monthAgainst(const Gym& gym, const Exercise& e) {
    for (const auto& [month, block] : gym.blocks)
        for (const Section& section : block->sections)
            for (const Group& group : section.groups)
                for (const Slot& slot : group.slots)
                    if (slot.exercise == e.id && slot.dose && !e.pace.times(slot.dose->measure()) &&
                        !(slot.tempo && slot.dose->measure() == Measure::Reps))
                        return block.get();
    return nullptr;
}

Did editLines(OpenGym& gym, const ExerciseId& id, std::vector<std::string> Exercise::*lines,
              std::size_t at, std::string_view typed, Message what) {
    const Exercise* old = gym.gym().shelf.find(id);
    if (!old) return false;
    auto now = withLine(old->*lines, at, typed);
    if (!now) return now.why();
    Exercise e = *old;
    e.*lines = std::move(now).value();
    what.args = {e.name};
    return gym.change({std::move(what), {put(std::move(e))}, {}, {}});
}

// A name that can be taken, trimmed.
Result<std::string> freeName(const Gym& gym, std::string_view name) {
    const Exercise none = blankExercise(ExerciseId::parse("none").value(), {},
                                        Pace::of(Measure::Seconds, {}).value());
    auto named = withField(gym, none, ExerciseField::Name, name);
    if (!named) return named.why();
    return std::move(named).value().name;
}

// The other with the exercise on the side that faces it.
PutExercise mirrored(const Exercise& other, Kin kin, const ExerciseId& id) {
    Exercise mirror = other;
    auto& back = kin == Kin::Easier ? mirror.harder : mirror.easier;
    if (!has(back, id)) back.push_back(id);
    return put(std::move(mirror));
}

// With its place in the families of its easier and harder ones.
Result<ExerciseId> addNew(OpenGym& gym, const Exercise& e) {
    std::vector<Change> changes{put(e)};
    for (const Kin kin : {Kin::Easier, Kin::Harder})
        for (const ExerciseId& other : kinOf(e, kin))
            if (const Exercise* found = gym.gym().shelf.find(other))
                changes.emplace_back(mirrored(*found, kin, e.id));
    const auto did = gym.change({{"new exercise %1", {e.name}}, std::move(changes), {}, {}});
    if (!did) return did.why();
    return e.id;
}
} // namespace

const std::vector<ExerciseId>& kinOf(const Exercise& exercise, Kin kin) {
    return exercise.*listOf(kin);
}

Result<Exercise> readField(const Gym& gym, const Exercise& exercise, ExerciseField field,
                           std::string_view typed) {
    auto now = withField(gym, exercise, field, typed);
    if (!now || now->pace == exercise.pace) return now;
    if (const Block* block = monthAgainst(gym, *now))
        return Message{"%1 has a dose of it that could not be timed any more: keep that pace, or "
                       "change the dose first.",
                       {block->month.text()}};
    return now;
}

Did writeField(OpenGym& gym, const ExerciseId& id, ExerciseField field, std::string_view typed) {
    const Exercise* old = gym.gym().shelf.find(id);
    if (!old) return false;
    auto now = readField(gym.gym(), *old, field, typed);
    if (!now) return now.why();
    Message what{"%1 of %2", {fieldName(field), now->name}};
    return gym.change({std::move(what), {put(std::move(now).value())}, {}, {}});
}

Did writeCue(OpenGym& gym, const ExerciseId& id, std::size_t at, std::string_view typed) {
    return editLines(gym, id, &Exercise::cues, at, typed, {"cue of %1", {}});
}
Did writeCaution(OpenGym& gym, const ExerciseId& id, std::size_t at, std::string_view typed) {
    return editLines(gym, id, &Exercise::cautions, at, typed, {"caution of %1", {}});
}

Did setRetired(OpenGym& gym, const ExerciseId& id, bool retired) {
    const Exercise* old = gym.gym().shelf.find(id);
    if (!old) return false;
    Exercise e = *old;
    e.retired = retired;
    Message what{retired ? "retire %1" : "bring back %1", {e.name}};
    return gym.change({std::move(what), {put(std::move(e))}, {}, {}});
}

Did addKin(OpenGym& gym, const ExerciseId& id, Kin kin, const ExerciseId& other) {
    const Exercise* one = gym.gym().shelf.find(id);
    const Exercise* two = gym.gym().shelf.find(other);
    if (!one || !two) return false;
    if (one == two) return Message{"%1 can't stand beside itself.", {one->name}};
    for (const Kin any : {Kin::Easier, Kin::Harder, Kin::Swap})
        if (has(kinOf(*one, any), other))
            return Message{"%1 stands in this family already: take it out there first.",
                           {two->name}};
    Message what{"family of %1", {one->name}};
    Exercise changed = *one;
    (changed.*listOf(kin)).push_back(other);
    std::vector<Change> changes{put(std::move(changed))};
    if (kin != Kin::Swap) changes.emplace_back(mirrored(*two, kin, id));
    return gym.change({std::move(what), std::move(changes), {}, {}});
}

Did removeKin(OpenGym& gym, const ExerciseId& id, Kin kin, const ExerciseId& other) {
    const Exercise* one = gym.gym().shelf.find(id);
    if (!one || !has(kinOf(*one, kin), other)) return false;
    Exercise changed = *one;
    std::erase(changed.*listOf(kin), other);
    std::vector<Change> changes{put(std::move(changed))};
    if (const Exercise* two = gym.gym().shelf.find(other); two && kin != Kin::Swap) {
        Exercise mirror = *two;
        std::erase(kin == Kin::Easier ? mirror.harder : mirror.easier, id);
        changes.emplace_back(put(std::move(mirror)));
    }
    return gym.change({{"family of %1", {one->name}}, std::move(changes), {}, {}});
}

Result<ExerciseId> addExercise(OpenGym& gym, std::string_view name, Pattern pattern) {
    const auto free = freeName(gym.gym(), name);
    if (!free) return free.why();
    auto e = newExercise(gym.gym(), *free, pattern);
    if (!e) return e.why();
    return addNew(gym, *e);
}

Result<ExerciseId> copyExercise(OpenGym& gym, const ExerciseId& id, std::string_view name) {
    const Exercise* from = gym.gym().shelf.find(id);
    if (!from) return Message{"The exercise to copy is not on the Shelf any more.", {}};
    const auto free = freeName(gym.gym(), name);
    if (!free) return free.why();
    const auto fresh = newExercise(gym.gym(), *free, Pattern::Squat); // for its id
    if (!fresh) return fresh.why();
    Exercise e = *from;
    e.id = fresh->id;
    e.name = *free;
    e.retired = false;
    return addNew(gym, e);
}

} // namespace bw
