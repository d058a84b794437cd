// SPDX-License-Identifier: GPL-3.0-or-later
// Effort as repetitions in reserve (RIR): how many more the lifter could have done. 0 to 10, in
// tenths. RPE on the scale built on it is 10 - RIR (Zourdos et al., J Strength Cond Res
// 2016;30(1):267-275).
#pragma once
#include "blockwright/model/result.hpp"

#include <compare>

namespace bw {

class Rir {
public:
    constexpr Rir() = default;
    static Result<Rir> fromTenths(int tenths);
    static Result<Rir> of(double reps); // to the nearest tenth

    [[nodiscard]] constexpr int tenths() const { return tenths_; }
    [[nodiscard]] double reps() const { return tenths_ / 10.0; }
    auto operator<=>(const Rir&) const = default;

private:
    explicit constexpr Rir(int t) : tenths_(t) {}
    int tenths_ = 0;
};

} // namespace bw
