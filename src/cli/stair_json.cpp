// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/ledger_json.hpp"
#include "cli/stair_report.hpp"

namespace bw::cli {

namespace {
Json orNull(const std::optional<double>& value) {
    return value ? thousandths(*value) : Json(nullptr);
}

Json weekJson(const Block& block, const SessionWeek& w) {
    const StairStep& step = block.step(w.week);
    return {{"week", w.week.number()},
            {"rounds", wordOf(step.rounds)},
            {"rir", number(step.rir.reps())},
            {"intent", wordOf(step.intent)},
            {"days", w.days},
            {"visits", w.visits},
            {"minutes", thousandths(w.minutes)},
            {"rpe", thousandths(w.rpe)},
            {"load", thousandths(w.load.total)},
            {"monotony", orNull(w.load.monotony)},
            {"strain", orNull(w.load.strain)}};
}

Json weeksJson(const Block& block, const std::vector<SessionWeek>& weeks) {
    Json out = Json::array();
    for (const SessionWeek& w : weeks) out.push_back(weekJson(block, w));
    return out;
}

Json planJson(const PlanStep& step) {
    Json out{{"week", step.week.number()},
             {"rounds", {step.rounds.lo(), step.rounds.hi()}},
             {"rir", step.rir ? number(step.rir->reps()) : Json(nullptr)},
             {"intent", wordOf(step.intent)}};
    if (step.dose)
        out[std::string(wordOf(step.dose->measure()))] = {number(step.dose->lo()),
                                                          number(step.dose->hi())};
    return out;
}

Json classSlots(const Block& block) {
    Json out = Json::array();
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const auto& groups = block.sections[static_cast<std::size_t>(s)].groups;
        for (int g = 0; g < static_cast<int>(groups.size()); ++g)
            for (int n = 0; n < static_cast<int>(groups[static_cast<std::size_t>(g)].slots.size());
                 ++n) {
                const Place place{s, g, n};
                const Slot& slot = *slotAt(block, place);
                Json weeks = Json::array();
                for (const PlanStep& step : classPlan(block, place))
                    weeks.push_back(planJson(step));
                out.push_back({{"place", placeText(block, place)},
                               {"exercise", slot.exercise ? Json(slot.exercise->text()) : nullptr},
                               {"weeks", std::move(weeks)}});
            }
    }
    return out;
}

Json slotJson(const Gym& gym, const Block& block, const SlotTargets& t, const LedgerRules& rules) {
    Json weeks = Json::array();
    for (const WeekTarget& w : t.weeks) {
        Json week = planJson(w.plan);
        week["target"] = targetJson(w.target, rules.unit);
        weeks.push_back(std::move(week));
    }
    Json out{{"place", placeText(block, t.place)},
             {"exercise", t.exercise ? Json(t.exercise->id.text()) : Json(nullptr)}};
    if (t.instead) {
        out["instead_of"] = slotAt(block, t.place)->exercise->text();
        out["why_instead"] = t.instead->text.english();
    }
    out["estimate"] = estimateJson(t.estimate, rules, gym.shelf);
    out["last"] = topSetJson(t.last);
    out["weeks"] = std::move(weeks);
    return out;
}
} // namespace

Json stairJson(const Gym& gym, const Block& block, const MemberStair* member) {
    Json caveats = Json::array();
    for (const Message& m : loadCaveats(block)) caveats.push_back(m.english());
    Json out{{"month", block.month.text()}};
    if (member) {
        out["member"] = member->member.id.text();
        out["on"] = member->ledger.on().text();
    }
    out["weeks"] = weeksJson(block, plannedLoads(gym, block));
    if (member) out["done"] = weeksJson(block, member->weeks);
    if (!member) {
        out["slots"] = classSlots(block);
    } else {
        out["slots"] = Json::array();
        for (const SlotTargets& t : member->slots)
            out["slots"].push_back(slotJson(gym, block, t, member->ledger.rules()));
    }
    out["load_caveats"] = std::move(caveats);
    return out;
}

} // namespace bw::cli
