// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/target.hpp"

#include "blockwright/ledger/mass_text.hpp"
#include "blockwright/model/fitting.hpp"
#include "core/ledger/load_target.hpp"

#include <algorithm>
#include <set>

namespace bw {

namespace {
bool byEffort(const PlanStep& step) {
    return step.rir && step.dose && step.dose->measure() == Measure::Reps;
}

int highReps(const PlanStep& step) { return static_cast<int>(step.dose->amount().hi()); }

Target findTarget(const PlanStep& step, bool first) {
    const std::vector<std::string> args{std::to_string(step.dose->amount().hi()),
                                        rirText(step.rir->reps())};
    if (first)
        return {
            Aim::Find, {}, {}, {"Find it: the load for %1 repetitions with %2 in reserve.", args}};
    return {
        Aim::Follow, {}, {}, {"From what week 1 finds: %1 repetitions with %2 in reserve.", args}};
}

// Week after week, each held to the one before it.
class Climber {
public:
    Climber(const TargetCase& c, const Block& block) : case_(c) {
        if (c.last) done_ = weekOfDate(block, c.last->date);
    }
    Target next(const PlanStep& step) {
        const int reps = highReps(step);
        const double n = repsOf(case_.exercise, reps, *step.rir);
        if (n > kMostReps) return asLast(case_);
        if (done_ && step.week.number() == done_->number() + 1 && case_.last->load)
            before_ = {case_.last->load->kg(), true};
        else if (!before_ || (done_ && step.week <= *done_))
            before_ = carriedOver(case_, n);
        Target target = loadTarget(case_, reps, *step.rir, before_);
        before_ = {target.loading->total.kg(), true};
        return target;
    }

private:
    const TargetCase& case_;
    std::optional<Week> done_; // of this month, the last with a result
    std::optional<Before> before_;
};

std::vector<WeekTarget> weekTargets(const TargetCase& c, const Block& block,
                                    const std::vector<PlanStep>& plan) {
    Climber climber(c, block);
    std::vector<WeekTarget> out;
    for (const PlanStep& step : plan) {
        Target target = bodyOnly(c)       ? bodyTarget(c, step.dose)
                        : !byEffort(step) ? asLast(c)
                        : c.estimate      ? climber.next(step)
                                          : findTarget(step, out.empty());
        out.push_back({step, std::move(target)});
    }
    return out;
}
} // namespace

MonthTargets::MonthTargets(const Gym& gym, const Block& block)
    : gym_(gym), block_(block), history_(gym, block.month),
      facts_(Facts::of(gym, block, history_, Week::first())) {
    for (const SlotFact& slot : facts_.slots) plans_.push_back(classPlan(block, slot.place));
}

const Loadings& MonthTargets::loadings(const Exercise& exercise) {
    const auto it = loadings_.find(exercise.id);
    if (it != loadings_.end()) return it->second;
    return loadings_.emplace(exercise.id, Loadings(gym_, exercise)).first->second;
}

std::vector<SlotTargets> MonthTargets::of(const Ledger& ledger, const Member& member) {
    std::vector<SlotTargets> out;
    for (std::size_t i = 0; i < facts_.slots.size(); ++i) {
        const SlotFact& slot = facts_.slots[i];
        if (!slot.exercise) continue;
        SlotTargets t;
        t.place = slot.place;
        t.instead = memberSubstitute(facts_, slot, member);
        t.exercise = t.instead ? t.instead->substitute : slot.exercise;
        if (t.exercise) {
            t.estimate = ledger.estimate(member.id, t.exercise->id);
            t.last = ledger.last(member.id, t.exercise->id);
            auto plan = plans_[i];
            if (t.instead)
                for (PlanStep& step : plan)
                    step.dose = fittingDose(*slot.slot, *t.exercise, slot.section->kind);
            t.weeks = weekTargets({gym_, ledger.rules(), *t.exercise, loadings(*t.exercise),
                                   &member, t.estimate, t.last},
                                  block_, plan);
        }
        out.push_back(std::move(t));
    }
    return out;
}

std::vector<ExerciseId> MonthTargets::exercises() const {
    std::set<ExerciseId> ids;
    for (const SlotFact& slot : facts_.slots)
        if (slot.exercise) ids.insert(slot.exercise->id);
    for (const MemberSubstitute& s : memberSubstitutes(facts_))
        if (s.substitute) ids.insert(s.substitute->id);
    const std::set<ExerciseId> asked = ids;
    for (const auto& [pair, ratio] : LedgerRules::of(gym_.settings).ratios) {
        if (asked.contains(pair.first)) ids.insert(pair.second);
        if (asked.contains(pair.second)) ids.insert(pair.first);
    }
    return {ids.begin(), ids.end()};
}

std::optional<Target> nextTime(const Gym& gym, const Ledger& ledger, const Member& member,
                               const Exercise& exercise) {
    const auto last = ledger.last(member.id, exercise.id);
    if (!last) return std::nullopt;
    const auto estimate = ledger.estimate(member.id, exercise.id);
    const Loadings loadings(gym, exercise);
    const TargetCase c{gym, ledger.rules(), exercise, loadings, &member, estimate, last};
    if (bodyOnly(c)) return bodyTarget(c, {});
    const Rir two = Rir::fromTenths(20).value();
    const double n = repsOf(exercise, last->reps, two);
    if (!estimate || last->reps < 1 || n > kMostReps) return asLast(c);
    return loadTarget(c, last->reps, two, carriedOver(c, n));
}

} // namespace bw
