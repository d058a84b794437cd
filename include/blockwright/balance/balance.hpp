// SPDX-License-Identifier: GPL-3.0-or-later
// What a month trains, counted in sets.
//
//   sets of a slot in a week     planned rounds of its group x weight of its section
//   tally of a pattern, a plane  sum over the slots of sets x the exercise's share in it
//   hard sets of a muscle        visits x planned rounds x share: strength in full, the finisher by
//                                its weight, warm-up and power not at all
//
// Every figure is the average over the weeks it speaks of, so that a month and a window of months
// can stand side by side: tallies of one session, hard sets of one week with all its visits. Open
// slots and exercises that the Shelf does not have count nothing. Sums are kept whole, in
// billionths of half a set, so the order of slots never shows. docs/balance.md works one session by
// hand.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"

#include <array>
#include <map>
#include <optional>
#include <vector>

namespace bw {

struct Ratio {
    double over = 0, under = 0;
    // None when there is nothing under the line.
    [[nodiscard]] std::optional<double> value() const;
    bool operator==(const Ratio&) const = default;
};

struct Balance {
    int weeks = 0;       // that were averaged
    double sets = 0;     // of all slots with an exercise
    double oneSided = 0; // of them, with one side at a time: `each` and `alternating`
    std::array<double, kCount<Pattern>> patterns{};
    std::array<double, kCount<Plane>> planes{};
    std::map<MuscleId, double> muscles; // weekly hard sets, only what is trained

    [[nodiscard]] double of(Pattern p) const { return patterns[static_cast<std::size_t>(p)]; }
    [[nodiscard]] double hardSets(const MuscleId& muscle) const; // 0 when it is not trained

    [[nodiscard]] Ratio pushPull() const;           // both pushes : both pulls
    [[nodiscard]] Ratio kneeHip() const;            // squat and lunge : hinge
    [[nodiscard]] Ratio horizontalVertical() const; // of the pushes and pulls
    [[nodiscard]] Ratio oneSidedShare() const;      // of all sets
    [[nodiscard]] Ratio planeShare(Plane p) const;  // of the sets whose planes are told
    bool operator==(const Balance&) const = default;
};

// One week of a draft, or the average of the weeks of its stair.
[[nodiscard]] Balance measureBalance(const Gym& gym, const Block& block,
                                     std::optional<Week> week = {});
// The average of all weeks of these months.
[[nodiscard]] Balance measureBalance(const Gym& gym, const std::vector<const Block*>& blocks);

// How many calendar months the window holds, this one among them: "balance.window_months" of the
// gym, 1 to 36, else 3.
[[nodiscard]] int windowMonths(const GymSettings& gym);
// The draft and the stored months before it within the window, newest first. What is stored under
// the draft's own month gives way to the draft.
[[nodiscard]] std::vector<const Block*> windowOf(const Gym& gym, const Block& draft);

struct Balances {
    Balance block, window;
};
[[nodiscard]] Balances balancesOf(const Gym& gym, const Block& draft,
                                  std::optional<Week> week = {}); // the week is the block's alone

} // namespace bw
