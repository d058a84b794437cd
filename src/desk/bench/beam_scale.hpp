// SPDX-License-Identifier: GPL-3.0-or-later
// What one beam of the balance weighs: two sides, for the month and over the window, each against
// the band of this gym's limits.
#pragma once
#include "blockwright/balance/balance.hpp"
#include "blockwright/model/limit_value.hpp"

#include <QString>

namespace bw {

struct BeamWeighing {
    Ratio ratio;
    LimitValue band;

    [[nodiscard]] bool within() const; // also when there is nothing to weigh
    // -1 (all on the right) to 1 (all on the left), even in the middle; the logarithm of a ratio,
    // whole at five to two.
    [[nodiscard]] double tilt() const;
    [[nodiscard]] static double tiltOf(double ratio);
    bool operator==(const BeamWeighing&) const = default;
};

struct BeamScale {
    QString left, right; // "push", "pull"
    std::vector<Pattern> leftPatterns, rightPatterns;
    BeamWeighing month, window;
    int windowMonths = 0; // that are in it; 1: there are none before

    // "push : pull this month 1.27, band 0.6–1.4", and likewise the window.
    [[nodiscard]] QString monthText() const;
    [[nodiscard]] QString windowText() const;
    [[nodiscard]] QString spoken() const;
    bool operator==(const BeamScale&) const = default;
};

// Push and pull, knee and hip.
[[nodiscard]] std::vector<BeamScale> beamScales(const Gym& gym, const Block& block,
                                                const Balances& balances);
[[nodiscard]] QString setsText(double sets); // "6.5"

} // namespace bw
