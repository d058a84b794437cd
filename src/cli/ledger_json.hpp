// SPDX-License-Identifier: GPL-3.0-or-later
// Estimates and targets as stair and ledger say them. Loads in kilograms, to the gram.
#pragma once
#include "blockwright/ledger/target.hpp"
#include "cli/json_text.hpp"

namespace bw::cli {

[[nodiscard]] Json thousandths(double value);                    // rounded to them
[[nodiscard]] Json topSetJson(const std::optional<TopSet>& set); // null without one
// Null without one.
[[nodiscard]] Json estimateJson(const std::optional<Estimate>& estimate, const LedgerRules& rules,
                                const Shelf& shelf);
[[nodiscard]] Json targetJson(const Target& target, MassUnit unit);

// "104 kg", "at least 95 kg", "–"
[[nodiscard]] std::string estimateCell(const std::optional<Estimate>& estimate, MassUnit unit);
[[nodiscard]] std::string rangeCell(const std::optional<Estimate>& estimate, MassUnit unit);
// "92.5 kg", "find it", "5–6 reps"
[[nodiscard]] std::string targetCell(const Target& target, MassUnit unit);

} // namespace bw::cli
