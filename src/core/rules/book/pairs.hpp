// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/rules/facts.hpp"

#include <functional>

namespace bw::book {

// Visits the groups of strength sections that have exactly two slots, each with an exercise of the
// Shelf and a dose.
void eachStrengthPair(
    const Facts& facts,
    const std::function<void(const SlotFact& first, const SlotFact& second)>& visit);

} // namespace bw::book
