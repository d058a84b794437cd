// SPDX-License-Identifier: GPL-3.0-or-later
// The whole rule book over a draft, for one week or all of them.
//
// Over several weeks, findings of the same rule, place and `about` become one: the worst level, the
// figures of the first week that has it, and the list of weeks. What the coach has accepted, and
// whose facts still hold (accepting.hpp), stands apart. The penalty adds the weight of each finding
// that is left; 0 is a clean draft. A weight is the rule's own, or what the gym has set
// under "rule.weight_stop", "rule.weight_look" or "rule.weight_note".
#pragma once
#include "blockwright/rules/finding.hpp"
#include "blockwright/time/timing.hpp"

#include <optional>
#include <vector>

namespace bw {

struct FloorStudy;

struct AcceptedFinding {
    Finding finding;
    std::string reason;
};

struct CheckResult {
    std::vector<Finding> findings;         // by level, then place, then rule
    std::vector<AcceptedFinding> accepted; // likewise; in no count and no penalty
    double penalty = 0;

    [[nodiscard]] int count(Level level) const;
};

// The block need not be stored in the gym; months before block.month are its history. The rules of
// the simulated class are silent about weeks that are not in the study.
[[nodiscard]] CheckResult check(const Gym& gym, const Block& block, std::optional<Week> week = {},
                                const FloorStudy* floor = nullptr);

// Limit keys of the gym that neither a rule nor the ledger knows.
[[nodiscard]] std::vector<std::string> unknownLimits(const GymSettings& gym);

} // namespace bw
