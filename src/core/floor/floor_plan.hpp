// SPDX-License-Identifier: GPL-3.0-or-later
// A week of a draft, made flat for the simulation: everything by index, times in milliseconds.
// A member's steps (how long each set and rest takes) stand in one row: for each group from
// firstStep, for each round, its slots and then its rest.
#pragma once
#include "blockwright/floor/floor.hpp"

#include <array>
#include <cstdint>
#include <string>

namespace bw {

using Ticks = std::int64_t; // milliseconds

struct IndexSpan {
    int begin = 0, end = 0;
    [[nodiscard]] int size() const { return end - begin; }
};

struct PlanNeed {
    int kit = 0; // index into FloorPlan::kit
    int count = 0;
};
struct PlanAlternative {
    IndexSpan group, set; // needs to keep through the group, and to take for one set
};

struct PlanWork {
    double lo = 0, hi = 0; // amounts, in the smallest unit of the dose
    bool whole = false;    // whole amounts only
    double perAmount = 0;  // milliseconds of one, at pace 1
    Ticks middle = 0;      // of the middle amount
};

struct PlanSlot {
    Place place;
    Ticks setup = 0;
    PlanWork work;
    IndexSpan alternatives;     // those that this gym can serve; none: needs nothing
    bool chosenOnEntry = false; // some alternative keeps kit through the group
};

struct PlanGroup {
    Place place;
    IndexSpan slots; // open slots are left out
    int lo = 1, hi = 1;
    Ticks restLo = 0, restHi = 0;
    int firstStep = 0;
    [[nodiscard]] int stepsPerRound() const { return slots.size() + 1; }
};

struct PlanSection {
    SectionKind kind{};
    IndexSpan groups;
    Ticks talk = 0;
    std::optional<Ticks> budget; // its high end
    Start start;
};

struct PlanLoad {
    std::optional<Mass> mass; // none: units whose load the gym has not told
    int units = 0;
};
struct PlanKit {
    KitId id;
    int units = 0;
    IndexSpan loads; // lightest first
};

// The loads that a member takes for a need, the one liked best first; none: whatever is there.
struct PlanWish {
    std::array<int, 3> loads{}; // indices into FloorPlan::loads
    int count = 0;
};

struct FloorPlan {
    Ticks opening = 0, closing = 0, classTime = 0;
    std::vector<PlanSection> sections;
    std::vector<PlanGroup> groups;
    std::vector<PlanSlot> slots;
    std::vector<PlanAlternative> alternatives;
    std::vector<PlanNeed> needs;
    std::vector<PlanKit> kit; // what the slots can take, in the gym's order
    int steps = 0;            // length of a member's row
    // Where loads are looked at (load_plan.hpp); else empty.
    std::vector<PlanLoad> loads;
    std::vector<PlanWish> wishes; // by member, then by need
};

// Shortages must have been looked for before.
[[nodiscard]] FloorPlan planFloor(const Gym& gym, const Block& block, Week week);

// The work of a slot that has a dose.
[[nodiscard]] PlanWork planWork(const Slot& slot, const Exercise& exercise);

// What a week asks for of a group's rounds.
[[nodiscard]] Range<int> roundsIn(RoundsMode mode, Range<int> rounds);

// The group (from 0 within the section) at which each member starts.
[[nodiscard]] std::vector<int> startsOf(const Start& start, int groups, int members);

} // namespace bw
