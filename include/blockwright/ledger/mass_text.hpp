// SPDX-License-Identifier: GPL-3.0-or-later
// Loads in the gym's own unit, as short as they can be said: "62.5 kg", "1.25 kg", "135 lb".
#pragma once
#include "blockwright/ledger/estimate.hpp"

#include <string>

namespace bw {

[[nodiscard]] std::string massNumber(Mass mass, MassUnit unit); // "62.5": at most two decimals
[[nodiscard]] std::string massText(Mass mass, MassUnit unit);   // "62.5 kg"
[[nodiscard]] std::string kgText(double kg, MassUnit unit); // to three figures: "62.7 kg", "104 kg"
[[nodiscard]] std::string rirText(double reps);             // "2", "2.5"
// "5 × 80 kg with 2 in reserve", "5 × 80 kg", "8 repetitions"
[[nodiscard]] Message setText(const TopSet& set, MassUnit unit);

} // namespace bw
