// SPDX-License-Identifier: GPL-3.0-or-later
// A gym of three exercises for tests of proposals, and months to fill in it.
#pragma once
#include "blockwright/propose/propose.hpp"

namespace bw::test {

using Names = std::vector<ExerciseId>;

// A squat, a hinge, and a hinge with two bells where the gym has one.
[[nodiscard]] Gym pairGym();
[[nodiscard]] Slot openSlot(std::vector<Pattern> patterns, const char* role = "strength-heavy");
[[nodiscard]] Block oneGroup(std::vector<Slot> slots); // September 2026
[[nodiscard]] Names namesOf(const ProposedMonth& answer);

} // namespace bw::test
