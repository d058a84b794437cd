// SPDX-License-Identifier: GPL-3.0-or-later
// The kit of the floor while a section is played: what is free, and what each member has taken. By
// the unit; and where the plan has loads, each unit by its load, too.
#pragma once
#include "core/floor/floor_watch.hpp"

#include <span>

namespace bw {

class Stock {
public:
    struct Held {
        int kit = 0;
        int load = -1; // index into the plan; -1: loads are not looked at
        int count = 0;
    };

    // The plan must outlive this. Only this allocates.
    Stock(const FloorPlan& plan, int members);

    void allBack(FloorWatch* watch);
    [[nodiscard]] int free(int kit) const { return free_[kit]; }
    // Could the member take what this need (index into the plan) asks for?
    [[nodiscard]] bool has(int member, int need) const {
        if (byLoad_) return loadFor(member, need) != kShort;
        return free_[plan_.needs[need].kit] >= plan_.needs[need].count;
    }

    // For one set. All of it must be there.
    void take(int member, IndexSpan needs, Ticks now);
    void giveBack(int member, IndexSpan needs, Ticks now);

    // To keep through a group. A need shares what the member keeps of the same kit and load; one
    // that takes any load, so asked after all others, shares all of the same kit.
    [[nodiscard]] bool byLoad() const { return byLoad_; }
    void keep(int member, IndexSpan needs, Ticks now);    // by load: what has a load in mind
    void keepAny(int member, IndexSpan needs, Ticks now); // by load: the rest
    [[nodiscard]] std::span<const Held> kept(int member) const {
        return {kept_.data() + member * most_, static_cast<std::size_t>(keeps_[member])};
    }
    void giveBackKept(int member, Ticks now);
    void forgetKept(int member) { keeps_[member] = 0; }

private:
    static constexpr int kShort = -1, kAny = -2;

    [[nodiscard]] const PlanWish& wishOf(int member, int need) const {
        return plan_.wishes[member * static_cast<int>(plan_.needs.size()) + need];
    }
    [[nodiscard]] int loadFor(int member, int need) const; // index into the plan, kAny or kShort
    [[nodiscard]] int keptOf(int member, int load) const;
    [[nodiscard]] int mostPlentiful(int kit) const;
    void keepUpTo(int member, int kit, int load, int count, Ticks now);
    void takeLoads(int member, IndexSpan needs, Ticks now);
    void takeOne(int member, int kit, int load, int count, Ticks now);
    void move(int member, int kit, int load, int count, Ticks now); // taken; below 0: given back

    const FloorPlan& plan_;
    bool byLoad_;
    int most_ = 1;                   // kinds of kit that a member can have at once
    std::vector<int> free_;          // by kit
    std::vector<int> loads_;         // free, by load
    std::vector<Held> kept_, inSet_; // by member
    std::vector<int> keeps_, takes_; // how many of these, by member
    FloorWatch* watch_ = nullptr;
};

} // namespace bw
