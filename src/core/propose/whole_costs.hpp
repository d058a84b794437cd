// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules of the whole session add to the penalty, exactly for a filled month, and at least
// for one that is not filled yet.
//
//   form     a number that is linear in the sums; below 0 it is broken
//   matter   something that a rule may find; it costs at least so much when certain forms are all
//            broken
#pragma once
#include "core/propose/near_costs.hpp"
#include "core/propose/sums.hpp"

namespace bw::proposing {

struct Form {
    std::vector<std::pair<int, double>> terms; // index of the sums, factor
    double constant = 0;
};

struct Matter {
    struct Case {
        std::vector<int> broken; // forms
        double cost = 0;
    };
    std::vector<Case> cases;
    double least = 0; // whatever happens
};

// A ratio or a share that is held in a band: see core/rules/book/scales.hpp.
struct ScaleCase {
    std::string_view rule;
    std::vector<int> over, under;
    bool share = false, saysNoOver = false, saysNoUnder = false;
    Level level = Level::Look;
    LimitValue block{}, window{};
    double low = 0, high = 0, note = 0; // costs: of the month at either end, of the window
};

class WholeCosts {
public:
    WholeCosts(const Task& task, const Adder& adder);

    // Of a filled month; the fewest middle reps of the strength slots that had no dose. The rules
    // of the floor are left out.
    [[nodiscard]] double of(const Sums& sums, double fewestReps) const;
    // What the simulated class will add for queueing at kit, at least.
    [[nodiscard]] double queueing(const Sums& sums) const;

    [[nodiscard]] const std::vector<Form>& forms() const { return forms_; }
    [[nodiscard]] const std::vector<Matter>& matters() const { return matters_; }
    // Some level hangs on what else is in the session; the costs here are the least it can be.
    [[nodiscard]] bool unsure() const { return unsure_; }
    [[nodiscard]] double stairCost(double fewestReps) const;
    [[nodiscard]] double fewestReps() const { return fewestReps_; } // of the slots with a dose

private:
    void drawScales();
    void drawScale(const ScaleCase& scale);
    void drawMuscles();
    void drawCounts();
    void drawTimes();
    void drawWaits();
    int form(std::vector<std::pair<int, double>> terms, double constant);
    int above(const std::vector<int>& sums, double unit); // broken when they are above 0
    [[nodiscard]] double levelCost(const ScaleCase& scale, bool more);

    [[nodiscard]] double scaleCost(const ScaleCase& scale, const Sums& sums) const;
    [[nodiscard]] double muscleCost(const Sums& sums) const;
    [[nodiscard]] double countCost(const Sums& sums) const;
    [[nodiscard]] double timeCost(const Sums& sums) const;
    [[nodiscard]] bool openElsewhere(bool hardOnly) const;

    using Lines = std::vector<int>; // indices of the sums, of one kit item

    const Task& task_;
    const Adder& adder_;
    Sums months_;
    int weeks_ = 1, windowWeeks_ = 1;
    std::vector<ScaleCase> scales_;
    std::vector<Form> forms_;
    std::vector<Matter> matters_;
    bool unsure_ = false;
    bool anyOpen_ = false, hardOpen_ = false; // besides the targets
    double fewestReps_;
    std::vector<Lines> queues_;
    double queueLook_ = 0, queueStop_ = 0; // ms that all members wait, together
    Cost session_, section_, family_, muscle_, novelty_, carry_, stair_, queue_;
    LimitValue muscleBand_, fresh_;
    double familyLeast_, carryLeast_, stairMost_;
    std::int64_t classEnd_, nearEnd_; // milliseconds
    Millis slack_;
};

} // namespace bw::proposing
