// SPDX-License-Identifier: GPL-3.0-or-later
// How much of an exercise one set is: 5 reps, 30 to 45 s, 20 m, 8 kcal.
// Amounts are kept whole in the smallest unit: repetitions, milliseconds, millimetres, calories.
#pragma once
#include "blockwright/model/range.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <cstdint>

namespace bw {

class Dose {
public:
    // lo and hi in the unit of smallestPerUnit(); above 0. Bounds: 1 000 reps, 2 h, 20 km, 5 000
    // kcal.
    static Result<Dose> of(Measure measure, std::int64_t lo, std::int64_t hi);
    static Result<Dose> reps(std::int64_t lo, std::int64_t hi) { return of(Measure::Reps, lo, hi); }

    // 1 for reps (whole repetitions only), else 1 000.
    static constexpr std::int64_t smallestPerUnit(Measure m) {
        return m == Measure::Reps ? 1 : 1000;
    }
    static std::int64_t most(Measure m);

    [[nodiscard]] Measure measure() const { return measure_; }
    [[nodiscard]] Range<std::int64_t> amount() const { return amount_; }
    // In reps, seconds, metres or kilocalories.
    [[nodiscard]] double lo() const { return static_cast<double>(amount_.lo()) / perUnit(); }
    [[nodiscard]] double hi() const { return static_cast<double>(amount_.hi()) / perUnit(); }
    [[nodiscard]] double middle() const { return (lo() + hi()) / 2; }
    bool operator==(const Dose&) const = default;

private:
    Dose(Measure m, Range<std::int64_t> a) : measure_(m), amount_(a) {}
    [[nodiscard]] double perUnit() const { return static_cast<double>(smallestPerUnit(measure_)); }
    Measure measure_;
    Range<std::int64_t> amount_;
};

} // namespace bw
