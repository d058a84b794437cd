// SPDX-License-Identifier: GPL-3.0-or-later
// The Almanac in sentences: for a screen reader, a tip, and the line under the tables.
#pragma once
#include "desk/almanac/almanac_line.hpp"

namespace bw {

[[nodiscard]] QString shortMonth(Month month);          // "Sep"
[[nodiscard]] QString shortMonthAndYear(Month month);   // "Sep 2026"
[[nodiscard]] QString ratioText(double ratio);          // "0.85"
[[nodiscard]] QString bandText(const LimitValue& band); // "0.6 to 1.4"
// "Front squat, September 2026: main lift, third month in a row." `drafted`: the month has a block.
[[nodiscard]] QString cellSentence(const AlmanacLine& line, std::size_t column, Month month,
                                   bool drafted);
// "Front squat, last used September 2026"
[[nodiscard]] QString lineSentence(const AlmanacLine& line);

} // namespace bw
