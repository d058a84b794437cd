// SPDX-License-Identifier: GPL-3.0-or-later
// What one set says of the load that can be lifted once. Worked out once for each tenth of a
// repetition, because millions of sets are asked.
#pragma once
#include "blockwright/ledger/ledger_rules.hpp"

#include <vector>

namespace bw {

struct SetFigure {
    double n = 1;         // repetitions, those in reserve among them
    double logMax = 0;    // natural logarithm of kilograms
    double noise = 0;     // variance of logMax, without the form of the day
    bool known = false;   // whether the set said how many were in reserve
    bool outside = false; // of the equation's range
};

class SetModel {
public:
    explicit SetModel(Formula formula);

    // None for a set without load or repetitions, or of more repetitions than can be reckoned with.
    // In alternating sides half the repetitions count.
    [[nodiscard]] std::optional<SetFigure> figure(const LiftResult& result, Sides sides) const;

private:
    struct Row {
        double logMultiplier, slope, spread; // slope of logMultiplier by repetitions
    };
    std::vector<Row> rows_; // by tenths of a repetition
    double mostReps_;
};

// Variance of logMax that no number of sets of n takes away: the equation is not this lifter's own.
[[nodiscard]] double curveVariance(double n);

} // namespace bw
