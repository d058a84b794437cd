// SPDX-License-Identifier: GPL-3.0-or-later
#include "athletes.hpp"

#include "blockwright/ledger/formula.hpp"
#include "core/floor/philox.hpp"
#include "core/floor/portable_math.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <cmath>

namespace bw::test {

namespace {
constexpr int kDays = 365;

class Draws {
public:
    Draws(std::uint32_t seed, std::uint32_t athlete) : seed_(seed), athlete_(athlete) {}
    double unit() { return openUnitFrom(philox({athlete_, at_++, 0, 0}, {seed_, 77})[0]); }
    double normal(double deviation) { return deviation * normalQuantile(unit()); }
    double between(double lo, double hi) { return lo + (hi - lo) * unit(); }
    bool chance(double p) { return unit() < p; }

private:
    std::uint32_t seed_, athlete_, at_ = 0;
};

class Athlete {
public:
    Athlete(std::uint32_t seed, std::uint32_t number) : draw_(seed, number) {
        strength_ = portableLog(draw_.between(25, 160));
        growth_ = draw_.between(0, 0.25);
        pace_ = draw_.between(90, 400);
        for (double& w : curve_) w = -portableLog(draw_.unit());
        bend_ = portableExp(draw_.normal(0.15));
        bias_ = draw_.normal(0.5);
        known_ = draw_.between(0.6, 1);
        step_ = draw_.chance(0.5) ? 2.5 : 2;
    }

    std::vector<Look> year() {
        std::vector<Look> out;
        const Date first = Date::of(2025, 1, 1).value();
        for (int day = 0; day < kDays; ++day) {
            wake();
            if (off_ == 0 && draw_.chance(0.3)) out.push_back(train(first.plusDays(day)));
        }
        return out;
    }

private:
    // A night passes. Growth slows towards its end; a week or three off now and then.
    void wake() {
        if (off_ == 0 && draw_.chance(1.0 / 120)) off_ = static_cast<int>(draw_.between(7, 21));
        if (off_ > 0) --off_;
        const double gained = off_ > 0 ? -0.0015 : growth_ / pace_;
        if (off_ == 0) growth_ -= gained;
        strength_ += gained + draw_.normal(0.003);
    }

    // How many times the load the strength of the day is, when n can just be done: a mean of the
    // seven equations, weighted and bent for this athlete. Bent so that a set of eight to failure
    // tells one athlete's strength to 3 or 4 % (standard errors of 2.7 to 3.2 kg in the bench
    // press: Lacio et al., Motricidade, 31 men).
    [[nodiscard]] double curve(double n) const {
        double sum = 0, weights = 0;
        for (std::size_t i = 0; i < curve_.size(); ++i) {
            sum += curve_[i] * multiplier(static_cast<Formula>(i), n);
            weights += curve_[i];
        }
        return n <= 1 ? 1 : portableExp(bend_ * portableLog(sum / weights));
    }
    // How many can just be done, in tenths.
    [[nodiscard]] double most(double share) const {
        double n = 1;
        while (n < kMostReps && curve(n + 0.1) * share <= 1) n += 0.1;
        return n;
    }

    Look train(Date date) {
        Look look{date, portableExp(strength_), {}};
        const double today = portableExp(strength_ + draw_.normal(0.035));
        constexpr std::array<int, 4> kReps{3, 5, 8, 10};
        const int reps = kReps[static_cast<std::size_t>(draw_.between(0, 4))];
        const double planned = draw_.between(0, 5);
        const double guess = look.truth * (1 + draw_.normal(0.04)); // what they think they can do
        const double load =
            std::max(step_, step_ * std::round(guess / curve(reps + planned) / step_));
        const int sets = 1 + static_cast<int>(draw_.between(0, 3));
        for (int set = 1; set <= sets; ++set) {
            const double can = most(load / today) - 0.4 * (set - 1); // each set tires
            const int done = std::clamp(static_cast<int>(std::floor(can)), 0, reps);
            if (done < 1) break;
            look.sets.push_back(result(date, set, done, can - done, load));
        }
        return look;
    }

    LiftResult result(Date date, int set, int done, double left, double load) {
        std::optional<Rir> rir;
        const double said = std::max(0.0, std::round(left + bias_ + draw_.normal(1)));
        if (draw_.chance(known_)) rir = Rir::of(std::min(said, 10.0)).value();
        return {MemberId::parse("m-1").value(), date, ex("lift"), set, done, rir,
                Mass::fromKg(load).value(),     {}};
    }

    Draws draw_;
    double strength_ = 0, growth_ = 0, pace_ = 1, bend_ = 1, bias_ = 0, known_ = 1, step_ = 2.5;
    std::array<double, kCount<Formula>> curve_{};
    int off_ = 0;
};
} // namespace

std::vector<Look> athlete(std::uint32_t seed, std::uint32_t number) {
    return Athlete(seed, number).year();
}

} // namespace bw::test
