// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/rules/facts.hpp"

namespace bw::book {

struct HeavyFaults {
    bool order;       // the first is no heavier than the second
    bool shortSecond; // fewer reps than `least`
};
// Of a pair in heavy-then-long; both with a dose.
[[nodiscard]] HeavyFaults heavyFaults(const SlotFact& first, const SlotFact& second, double least);

} // namespace bw::book
