// SPDX-License-Identifier: GPL-3.0-or-later
// The random numbers of a class. Each has an address of its own, so a class of a seed stays the
// same whatever thread plays it, and a change of the draft leaves the draws of all else as they
// were:
//   key      the seed, low word first
//   counter  run; member; section << 16 | group << 8 | step / 2; round << 1 | 1 for a pace
// where step is 0 for the rest after the round and n for the n-th slot of the group in the draft,
// open ones counted. Of the four words an even step has the first two, an odd one the last two; the
// first of its two words draws the noise (or pace), the second the dose (or rest).
#pragma once
#include "core/floor/steps.hpp"

namespace bw {

class Draws {
public:
    Draws(const FloorPlan& plan, const FloorOptions& options);

    // The steps of all sections, or of one, for the members 0 to `members` - 1. Run 0 upwards. Not
    // from two threads at once.
    void fill(int run, int members, FloorSteps& steps);
    void fill(int run, int members, int section, FloorSteps& steps);

private:
    [[nodiscard]] double pace(int run, int member) const;
    void fillSection(int run, int member, double pace, const PlanSection& s, Ticks* row);
    void fillGroup(int run, int member, double pace, const PlanGroup& g, Ticks* row);
    void drawBits(int run, int member, const PlanGroup& g);
    void fillSteadily(const PlanGroup& g, Ticks* row) const;

    const FloorPlan& plan_;
    FloorOptions options_;
    // Of one group: by round, then by slot, the rest last.
    std::vector<double> noise_, part_;
};

} // namespace bw
