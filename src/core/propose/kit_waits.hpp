// SPDX-License-Identifier: GPL-3.0-or-later
// How long members will wait for kit at least, whatever the order in which they come to it. Looked
// at are those who begin a section with a group, and only in that group: nobody is there before
// them.
//
//   line   one way to see it: at a kit item, by those who begin with a group, in its first rounds
//
// The finishing times of the kit's work add up to leastTotal() or more. Of each member's finishing
// time, what is neither own work nor rest is waiting. So a line is a sum over the slots: of a slot
// that takes the kit, least total less own work; of another, less own work. Where the waiting could
// also be for other kit, a line says nothing.
#pragma once
#include "core/floor/step_sample.hpp"
#include "core/propose/task.hpp"

#include <set>
#include <span>

namespace bw::proposing {

// How an exercise may wait for kit of one claim.
struct KitWait {
    bool may = false;         // else it never has to
    std::optional<KitId> kit; // that it can only be for; none: one or the other
    int servers = 0;          // members who can have what it takes, at most
};
struct KitWaits {
    KitWait entry, set;
};

struct KitLine {
    Place group;
    KitId kit;
    int servers = 0;
    bool entry = false; // kit that is kept through the group
    int rounds = 1;
    int last = 0; // slot of the last round that counts; of kept kit all do
    bool operator==(const KitLine&) const = default;
};

class LeastWaits {
public:
    // No lines when the task asks for none, or the simulated class can't be bounded so: it can't be
    // played, is not as drafted, looks at loads, or the coach accepted findings of the queue.
    explicit LeastWaits(const Task& task);

    [[nodiscard]] const std::vector<KitLine>& lines() const { return lines_; }
    [[nodiscard]] int members() const { return members_; }
    // Adds to two sums a line: milliseconds of waiting of all members in a class, and slots that
    // take the kit. First what is there whatever is chosen.
    void addFixed(std::span<std::int64_t> to);
    void add(const SlotFact& slot, std::span<std::int64_t> to);

private:
    struct Taker { // a slot with an exercise
        KitWaits waits;
        Millis setup;
        PlanWork work;
    };
    struct Crowd { // who begin with a group
        Place group;
        int rounds = 0; // that all do in the hardest week
        std::vector<int> members;
        std::vector<std::vector<Taker>> takers; // by slot: all that may stand there
    };

    // What may stand in a slot: one exercise, or all that a target can have.
    [[nodiscard]] std::vector<const Exercise*> candidates(const SlotFact& slot) const;
    void findAmple();
    void findCrowds();
    void findLines(const Crowd& crowd);
    [[nodiscard]] bool mayMatter(const Crowd& crowd, const KitLine& line) const;
    [[nodiscard]] KitWaits waitsOf(const Exercise& e) const;
    [[nodiscard]] Taker takerOf(const SlotFact& slot, const Exercise& e) const;
    [[nodiscard]] const Crowd* crowdAt(Place group) const; // null: nobody begins there
    [[nodiscard]] static int roundsOf(const KitLine& line, int slot);
    // What a slot adds to the waiting of a line; below 0 where it takes away. `times`: by rank,
    // what its sets come to for each member.
    [[nodiscard]] static double partOf(const KitLine& line, int slot, const Taker& taker,
                                       const std::vector<double>& times);
    [[nodiscard]] double leastPart(const KitLine& line, Place slot, const Taker& taker);
    [[nodiscard]] double likelyPart(const Crowd& crowd, const KitLine& line) const;

    const Task& task_;
    int members_ = 0;
    double worth_ = 0;      // ms of waiting of all, below which a line can't matter
    std::set<KitId> ample_; // never short
    std::vector<Crowd> crowds_;
    std::vector<KitLine> lines_;
    std::optional<StepSample> sample_;
};

} // namespace bw::proposing
