// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach does to the exercises of the Shelf. Each is one undoable step; nothing is ever taken
// off the Shelf, so a past month keeps what it used.
#pragma once
#include "blockwright/model/exercise_text.hpp"
#include "edit/gym_verbs.hpp"

namespace bw {

enum class Kin { Easier, Harder, Swap };

[[nodiscard]] const std::vector<ExerciseId>& kinOf(const Exercise& exercise, Kin kin);

// The exercise with the field as typed. Why() when it is not understood, or when a month asks for a
// dose that could not be timed any more.
[[nodiscard]] Result<Exercise> readField(const Gym& gym, const Exercise& exercise,
                                         ExerciseField field, std::string_view typed);
[[nodiscard]] Did writeField(OpenGym& gym, const ExerciseId& id, ExerciseField field,
                             std::string_view typed);
// Line `at` of the cues or of the cautions; emptied, it goes; at the end, it is added.
[[nodiscard]] Did writeCue(OpenGym& gym, const ExerciseId& id, std::size_t at,
                           std::string_view typed);
[[nodiscard]] Did writeCaution(OpenGym& gym, const ExerciseId& id, std::size_t at,
                               std::string_view typed);
[[nodiscard]] Did setRetired(OpenGym& gym, const ExerciseId& id, bool retired);

// The other one becomes its easier or harder version, and it the other's harder or easier one; a
// swap is written on one side only. Why() for itself, or one that is among its kin already.
[[nodiscard]] Did addKin(OpenGym& gym, const ExerciseId& id, Kin kin, const ExerciseId& other);
[[nodiscard]] Did removeKin(OpenGym& gym, const ExerciseId& id, Kin kin, const ExerciseId& other);

// The id of the new one. Why() when the name can't be taken.
[[nodiscard]] Result<ExerciseId> addExercise(OpenGym& gym, std::string_view name, Pattern pattern);
// All of it under another name, not retired, its family included.
[[nodiscard]] Result<ExerciseId> copyExercise(OpenGym& gym, const ExerciseId& id,
                                              std::string_view name);

} // namespace bw
