// SPDX-License-Identifier: GPL-3.0-or-later
// What the simulated class says. Times count from the start of the class. Percentiles are of the
// sorted sample at index ceil(p * R) - 1.
#pragma once
#include "blockwright/model/kit.hpp"
#include "blockwright/model/place.hpp"

#include <optional>
#include <variant>
#include <vector>

namespace bw {

using MeanTime = std::chrono::duration<double, std::milli>;

struct FloorTimes {
    MeanTime mean{};
    Millis p10{}, p50{}, p90{};
    bool operator==(const FloorTimes&) const = default;
};

struct FloorGroupRounds {
    double mean = 0;        // rounds that a member did
    double reachedHigh = 0; // share of members that did all the week may ask for
    bool operator==(const FloorGroupRounds&) const = default;
};
struct FloorSectionEnd {
    SectionKind kind{};
    FloorTimes end;
    double overBudget = 0; // chance that the section, talk included, takes longer than its budget
    std::vector<FloorGroupRounds> groups;
    bool operator==(const FloorSectionEnd&) const = default;
};

// Over every member of every run.
struct FloorWait {
    MeanTime mean{};
    Millis p90{};
    bool operator==(const FloorWait&) const = default;
};
// A kit item that the draft can take.
struct FloorKitUse {
    KitId kit;
    FloorWait wait;  // while it was short in what the member preferred
    double busy = 0; // share of its units' time from class start to the last section's end
    bool operator==(const FloorKitUse&) const = default;
};

// Who starts where: by section, then by group; no counts where a section has fewer than two groups.
struct FloorHeads {
    std::vector<std::vector<int>> counts;
    bool allTried = true; // false: too many head counts; the best of a part of them
    bool operator==(const FloorHeads&) const = default;
};

struct OneMoreUnit {
    KitId kit;
    // Where loads are looked at and members want one of this kit: the load, and how many units of
    // it one member takes.
    std::optional<Mass> load{};
    int units = 1;
    bool operator==(const OneMoreUnit&) const = default;
};
struct BestHeads {
    FloorHeads heads;
    bool operator==(const BestHeads&) const = default;
};
struct OneMemberFewer {
    bool operator==(const OneMemberFewer&) const = default;
};
struct FloorBuy {
    std::variant<OneMoreUnit, BestHeads, OneMemberFewer> change;
    MeanTime saves{}; // of the mean finish, with the same random numbers; below 0: it costs
    bool operator==(const FloorBuy&) const = default;
};

enum class FloorDoing { Wait, Set, Rest, Talk };
struct FloorRow {
    int member = 0; // from 0
    Millis from{}, to{};
    FloorDoing doing{};
    Place place;   // of the section (talk), the group (rest) or the slot (set, wait)
    int round = 0; // from 0; a rest belongs to the round before it
    std::optional<KitId> lacked{}; // of a wait: the first kit item that was short
    bool operator==(const FloorRow&) const = default;
};
// Who has kit when: for one set, or from entering a group until leaving it.
struct FloorHold {
    KitId kit;
    std::optional<Mass> load{}; // where loads are looked at and this unit's is known
    int member = 0, count = 1;
    Millis from{}, to{};
    bool operator==(const FloorHold&) const = default;
};

struct FloorAnswer {
    int members = 0, runs = 0;
    FloorTimes finish;
    double overrunChance = 0; // of finishing later than the class's minutes
    std::vector<FloorSectionEnd> sections;
    FloorWait wait;                 // all waiting of a member
    std::vector<FloorKitUse> kit;   // in the gym's order
    std::vector<FloorBuy> buys;     // the most saved first
    std::optional<FloorHeads> best; // when the best start was asked for
    int medianRun = 0;              // the first run whose finish is the p50
    std::vector<FloorRow> timeline; // of that run: by member, then by time
    std::vector<FloorHold> holds;   // of that run: by kit as in the gym, then by time and member
    std::vector<Millis> finishes;   // by run
    std::vector<Millis> waits;      // by run: of all members together
    bool operator==(const FloorAnswer&) const = default;
};

} // namespace bw
