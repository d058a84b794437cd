// SPDX-License-Identifier: GPL-3.0-or-later
// Plays one section of a class: from the instant at which all members start (time 0) until the last
// of them is through. A section neither knows nor cares what was before: all kit is back, nobody
// waits.
#pragma once
#include "core/floor/class_record.hpp"
#include "core/floor/event_tree.hpp"
#include "core/floor/steps.hpp"
#include "core/floor/stock.hpp"

namespace bw {

class SectionRun {
public:
    // For as many sections as wished, one after the other; playing allocates nothing.
    SectionRun(const FloorPlan& plan, int members);

    // Adds waits, rounds and busy time to the record; gives the time at which the last member is
    // through.
    Ticks play(int section, const std::vector<int>& starts, const FloorSteps& steps,
               ClassRecord& record, FloorWatch* watch = nullptr);

private:
    enum class Next { Enter, Set, AfterSet };
    struct Person {
        Next next{};
        int visits = 0; // groups of the section left behind
        int group = 0;  // index into the plan, as slot
        int slot = 0;
        int round = 0;       // rounds done in the group
        int alternative = 0; // of the set that goes on
        int blamed = 0;
        const Ticks* step = nullptr; // how long the next set, or the rest, will take
        Ticks entered = 0, roundStart = 0, since = 0;
    };
    using Line = std::vector<int>; // members, by arrival, then by number

    void begin(int section, const std::vector<int>& starts);
    void turn(int m);
    void giveBack(int m);

    void askEntry(int m);
    [[nodiscard]] int slotWithoutKit(int m); // and notes what is chosen; kNothing: all found some
    void enter(int m);
    void leave(int m);
    void askSet(int m);
    [[nodiscard]] int choose(int m); // an alternative, kNothing or kMustWait
    void startSet(int m, int alternative);
    void endRound(int m);
    void goOn(int m, Ticks rest);
    [[nodiscard]] bool another(const Person& p, Ticks rest) const;

    [[nodiscard]] bool isFree(int m, IndexSpan needs) const;
    void join(Line& line, int m, int slot, IndexSpan lacking);
    void served(int m, int slot);
    void walkSets(IndexSpan back);
    void walkEntries(std::span<const Stock::Held> back);
    static void closeUp(Line& line, std::size_t kept, std::size_t next);
    [[nodiscard]] int& chosen(int m, int slot); // of a slot chosen on entry: the alternative

    static constexpr int kNothing = -1, kMustWait = -2;

    const FloorPlan& plan_;
    int members_;
    int widest_ = 1; // slots in a group
    int most_ = 1;   // needs of all alternatives of a group
    EventTree events_;
    std::vector<Person> people_;
    Stock stock_;
    std::vector<int> chosen_; // by member, then slot within the group
    std::vector<int> blame_;  // by member: the kit that was short
    Line sets_, entries_;

    // Of the section that is played.
    const PlanSection* section_ = nullptr;
    const FloorSteps* steps_ = nullptr;
    ClassRecord* record_ = nullptr;
    FloorWatch* watch_ = nullptr;
    Ticks now_ = 0;
    int left_ = 0; // members not yet through
};

} // namespace bw
