// SPDX-License-Identifier: GPL-3.0-or-later
// The stair as it stands for one slot: what each week asks of everybody.
#pragma once
#include "blockwright/model/place.hpp"

#include <vector>

namespace bw {

struct PlanStep {
    Week week = Week::first();
    Range<int> rounds;        // as the week's mode takes them: low {lo, lo}, high {hi, hi}
    std::optional<Dose> dose; // none in an open slot
    // The week's, or the low end of the slot's own effort if that is more. None where the stair's
    // reserve is not meant: outside strength sections, unless the slot has an effort of its own.
    std::optional<Rir> rir;
    Intent intent = Intent::Build;
};

// A step for each week of the stair. The place must be a slot of the block.
[[nodiscard]] std::vector<PlanStep> classPlan(const Block& block, Place slot);
// Of one week; a week past the end has the last step.
[[nodiscard]] PlanStep planStep(const Block& block, Place slot, Week week);

// By sevens from the first day of the month; what is left of the month stays with the last week of
// the stair. None for a date of another month.
[[nodiscard]] std::optional<Week> weekOfDate(const Block& block, Date date);
// Its first day and the one after its last; the two are equal for a week that the month is too
// short for.
struct DaysOfWeek {
    Date from, to;
};
[[nodiscard]] DaysOfWeek daysOf(const Block& block, Week week);

} // namespace bw
