// SPDX-License-Identifier: GPL-3.0-or-later
// How an exercise is usually measured, and how fast it goes at pace 1. The rate of the usual
// measure is always there; further rates let the same exercise be dosed in other ways.
#pragma once
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <optional>

namespace bw {

class Pace {
public:
    struct Rates {
        std::optional<Rate> secondsPerRep;
        std::optional<Rate> metresPerSecond;
        std::optional<Rate> kcalPerMinute;
        bool operator==(const Rates&) const = default;
    };
    static Result<Pace> of(Measure usual, Rates rates);

    [[nodiscard]] Measure usual() const { return usual_; }
    [[nodiscard]] const Rates& rates() const { return rates_; }
    // Can a dose in this measure be timed? Seconds always can; reps also by a tempo.
    [[nodiscard]] bool times(Measure m) const;
    bool operator==(const Pace&) const = default;

private:
    Pace(Measure m, Rates r) : usual_(m), rates_(r) {}
    Measure usual_;
    Rates rates_;
};

} // namespace bw
