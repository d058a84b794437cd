// SPDX-License-Identifier: GPL-3.0-or-later
// How this gym reckons with results: what it has set under "ledger.…" among its limits, else the
// standard. A value that makes no sense counts as not set.
#pragma once
#include "blockwright/ledger/formula.hpp"
#include "blockwright/model/gym.hpp"
#include "blockwright/rules/rule.hpp"

namespace bw {

struct LedgerRules {
    Formula formula = Formula::Epley;
    double drift = 0.004;    // standard deviation of a day's change of strength, as a share
    double dayForm = 0.042;  // of the form of a day
    int lookbackDays = 730;  // results older than this say nothing any more
    double maxJump = 0.10;   // most rise of a load from week to week, as a share
    bool neverAbove = false; // round loads down, else to the nearest
    Range<int> window;       // of repetitions, for what is loaded with the body alone
    MassUnit unit = MassUnit::Kg;
    // A coach's word for how strong somebody is in the first exercise, as a multiple of the second.
    std::map<std::pair<ExerciseId, ExerciseId>, double> ratios;

    LedgerRules();
    [[nodiscard]] static LedgerRules of(const GymSettings& gym);
};

// Keys are "ledger.name"; the ratios, "ledger.ratio.first-exercise.second-exercise", are not among
// them.
[[nodiscard]] const std::vector<LimitSpec>& ledgerLimits();
[[nodiscard]] bool isLedgerLimit(std::string_view key);

} // namespace bw
