// SPDX-License-Identifier: GPL-3.0-or-later
// Plays the class of every run, and the same runs over again under changes of the gym.
#pragma once
#include "core/floor/class_run.hpp"
#include "core/floor/crew.hpp"
#include "core/floor/tally.hpp"

namespace bw {

struct PlayedClasses {
    FloorTally tally;
    std::vector<Ticks> finishes, waits;          // by run; waits of all members together
    std::vector<std::vector<Ticks>> sectionEnds; // by section, then by run
};
// Incomplete when the crew was stopped.
[[nodiscard]] PlayedClasses playClasses(const FloorPlan& plan, const FloorOptions& options,
                                        const FloorStarts& starts, int members, const Crew& crew);

// A class that differs in kit, starts or members; its sections, groups and slots are the same.
struct FloorVariant {
    FloorPlan plan;
    FloorStarts starts;
    int members = 0;
};
// Sum of the finishes of each variant over all runs, drawn for `plan` and as many members.
[[nodiscard]] std::vector<Ticks> playVariants(const FloorPlan& plan, const FloorOptions& options,
                                              const std::vector<FloorVariant>& variants,
                                              int members, const Crew& crew);

[[nodiscard]] FloorStarts startsOf(const FloorPlan& plan, const FloorStart& start, int members);
// As the best start says.
[[nodiscard]] FloorStarts startsOf(const FloorPlan& plan, const FloorHeads& heads, int members);

} // namespace bw
