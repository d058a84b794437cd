// SPDX-License-Identifier: GPL-3.0-or-later
// A finding as it is read: where, in which weeks, what against which limit.
#pragma once
#include "blockwright/rules/finding.hpp"

#include <QString>

namespace bw {

[[nodiscard]] QString findingWhere(const Block& block,
                                   Place place); // "D1", "D", "Strength", "session"
// "week 2", "weeks 2–4", "weeks 1, 3"; "every week" when it concerns all of them.
[[nodiscard]] QString findingWeeks(const std::vector<int>& weeks, int all);
// "2:50, limit 2:00"; "1.46, band 0.6–1.4"; empty when there is nothing to compare.
[[nodiscard]] QString findingFigures(const Finding& finding);
// "Accepted when it was 2:14, limit 2:00: “Two benches only.”"
[[nodiscard]] QString acceptedBefore(const Acceptance& before, const Finding& now);
[[nodiscard]] QString figureText(double value, const std::string& unit);

} // namespace bw
