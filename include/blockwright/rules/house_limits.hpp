// SPDX-License-Identifier: GPL-3.0-or-later
// Every number of the rule book and the ledger that a gym can set as it is in this house, and how a
// coach writes one:
//   seconds      90   90 s   1:30   2 min   60-120 s
//   share        12 %   12          12 is always per cent
//   other        6   6 reps   0.6-1.4
#pragma once
#include "blockwright/rules/rule.hpp"

namespace bw {

struct HouseLimit {
    std::string key;            // "superset-work.seconds", as in GymSettings::limits
    const Rule* rule = nullptr; // null: the balance's or the ledger's, which no one rule owns
    LimitSpec spec;
    bool weight = false; // of a finding in the penalty
};

// In the order of the catalogue; each rule's limits, then its three weights; last the ledger's.
[[nodiscard]] const std::vector<HouseLimit>& houseLimits();
[[nodiscard]] const HouseLimit* houseLimit(std::string_view key); // null when there is none

// This gym's value, else the rule book's.
[[nodiscard]] LimitValue limitHere(const GymSettings& gym, const HouseLimit& limit);

// One number or a band, as the standard is. Why() says what is understood.
[[nodiscard]] Result<LimitValue> parseLimit(std::string_view text, const LimitSpec& spec);
// parseLimit(limitText(v, spec), spec) gives v again, to four decimals.
[[nodiscard]] std::string limitText(const LimitValue& value, const LimitSpec& spec);

} // namespace bw
