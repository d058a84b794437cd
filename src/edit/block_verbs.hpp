// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach does to a month's draft. Each verb is one undoable step in the gym file. A place
// that is not there, or a value that is already so, changes nothing and gives false.
#pragma once
#include "blockwright/rules/finding.hpp"
#include "edit/open_gym.hpp"

#include <functional>
#include <optional>

namespace bw {

using Did = Result<bool>;

// The step all others are made of: edits a copy of the month's block and stores it whole.
[[nodiscard]] Did editBlock(OpenGym& gym, Spot at, Message what,
                            const std::function<void(Block&)>& edit,
                            std::optional<Place> after = {});

// A dose that the new exercise can't be timed by becomes its usual one.
[[nodiscard]] Did setExercise(OpenGym& gym, Spot slot, const ExerciseId& exercise);
[[nodiscard]] Did openSlot(OpenGym& gym, Spot slot); // takes the exercise out, keeps the dose
// Why() when the slot's exercise has no pace for this measure.
[[nodiscard]] Did setDose(OpenGym& gym, Spot slot, const Dose& dose);
[[nodiscard]] Did setTempo(OpenGym& gym, Spot slot, std::optional<Tempo> tempo);
[[nodiscard]] Did setEffort(OpenGym& gym, Spot slot, std::optional<Range<Rir>> effort);
[[nodiscard]] Did setMain(OpenGym& gym, Spot slot, bool main);
[[nodiscard]] Did setLocked(OpenGym& gym, Spot slot, bool locked);
[[nodiscard]] Did setNote(OpenGym& gym, Spot slot, std::string note);

[[nodiscard]] Did setRounds(OpenGym& gym, Spot group, Range<int> rounds);
[[nodiscard]] Did setRest(OpenGym& gym, Spot group, Range<Millis> rest);
[[nodiscard]] Did setTalk(OpenGym& gym, Spot section, Millis talk);
[[nodiscard]] Did setBudget(OpenGym& gym, Spot section, std::optional<Range<Millis>> budget);
[[nodiscard]] Did setStart(OpenGym& gym, Spot section, Start start);

// Behind the place: a slot behind that slot (or last in that group), a group behind that group (or
// last in that section), a section behind that section (or last of all).
[[nodiscard]] Did addSlot(OpenGym& gym, Spot behind);
[[nodiscard]] Did addGroup(OpenGym& gym, Spot behind); // an open pair
[[nodiscard]] Did addSection(OpenGym& gym, Spot behind, SectionKind kind);
// A slot, a group or a section with all that is in it. A group's last slot takes the group with it.
[[nodiscard]] Did removeAt(OpenGym& gym, Spot at);
// A slot, group or section one step up (-1) or down (1); a slot at the edge of its group goes over
// into the next one, a group at the edge of its section likewise.
[[nodiscard]] Did moveBy(OpenGym& gym, Spot at, int step);
// A slot to before `to` (a slot) or to the end of `to` (a group); a group to before a group or to
// the end of a section; a section to before a section.
[[nodiscard]] Did moveTo(OpenGym& gym, Spot at, Place to);

// Does what a finding's remedy says.
[[nodiscard]] Did applyRemedy(OpenGym& gym, Month month, const Remedy& remedy, Place place);

// The slot, group or section a coach would expect when adding one.
[[nodiscard]] Group usualGroup(SectionKind kind);
[[nodiscard]] Section usualSection(SectionKind kind);

} // namespace bw
