// SPDX-License-Identifier: GPL-3.0-or-later
// Which movement patterns stand near each other, and which are opposites (common practice, no
// source).
#pragma once
#include "blockwright/model/exercise.hpp"

namespace bw::book {

// Squat and lunge, hinge and lunge, the two pushes, the two pulls, carry and locomotion, carry and
// trunk stability, rotation and trunk stability.
[[nodiscard]] bool neighbours(Pattern a, Pattern b);
// A push and a pull; a hinge and a squat or a lunge.
[[nodiscard]] bool opposites(Pattern a, Pattern b);

// How much of two exercises is so related, 0 to 1: of either, the share in patterns that are
// related to one that makes up a quarter or more of the other; the larger of the two.
[[nodiscard]] double relatedShare(const Exercise& a, const Exercise& b,
                                  bool (*related)(Pattern, Pattern));
[[nodiscard]] bool sameOrNeighbours(Pattern a, Pattern b);

} // namespace bw::book
