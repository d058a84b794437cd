// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of an exercise as a coach reads and writes them, a line each.
//   patterns  squat 90 %, trunk stability 10 %        muscles  glutes, hamstrings 50 %
//   demands   grip 2, knee 1                          pace     3 s/rep, 1.2 m/s
//   kit       long band + squat rack or band tower    set-up   10 s
// What fieldText() writes, withField() reads back to the same exercise. Words in brackets explain
// and are not read. A role, muscle or way of loading that is new is written with a plus: +relay.
#pragma once
#include "blockwright/model/gym.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace bw {

enum class ExerciseField {
    Name,
    Patterns,
    Planes,
    Muscles,
    Sides,
    Roles,
    Demands,
    Skill,
    Kit,
    Load,
    Measure,
    Pace,
    Setup,
    NoEasier,
    NoHarder
};

[[nodiscard]] std::string fieldText(const Gym& gym, const Exercise& exercise, ExerciseField field);
// The exercise with that field as typed. Why() says what is not understood, and what is.
[[nodiscard]] Result<Exercise> withField(const Gym& gym, Exercise exercise, ExerciseField field,
                                         std::string_view typed);
// Cues or cautions with line `at` as typed: emptied, it goes; at the end, it is added.
[[nodiscard]] Result<std::vector<std::string>> withLine(std::vector<std::string> lines,
                                                        std::size_t at, std::string_view typed);
// What a gym calls one of its kit: "long band".
[[nodiscard]] std::string kitWord(const Gym& gym, const KitId& id);
// The words that can stand in the field, those of this gym among them; none where it is free.
[[nodiscard]] std::vector<std::string> fieldWords(const Gym& gym, ExerciseField field);

} // namespace bw
