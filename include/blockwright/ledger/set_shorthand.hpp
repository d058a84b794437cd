// SPDX-License-Identifier: GPL-3.0-or-later
// Sets as a coach jots them down beside a name: load × repetitions, then how many were left.
//   40x5 2      40 kg for 5 repetitions, 2 left       8 2       no load: 8 repetitions, 2 left
//   40x5x3 2    three such sets                       bw x8x3   three without load
//   40x5; 45x5 1; =    one set after the other; "=" is the one before it once more
// Reading is lenient (spaces, ×, *, capitals, a decimal comma, "kg" or "lb", "2 left", "RPE 8");
// writing has one form.
#pragma once
#include "blockwright/model/effort.hpp"
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace bw {

struct LiftedSet {
    int reps = 1;             // 0 to 1 000
    std::optional<Rir> rir;   // none: not known
    std::optional<Mass> load; // none: bodyweight
    bool operator==(const LiftedSet&) const = default;
};

inline constexpr std::size_t kMostSetsOfDay = 100;

// A load without a unit is in `usual`. Blank: no set. Why() says what is understood.
[[nodiscard]] Result<std::vector<LiftedSet>> parseSets(std::string_view text, MassUnit usual);
// "40×5×3 2; 45×3": loads to two decimals of the unit.
[[nodiscard]] std::string setsText(std::span<const LiftedSet> sets, MassUnit unit);

} // namespace bw
