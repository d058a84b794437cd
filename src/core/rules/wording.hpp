// SPDX-License-Identifier: GPL-3.0-or-later
// How findings name things: exercises by name with the letter and number of the sheet ("Goblet
// squat (B2)"), groups by letter and exercises ("B (Front rack squat + Goblet squat)").
#pragma once
#include "blockwright/rules/facts.hpp"

#include <string>

namespace bw {

[[nodiscard]] Message commonPractice();
[[nodiscard]] Message thisGymsSetting();

[[nodiscard]] std::string slotLabel(const Block& block, const SlotFact& slot);
[[nodiscard]] std::string slotLabel(const Block& block, Place slot, std::string_view name);
[[nodiscard]] std::string groupLabel(const Facts& facts,
                                     Place group);           // without names: the letter alone
[[nodiscard]] std::string kindLabel(const Section& section); // "strength"

[[nodiscard]] std::string numberText(double n);                // "2", "2.5": at most one decimal
[[nodiscard]] std::string secondsText(double seconds);         // "90 s", to the tenth
[[nodiscard]] std::string bandText(const LimitValue& seconds); // "60–120 s", "2–3 min"
[[nodiscard]] std::string listText(const std::vector<std::string>& words); // "a, b, c"

[[nodiscard]] inline LimitValue atMost(double n) { return {n, n, false}; }
[[nodiscard]] inline LimitValue within(double lo, double hi) { return {lo, hi, true}; }
[[nodiscard]] inline bool holds(const LimitValue& v, double x) { return x >= v.lo && x <= v.hi; }
[[nodiscard]] inline double inSeconds(Millis t) { return static_cast<double>(t.count()) / 1000; }
[[nodiscard]] Millis toMillis(double seconds); // to the nearest; nothing below 0

} // namespace bw
