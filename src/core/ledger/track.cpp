// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/ledger/track.hpp"

#include "core/floor/portable_math.hpp"

#include <cmath>
#include <tuple>

namespace bw {

namespace {
// A set of unknown reserve may well have stopped four repetitions early.
constexpr double kUnknownReserve = 0.12 * 0.12;
constexpr double kFar = 4; // standard deviations

double square(double x) { return x * x; }
double daysBetween(Date from, Date to) {
    return static_cast<double>((to.days() - from.days()).count());
}

bool better(const TopSet& a, const TopSet& b) {
    return std::tuple{a.load, a.reps, a.rir} > std::tuple{b.load, b.reps, b.rir};
}
} // namespace

void DaySets::add(const LiftResult& result, const std::optional<SetFigure>& figure) {
    TopSet set{result.date, result.reps, result.rir, result.load};
    if (!top_ || better(set, *top_)) top_ = set;
    if (!figure) return;
    outside_ = outside_ && figure->outside;
    if (!figure->known) {
        if (!unknown_ ||
            std::tuple{figure->logMax, figure->n} > std::tuple{unknown_->logMax, unknown_->n})
            unknown_ = figure;
        return;
    }
    const double weight = 1 / figure->noise;
    weight_ += weight;
    weightedLog_ += weight * figure->logMax;
    weightedReps_ += weight * figure->n;
}

DaySets::Seen DaySets::seen(const std::optional<double>& level) const {
    double weight = weight_, log = weightedLog_, reps = weightedReps_;
    if (unknown_) {
        const bool above = level && unknown_->logMax > *level;
        const double w = 1 / (unknown_->noise + (above ? 0 : kUnknownReserve));
        weight += w;
        log += w * unknown_->logMax;
        reps += w * unknown_->n;
    }
    return {log / weight, 1 / weight, reps / weight};
}

void Track::day(const DaySets& sets, const LedgerRules& rules) {
    last_ = sets.top();
    if (!sets.counts()) return;
    if (until_) level_.drift(square(rules.drift) * daysBetween(*until_, sets.date()));
    auto seen = sets.seen(level_.started() ? std::optional(level_.mean()) : std::nullopt);
    seen.noise += square(rules.dayForm);
    if (see(seen)) {
        since_.reset();
        days_ = 0;
        known_ = false;
    }
    until_ = sets.date();
    if (!since_) since_ = until_;
    reps_ = seen.n;
    known_ = known_ || sets.known();
    outside_ = sets.outside();
    ++days_;
}

// One day far from all before it (a slip of the pen, an illness) counts little; a second one on the
// same side is news, and all before it is forgotten.
bool Track::see(const DaySets::Seen& seen) {
    const double surprise = level_.started() ? seen.logMax - level_.mean() : 0;
    const double expected = level_.variance() + seen.noise;
    const bool far = square(surprise) > square(kFar) * expected;
    const int side = !far ? 0 : surprise > 0 ? 1 : -1;
    const bool news = far && side == farSide_;
    farSide_ = news ? 0 : side;
    if (news)
        level_ = LocalLevel(seen.logMax, seen.noise);
    else
        level_.see(seen.logMax, far ? square(surprise / kFar) - level_.variance() : seen.noise);
    return news;
}

std::optional<Estimate> Track::at(Date on, const LedgerRules& rules) const {
    if (!level_.started()) return std::nullopt;
    const double later = square(rules.drift) * daysBetween(*until_, on);
    const double reach =
        kEightyPercent * std::sqrt(level_.variance() + later + curveVariance(reps_));
    Estimate e;
    e.kg = portableExp(level_.mean());
    e.lowKg = portableExp(level_.mean() - reach);
    e.highKg = portableExp(level_.mean() + reach);
    e.days = days_;
    e.since = since_;
    e.last = last_;
    e.atLeast = !known_;
    e.outside = outside_;
    e.far = farSide_ != 0;
    return e;
}

} // namespace bw
