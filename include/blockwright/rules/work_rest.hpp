// SPDX-License-Identifier: GPL-3.0-or-later
// How long to rest after an interval of hard work, as a multiple of the work: the textbook table of
// Haff & Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed., Human Kinetics
// 2016, table 3.6. It speaks of the interval's length only; which energy system pays is never so
// clear-cut (Gastin, Sports Med 2001;31(10):725-741).
#pragma once
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/range.hpp"

#include <array>
#include <optional>

namespace bw {

struct WorkRest {
    Range<Millis> work;
    Range<int> times; // rest = work x times
};

// Rows in order of length. Between two rows (10 to 15 s, 30 s to 1 min) the table says nothing.
[[nodiscard]] const std::array<WorkRest, 4>& workRestTable();

// None where the table says nothing. An interval on the edge of two rows belongs to the shorter
// one.
[[nodiscard]] std::optional<Range<Millis>> restAfter(Millis work);

} // namespace bw
