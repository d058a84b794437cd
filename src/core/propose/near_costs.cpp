// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propose/near_costs.hpp"

#include "blockwright/rules/member_substitute.hpp"
#include "blockwright/rules/work_rest.hpp"
#include "core/rules/book/heavy_first.hpp"
#include "core/rules/book/main_lifts.hpp"
#include "core/rules/book/options.hpp"
#include "core/rules/book/overlap_steps.hpp"
#include "core/rules/book/pairs.hpp"
#include "core/rules/gym_limit.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <cmath>

namespace bw::proposing {

namespace {
const Rule& ruleOf(std::string_view id) {
    return *std::find_if(ruleBook().begin(), ruleBook().end(),
                         [&](const Rule& r) { return r.id == id; });
}

bool isPair(const SlotFact& first) {
    return first.section->kind == SectionKind::Strength && first.group->slots.size() == 2 &&
           first.place.slot == 0;
}

bool ofPairs(std::optional<Format> f) {
    return f == Format::HeavyThenLong || f == Format::Opposed || f == Format::HeavyThenFast;
}
} // namespace

Cost costOf(const GymSettings& gym, std::string_view rule) {
    const Rule& r = ruleOf(rule);
    return {weightIn(gym, r, Level::Stop), weightIn(gym, r, Level::Look),
            weightIn(gym, r, Level::Note)};
}

std::vector<Link> linksOf(const Facts& facts) {
    std::vector<Link> out;
    const SlotFact* all = facts.slots.data();
    for (const book::Step& step : book::overlapSteps(facts)) {
        if (step.from == step.to) continue;
        const bool inRound = step.how == book::Next::InRound;
        out.push_back({static_cast<int>(step.from - all), static_cast<int>(step.to - all),
                       inRound && isPair(*step.from), inRound ? Level::Look : Level::Note});
    }
    return out;
}

NearCosts::NearCosts(const Task& task) : task_(task), before_(book::monthsInARow(*task.facts)) {
    const GymSettings& gym = task.gym.settings;
    powerDose_ = costOf(gym, "power-dose");
    powerFirst_ = costOf(gym, "power-first");
    staleness_ = costOf(gym, "staleness");
    options_ = costOf(gym, "options");
    memberFlag_ = costOf(gym, "member-flag");
    cue_ = costOf(gym, "cue-missing");
    caution_ = costOf(gym, "caution-missing");
    superset_ = costOf(gym, "superset-work");
    heavyFirst_ = costOf(gym, "heavy-first");
    pairing_ = costOf(gym, "pairing");
    overlap_ = costOf(gym, "overlap");
    finisherDose_ = costOf(gym, "finisher-dose");
    powerLook_ = limit("power-dose", "look_reps", true);
    powerStop_ = limit("power-dose", "stop_reps", true);
    warmUpMost_ = limit("power-first", "warm_up_demand", true);
    staleMost_ = limit("staleness", "main_months", true);
    ways_ = limit("options", "ways");
    members_ = limit("member-flag", "members", true);
    cueFewest_ = limit("cue-missing", "fewest");
    cueSkill_ = limit("cue-missing", "skill");
    cautionFewest_ = limit("caution-missing", "fewest");
    cautionSkill_ = limit("caution-missing", "skill");
    secondReps_ = limit("heavy-first", "second_reps");
    relatedShare_ = limit("pairing", "related_share");
    overlapLevel_ = limit("overlap", "demand");
    tableShare_ = limit("finisher-dose", "table_share");
    allOutSeconds_ = limit("finisher-dose", "work_seconds", true);
    allOutBreath_ = limit("finisher-dose", "breath");
    supersetSeconds_ = limitIn(gym, "superset-work", "seconds");
}

double NearCosts::limit(std::string_view rule, std::string_view name, bool high) const {
    const LimitValue value = limitIn(task_.gym.settings, rule, name);
    return high ? value.hi : value.lo;
}

double NearCosts::power(const SlotFact& slot) const {
    const auto& dose = slot.slot->dose;
    if (!dose || dose->measure() != Measure::Reps) return 0;
    const double perSide = dose->hi() / (slot.exercise->sides == Sides::Alternating ? 2.0 : 1.0);
    if (perSide > powerStop_) return powerDose_.stop;
    return perSide > powerLook_ ? powerDose_.look : 0;
}

double NearCosts::warmUp(const Exercise& e) const {
    const int worst = std::max(
        {0, e.demands[Demand::Grip], e.demands[Demand::Lumbar], e.demands[Demand::Overhead]});
    return worst > warmUpMost_ ? powerFirst_.look : 0;
}

double NearCosts::care(const Exercise& e) const {
    const History& history = *task_.history;
    const bool fresh = !history.empty() && !history.knows(e.id);
    double sum = 0;
    if ((fresh || e.skill >= cueSkill_) && static_cast<double>(e.cues.size()) < cueFewest_)
        sum += cue_.note;
    if ((fresh || e.skill >= cautionSkill_) &&
        static_cast<double>(e.cautions.size()) < cautionFewest_)
        sum += caution_.look;
    return sum;
}

double NearCosts::stale(const Exercise& e) const {
    if (before_.empty()) return 0;
    const auto end = std::find_if_not(before_.begin(), before_.end(),
                                      [&](const Block* b) { return book::isMainIn(*b, e.id); });
    const auto months = 1 + static_cast<int>(end - before_.begin());
    return months > staleMost_ && months >= 2 ? staleness_.look : 0;
}

double NearCosts::flags(const Exercise& e) const {
    const auto& members = task_.gym.members;
    const auto met = std::count_if(members.begin(), members.end(), [&](const Member& m) {
        return m.active && flagAgainst(m, e) != nullptr;
    });
    return static_cast<double>(met) > members_ ? memberFlag_.note : 0;
}

double NearCosts::alone(const SlotFact& slot) const {
    const Exercise& e = *slot.exercise;
    const SectionKind kind = slot.section->kind;
    double sum = care(e) + flags(e);
    if (kind == SectionKind::Power) sum += power(slot);
    if (kind == SectionKind::WarmUp) sum += warmUp(e);
    if (slot.slot->main) sum += stale(e);
    const bool hard = kind == SectionKind::Strength || kind == SectionKind::Finisher;
    if (hard && book::waysOpen(task_.gym.shelf, e) < ways_) sum += options_.note;
    return sum;
}

double NearCosts::pair(const SlotFact& first, const SlotFact& second) const {
    if (!first.slot->dose || !second.slot->dose) return 0;
    const auto format = task_.block->format;
    double sum = 0;
    if (!holds(supersetSeconds_, inSeconds(first.work.middle + second.work.middle)))
        sum += superset_.look;
    if (ofPairs(format) &&
        !book::fitsFormat(*format, *first.exercise, *second.exercise, relatedShare_))
        sum += pairing_.look;
    if (format != Format::HeavyThenLong) return sum;
    const auto faults = book::heavyFaults(first, second, secondReps_);
    return sum + (faults.order ? heavyFirst_.look : 0) +
           (faults.shortSecond ? heavyFirst_.look : 0);
}

double NearCosts::together(const Link& link, const SlotFact& from, const SlotFact& to) const {
    double sum = link.pair ? pair(from, to) : 0;
    const bool tire =
        link.overlap && !book::sharedDemands(*from.exercise, *to.exercise, overlapLevel_).empty();
    if (tire) sum += *link.overlap == Level::Look ? overlap_.look : overlap_.note;
    return sum;
}

bool NearCosts::allOut(const SlotFact& s) const {
    return s.exercise->demands[Demand::Breath] >= allOutBreath_ && s.work.middle > Millis{0} &&
           inSeconds(s.work.middle) <= allOutSeconds_;
}

double NearCosts::finisher(const std::vector<const SlotFact*>& group) const {
    if (group.empty() || group.front()->group->rounds.hi() <= 1) return 0;
    double sum = 0;
    for (const SlotFact* slot : group) {
        const auto table = allOut(*slot) ? restAfter(slot->work.middle) : std::nullopt;
        if (!table) continue;
        const Millis wanted{std::llround(static_cast<double>(table->lo().count()) * tableShare_)};
        Millis has = (slot->group->rest.lo() + slot->group->rest.hi()) / 2;
        for (const SlotFact* s : group) {
            has += s->exercise->setup;
            if (s != slot && !allOut(*s)) has += s->work.middle;
        }
        if (has < wanted) sum += finisherDose_.note;
    }
    return sum;
}

} // namespace bw::proposing
