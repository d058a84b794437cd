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

// Is a pair what the format says? `least` as pairing.related_share has it.
[[nodiscard]] bool fitsFormat(Format format, const Exercise& first, const Exercise& second,
                              double least);

} // namespace bw::book
