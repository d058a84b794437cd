// SPDX-License-Identifier: GPL-3.0-or-later
// A task made ready for the search: for each target its choices with all that they cost, alone, two
// by two, and together. Exercises that no rule can tell apart in a target are one choice.
#pragma once
#include "core/propose/whole_costs.hpp"

#include <memory>
#include <optional>

namespace bw::proposing {

struct Choice {
    std::vector<const Exercise*> members;   // alike in this target; never none
    std::shared_ptr<const Filling> filling; // with the first of them
    double alone = 0;
    double reps = 0; // middle, when the stair's heaviest set may hang on it; else infinite
    Sums sums;
    std::vector<double> forms; // what it adds to each of the model's forms
};

struct Seat { // of a target
    Place place;
    std::vector<Choice> choices; // by what they cost alone
};

// Of two seats that some rule looks at together.
struct PairTable {
    int a = 0, b = 0; // a < b
    std::size_t width = 0;
    std::vector<double> cost;
    [[nodiscard]] double at(int i, int j) const {
        return cost[static_cast<std::size_t>(i) * width + static_cast<std::size_t>(j)];
    }
};

using Picks = std::vector<int>;            // a choice for each seat
using Cast = std::vector<const Exercise*>; // an exercise for each seat

class Model {
public:
    explicit Model(std::shared_ptr<const Task> task);
    Model(const Model&) = delete;
    Model& operator=(const Model&) = delete;

    [[nodiscard]] const Task& task() const { return *task_; }
    [[nodiscard]] const std::vector<Seat>& seats() const { return seats_; }
    [[nodiscard]] int size() const { return static_cast<int>(seats_.size()); }
    [[nodiscard]] const std::vector<PairTable>& pairs() const { return pairs_; }
    [[nodiscard]] const PairTable* pairOf(int a, int b) const; // null: no rule does
    [[nodiscard]] const std::vector<Form>& forms() const { return forms_; }
    [[nodiscard]] const std::vector<Matter>& matters() const { return matters_; }
    [[nodiscard]] double formStart(std::size_t form) const { return formStarts_[form]; }
    [[nodiscard]] double fixed() const { return fixed_; } // whatever is chosen, matters left out
    [[nodiscard]] double grain() const { return grain_; } // penalties are multiples; 0: not known

    // What check() says of the filled month, or less when it is unsure; with queueing().
    [[nodiscard]] double penalty(const Picks& picks, Sums& room) const; // room to add up in
    [[nodiscard]] bool unsure() const { return unsure_; }
    // The penalty as check() says it, and what the class will add at least for queueing.
    [[nodiscard]] double checked(const Cast& cast) const;
    [[nodiscard]] double queueing(const Cast& cast) const;
    [[nodiscard]] Block filled(const Cast& cast) const;

private:
    struct LateGroup {                      // of a finisher: judged when all is chosen
        std::vector<const SlotFact*> slots; // null where a seat comes in
        std::vector<int> seats;
    };
    struct Raw;
    void settleFixed();
    void findTables(std::vector<Raw>& raw);
    void findLateGroups();
    void joinAlike(std::vector<Raw>& raw);
    void keepLiveForms(std::vector<Raw>& raw);
    [[nodiscard]] double leastStair(const std::vector<Raw>& raw) const;
    [[nodiscard]] double lateCost(const Picks& picks) const;
    [[nodiscard]] int seatOf(const SlotFact& slot) const; // -1: none
    void findGrain();

    std::shared_ptr<const Task> task_;
    Adder adder_;
    NearCosts near_;
    WholeCosts whole_;
    std::vector<Seat> seats_;
    std::vector<PairTable> pairs_;
    std::vector<LateGroup> late_;
    std::vector<Form> forms_;
    std::vector<Matter> matters_;
    std::vector<double> formStarts_;
    double fixed_ = 0, grain_ = 0;
    bool unsure_ = false;
};

// The part of the penalty that no target changes, and whether the rest can be worked out here.
struct Standing {
    double cost = 0;
    double least = 0; // what acceptances may take off at most; not above 0
    bool unsure = false;
};
[[nodiscard]] Standing standingOf(const Task& task, const Block& filled);

} // namespace bw::proposing
