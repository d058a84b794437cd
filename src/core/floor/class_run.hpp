// SPDX-License-Identifier: GPL-3.0-or-later
// Plays whole classes of one plan: opening, the sections one after the other, closing.
#pragma once
#include "core/floor/section_run.hpp"

namespace bw {

using FloorStarts = std::vector<std::vector<int>>; // by section, then by member

struct ClassTimeline {
    std::vector<FloorRow> rows;
    std::vector<FloorHold> holds;
};

class ClassRun {
public:
    // The plan must outlive this.
    ClassRun(const FloorPlan& plan, FloorStarts starts, int members);

    // The record as it was left by the class before is cleared.
    void play(const FloorSteps& steps, ClassRecord& record);
    // Who does what when, and who has which kit, in the order of FloorAnswer.
    [[nodiscard]] ClassTimeline timeline(const FloorSteps& steps);

private:
    const FloorPlan& plan_;
    FloorStarts starts_;
    int members_;
    SectionRun run_;
};

} // namespace bw
