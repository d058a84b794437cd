// SPDX-License-Identifier: GPL-3.0-or-later
// One target at a time. See docs/ledger.md for the rules.
#pragma once
#include "blockwright/ledger/target.hpp"

namespace bw {

// What a target is reckoned from.
struct TargetCase {
    const Gym& gym;
    const LedgerRules& rules;
    const Exercise& exercise;
    const Loadings& loadings;
    const Member* member;
    const std::optional<Estimate>& estimate;
    const std::optional<TopSet>& last;
};

// What a load may not rise from by more than the gym's jump.
struct Before {
    double kg;
    bool same; // repetitions and reserve are those of the target, so kg is a load to stay with
};

// The repetitions that a load is reckoned for: the high end of the dose, half of it in alternating
// sides, with those in reserve.
[[nodiscard]] double repsOf(const Exercise& exercise, int reps, Rir rir);
// The last load, as heavy as it would have been with n repetitions. None without one.
[[nodiscard]] std::optional<Before> carriedOver(const TargetCase& c, double n);
// A load from the estimate, which must be there.
[[nodiscard]] Target loadTarget(const TargetCase& c, int reps, Rir rir,
                                const std::optional<Before>& before);
[[nodiscard]] Target asLast(const TargetCase& c);
[[nodiscard]] Target bodyTarget(const TargetCase& c, const std::optional<Dose>& dose);
// Loaded with the body alone, by a band of no told mass, or by a machine that is not lifted.
[[nodiscard]] bool bodyOnly(const TargetCase& c);

} // namespace bw
