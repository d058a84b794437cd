// SPDX-License-Identifier: GPL-3.0-or-later
// What of a load this gym can really put in somebody's hands: the bar with pairs of plates, the
// sled with single plates, bells and dumbbells in stock, the steps of a machine. One member's at a
// time: whether twelve of them get the same bell at once is the Floor's matter.
#pragma once
#include "blockwright/ledger/ledger_rules.hpp"
#include "blockwright/model/message.hpp"

#include <vector>

namespace bw {

struct Loading {
    Mass total;                // as results say it: bar and all plates, both bells of a pair
    std::optional<KitId> kit;  // none: the gym has not told its loads, this is a rounded number
    int pieces = 1;            // so many of the same kit together, such as two bells
    std::optional<Mass> empty; // of the bar or sled, when there is one
    bool perSide = false;      // plates are those of each side, else of the one post
    std::vector<Mass> plates;  // heaviest first
    bool operator==(const Loading&) const = default;
};

// "62.5 kg: bar 20 kg, each side 20 + 1.25", "24 kg: 2 × 12 kg", "16 kg"
[[nodiscard]] Message loadingText(const Loading& loading, MassUnit unit);

// All loadings of an exercise in this gym.
class Loadings {
public:
    Loadings(const Gym& gym, const Exercise& exercise);

    // Whether the gym has told what it owns for this exercise; else all loads are rounded to the
    // usual step of plates, 2.5 kg or 5 lb.
    [[nodiscard]] bool told() const { return !choices_.empty(); }

    // The loading nearest to `kg` (of two as near, the lighter), or the heaviest that is not above
    // it; never above `most`. The lightest of all where that leaves none. Of several kinds of kit,
    // the first in the exercise's order whose loads reach from below `kg` to above it, else the one
    // that comes nearest.
    struct Ask {
        double kg;
        bool neverAbove = false;
        std::optional<double> most;
    };
    [[nodiscard]] Loading nearest(const Ask& ask) const;
    // The next heavier one than `kg` of the kind of kit that nearest() chooses; none above the
    // heaviest.
    [[nodiscard]] std::optional<Loading> above(double kg) const;
    // All of the kind of kit that nearest() chooses for `kg`, lightest first; none when not told.
    [[nodiscard]] const std::vector<Loading>& around(double kg) const;

private:
    std::vector<std::vector<Loading>> choices_; // one a kind of kit, none empty
    std::int64_t step_;                         // micrograms
};

} // namespace bw
