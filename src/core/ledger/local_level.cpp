// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/local_level.hpp"

#include "core/floor/portable_math.hpp"

#include <numbers>

namespace bw {

void LocalLevel::see(double y, double noise) {
    if (!started_) {
        *this = LocalLevel(y, noise);
        return;
    }
    const double surprise = y - mean_;
    const double expected = variance_ + noise;
    const double gain = variance_ / expected;
    mean_ += gain * surprise;
    variance_ *= 1 - gain;
    logLikelihood_ -=
        (portableLog(2 * std::numbers::pi * expected) + surprise * surprise / expected) / 2;
}

} // namespace bw
