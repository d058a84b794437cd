// SPDX-License-Identifier: GPL-3.0-or-later
// Which exercises of a session follow each other, and what they may both tire.
#pragma once
#include "blockwright/rules/facts.hpp"

#include <vector>

namespace bw::book {

enum class Next { InRound, RoundAgain, NextGroup };
struct Step {
    const SlotFact* from;
    const SlotFact* to;
    Next how;
};

// In order of the session; two slots that follow each other in several ways come once.
[[nodiscard]] std::vector<Step> overlapSteps(const Facts& facts);
// Of grip, lumbar, overhead and impact, what both ask at this level or above.
[[nodiscard]] std::vector<Demand> sharedDemands(const Exercise& a, const Exercise& b, double level);

} // namespace bw::book
