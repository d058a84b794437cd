// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/whole_costs.hpp"

#include "core/model/weeks.hpp"
#include "core/rules/book/large_muscles.hpp"
#include "core/rules/book/stair_jump.hpp"
#include "core/rules/gym_limit.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace bw::proposing {

namespace {
std::int64_t get(const Sums& sums, int index) { return sums[static_cast<std::size_t>(index)]; }

Ratio ratioOf(const ScaleCase& scale, const Sums& sums, const Sums* more, int weeks) {
    const auto add = [&](const std::vector<int>& indices) {
        double sum = 0;
        for (const int i : indices)
            sum += averageSets(get(sums, i) + (more ? get(*more, i) : 0), weeks);
        return sum;
    };
    return {add(scale.over), add(scale.under)};
}

bool isHard(const SlotFact& s) {
    return s.section->kind == SectionKind::Strength || s.section->kind == SectionKind::Finisher;
}

double fewestOf(const Facts& facts) {
    double fewest = std::numeric_limits<double>::infinity();
    for (const SlotFact& s : facts.slots)
        if (s.section->kind == SectionKind::Strength && s.slot->dose &&
            s.slot->dose->measure() == Measure::Reps)
            fewest = std::min(fewest, s.slot->dose->middle());
    return fewest;
}
} // namespace

WholeCosts::WholeCosts(const Task& task, const Adder& adder)
    : task_(task), adder_(adder), months_(adder.months()), weeks_(weeksAskedFor(*task.block, {})),
      fewestReps_(fewestOf(*task.facts)) {
    const GymSettings& gym = task.gym.settings;
    windowWeeks_ = 0;
    for (const Block* b : windowOf(task.gym, *task.block)) windowWeeks_ += weeksAskedFor(*b, {});
    anyOpen_ = openElsewhere(false);
    hardOpen_ = openElsewhere(true);
    session_ = costOf(gym, "session-length");
    section_ = costOf(gym, "section-length");
    family_ = costOf(gym, "pattern-missing");
    muscle_ = costOf(gym, "muscle-dose");
    novelty_ = costOf(gym, "novelty");
    carry_ = costOf(gym, "carry-over");
    stair_ = costOf(gym, "stair-jump");
    queue_ = costOf(gym, "kit-queue");
    muscleBand_ = limitIn(gym, "muscle-dose", "sets");
    fresh_ = limitIn(gym, "novelty", "new");
    familyLeast_ = limitIn(gym, "pattern-missing", "slots").lo;
    carryLeast_ = limitIn(gym, "carry-over", "lifts").lo;
    stairMost_ = limitIn(gym, "stair-jump", "percent").hi;
    slack_ = toMillis(limitIn(gym, "section-length", "slack_seconds").hi);
    const Millis most = std::chrono::minutes{gym.classMinutes};
    const double share = limitIn(gym, "session-length", "look_share").hi;
    classEnd_ = most.count();
    nearEnd_ = std::llround(static_cast<double>(most.count()) * share);
    drawScales();
    drawMuscles();
    drawCounts();
    drawTimes();
    drawWaits();
}

bool WholeCosts::openElsewhere(bool hardOnly) const {
    const auto& slots = task_.facts->slots;
    return std::any_of(slots.begin(), slots.end(), [&](const SlotFact& s) {
        const auto& t = task_.targets;
        return s.slot->open() && (!hardOnly || isHard(s)) &&
               std::none_of(t.begin(), t.end(),
                            [&](const Target& target) { return target.place == s.place; });
    });
}

double WholeCosts::of(const Sums& sums, double fewestReps) const {
    double sum = muscleCost(sums) + countCost(sums) + timeCost(sums);
    for (const ScaleCase& scale : scales_) sum += scaleCost(scale, sums);
    return sum + stairCost(std::min(fewestReps, fewestReps_));
}

