// SPDX-License-Identifier: GPL-3.0-or-later
// A proposal in words.
#pragma once
#include "blockwright/propose/propose.hpp"

#include <QString>

namespace bw {

// "Answer 1 of 3 · penalty 136 → 135 on paper · proved best"
[[nodiscard]] QString answerWords(const Proposal& proposal, std::size_t answer, bool playing);
[[nodiscard]] QString lookingWords(double best, double bound); // penalties

// A line for each slot: what would stand there, and what it brings.
[[nodiscard]] QString chosenWords(const ProposedMonth& answer);
// A line for each finding that it settles, moves to another level, or brings.
[[nodiscard]] QString shiftWords(const ProposedMonth& answer);

} // namespace bw
