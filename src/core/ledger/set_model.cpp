// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/ledger/set_model.hpp"

#include "core/floor/portable_math.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr int kPerRep = 10;

// How many repetitions people err by in saying how many were left: about 1 when 0 to 5 were, more
// than 2 when 7 to 10 were (Hackett et al., J Strength Cond Res 2017;31(8):2162-2168).
double reserveError(double reserve) { return 1 + std::clamp((reserve - 5) / 2, 0.0, 1.5); }

double square(double x) { return x * x; }
} // namespace

// A lifter's own curve differs from every equation: for 4 to 10 repetitions to failure the standard
// error is about 3 % (2.7 to 3.2 kg in the bench press: Lacio et al., Motricidade, 31 men), of
// which the choice of equation explains about 2 %. The rest is taken as a tenth of the logarithm
// of the multiplier.
double curveVariance(double n) {
    constexpr double kOwn = 0.1;
    if (n <= 1) return 0;
    return square(disagreement(n)) + square(kOwn * portableLog(multiplier(Formula::Epley, n)));
}

SetModel::SetModel(Formula formula) : mostReps_(factsOf(formula).mostReps) {
    constexpr double kStep = 0.5;
    const auto logAt = [&](double n) { return portableLog(multiplier(formula, n)); };
    for (int i = 0; i <= static_cast<int>(kMostReps) * kPerRep; ++i) {
        const double n = double{1} * i / kPerRep;
        const double from = std::clamp(n, 2.0, kMostReps - kStep); // the step at n = 1 is no slope
        rows_.push_back({logAt(n), (logAt(from + kStep) - logAt(from - kStep)) / (2 * kStep),
                         curveVariance(n)});
    }
}

std::optional<SetFigure> SetModel::figure(const LiftResult& result, Sides sides) const {
    if (!result.load || result.load->micrograms() == 0 || result.reps < 1) return std::nullopt;
    const int done =
        sides == Sides::Alternating ? result.reps * kPerRep / 2 : result.reps * kPerRep;
    const int tenths = std::max(kPerRep, done + (result.rir ? result.rir->tenths() : 0));
    if (tenths >= static_cast<int>(rows_.size())) return std::nullopt;
    const Row& row = rows_[static_cast<std::size_t>(tenths)];
    SetFigure f;
    f.n = double{1} * tenths / kPerRep;
    f.logMax = portableLog(result.load->kg()) + row.logMultiplier;
    f.known = result.rir.has_value();
    f.outside = f.n > mostReps_;
    f.noise = square(row.slope * reserveError(f.known ? result.rir->reps() : 0)) + row.spread;
    constexpr double kOutside = 4; // half the weight of a set twice as sure: a choice of ours
    if (f.outside) f.noise *= kOutside;
    return f;
}

} // namespace bw