double WholeCosts::scaleCost(const ScaleCase& scale, const Sums& sums) const {
    const Ratio now = ratioOf(scale, sums, nullptr, weeks_);
    const bool noUnder = now.under <= 0 && now.over > 0;
    const bool noOver = !scale.share && now.over <= 0 && now.under > 0;
    if (noUnder || noOver) {
        const bool says = noUnder ? scale.saysNoUnder : scale.saysNoOver;
        const double least = noUnder ? now.over / scale.block.hi : now.under * scale.block.lo;
        if (!says || least <= 0) return 0;
        return noOver ? scale.low : scale.high;
    }
    const auto value = now.value();
    if (value && !holds(scale.block, *value))
        return *value < scale.block.lo ? scale.low : scale.high;
    if (windowWeeks_ <= weeks_) return 0;
    const auto over = ratioOf(scale, sums, &months_, windowWeeks_).value();
    return over && !holds(scale.window, *over) ? scale.note : 0;
}

double WholeCosts::muscleCost(const Sums& sums) const {
    if (get(sums, at::anyMuscle) <= 0) return 0;
    double cost = 0;
    for (std::size_t i = 0; i < book::kLarge.size(); ++i) {
        const double sets = averageSets(get(sums, at::muscle + static_cast<int>(i)), weeks_);
        const auto& [one, other] = book::kLarge[i].patterns;
        const bool trained =
            get(sums, static_cast<int>(one)) + get(sums, static_cast<int>(other)) > 0;
        if (holds(muscleBand_, sets) || !trained) continue;
        cost += sets < muscleBand_.lo && !hardOpen_ ? muscle_.look : muscle_.note;
    }
    return cost;
}

double WholeCosts::countCost(const Sums& sums) const {
    double cost = 0;
    for (int i = at::family; i < at::fresh; ++i)
        if (static_cast<double>(get(sums, i)) < familyLeast_) cost += family_.look;
    if (task_.history->empty()) return cost;
    const auto fresh = static_cast<double>(get(sums, at::fresh));
    if (fresh > fresh_.hi) cost += novelty_.look;
    if (fresh < fresh_.lo && !anyOpen_) cost += novelty_.note;
    const bool few = static_cast<double>(get(sums, at::carried)) < carryLeast_;
    return !adder_.lastMains().empty() && few ? cost + carry_.note : cost;
}

double WholeCosts::timeCost(const Sums& sums) const {
    const Block& block = *task_.block;
    const GymSettings& gym = task_.gym.settings;
    double cost = 0;
    for (std::size_t s = 0; s < block.sections.size(); ++s) {
        const auto& budget = block.sections[s].budget;
        bool missed = false;
        for (std::size_t m = 0; budget && m < adder_.modes().size(); ++m) {
            const Millis planned = roundHalvesUp(ExactTime{get(sums, adder_.timeAt(m, s))});
            missed = missed || planned < budget->lo() - slack_ || planned > budget->hi() + slack_;
        }
        if (missed) cost += section_.look;
    }
    Millis longest{0};
    for (std::size_t m = 0; m < adder_.modes().size(); ++m) {
        ExactTime total = gym.opening + gym.closing;
        for (std::size_t s = 0; s < block.sections.size(); ++s)
            total += ExactTime{get(sums, adder_.timeAt(m, s))};
        longest = std::max(longest, roundHalvesUp(total));
    }
    if (longest.count() > classEnd_) return cost + session_.stop;
    return longest.count() > nearEnd_ ? cost + session_.look : cost;
}

double WholeCosts::queueing(const Sums& sums) const {
    const double least = std::min(queue_.look, queue_.stop);
    double cost = 0;
    for (const Lines& kit : queues_) {
        double worst = 0;
        for (const int at : kit) {
            if (get(sums, at + 1) == 0) continue;
            const auto wait = static_cast<double>(get(sums, at));
            if (wait > queueStop_)
                worst = std::max(worst, queue_.stop);
            else if (wait > queueLook_)
                worst = std::max(worst, least);
        }
        cost += worst;
    }
    return cost;
}

double WholeCosts::stairCost(double fewestReps) const {
    if (std::isinf(fewestReps)) return 0;
    const auto& stair = task_.block->stair;
    double cost = 0;
    for (std::size_t w = 0; w + 1 < stair.size(); ++w)
        if (book::riseOfLoad(fewestReps, stair[w].rir, stair[w + 1].rir) > stairMost_)
            cost += stair_.look;
    return cost;
}

} // namespace bw::proposing
