// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules of the simulated class share.
#pragma once
#include "blockwright/floor/study.hpp"
#include "blockwright/rules/finding.hpp"
#include "core/rules/wording.hpp"

namespace bw::book {

[[nodiscard]] std::string kitName(const Gym& gym, const KitId& id);
[[nodiscard]] std::string clockOf(MeanTime t);       // "3:10", to the second
[[nodiscard]] std::string percentText(double share); // "12 %"
// At most three of the week's changes for which `helps` is true, the most saved first, and one of a
// kind in one place.
using Helps = std::function<bool(const ProvenChange&)>;
[[nodiscard]] std::vector<Remedy> provenRemedies(const FloorWeek& week, const Helps& helps);

} // namespace bw::book
