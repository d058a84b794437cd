// SPDX-License-Identifier: GPL-3.0-or-later
// How a finding that the coach accepted is known again. Rule, place and `about` say which one it
// is; level, measured and limit are its facts. A finding whose facts have changed comes back.
//
// A place is written with the exercises that stand there, so that moving rows does not lose it, and
// taking another exercise does:
//   session | section strength | group strength back-squat goblet-squat | slot warm-up goblet-squat
// The exercises of a group are in order of their ids, "-" is an open slot, and "#2" at the end is
// the second of its kind in the session.
#pragma once
#include "blockwright/rules/finding.hpp"

namespace bw {

[[nodiscard]] std::string placeKey(const Block& block, Place place);

[[nodiscard]] Acceptance makeAcceptance(const Block& block, const Finding& finding,
                                        std::string reason);
// The block's acceptance of this finding, whether its facts still hold or not; null when there is
// none.
[[nodiscard]] const Acceptance* acceptanceFor(const Block& block, const Finding& finding);

// Level and limit are the same, and what is measured is within a twentieth of what it was: or
// within 5 s, 2 percentage points, 0.05 of anything else, if that is more. Simulated figures move
// by as much with any edit.
[[nodiscard]] bool factsHold(const Acceptance& acceptance, const Finding& finding);

} // namespace bw
