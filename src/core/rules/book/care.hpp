// SPDX-License-Identifier: GPL-3.0-or-later
// What the two rules on written care share: exercises that ask for cues and a caution.
#pragma once
#include "blockwright/rules/facts.hpp"

#include <vector>

namespace bw::book {

struct CareCase {
    const SlotFact* slot;    // where the exercise stands first
    std::vector<Place> also; // and where else
    bool fresh;              // not in any earlier month
};

// One a exercise: those of at least this skill, and those new to the gym when it has a history.
[[nodiscard]] std::vector<CareCase> careCases(const Facts& facts, double skill);

} // namespace bw::book
