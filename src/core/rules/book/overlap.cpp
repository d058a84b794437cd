// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/book/book.hpp"
#include "core/rules/book/overlap_steps.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>
#include <array>

namespace bw::book {

namespace {
constexpr std::array kTiring{Demand::Grip, Demand::Lumbar, Demand::Overhead, Demand::Impact};

using Groups = std::vector<std::vector<const SlotFact*>>; // of one section, none empty

Groups groupsOf(const Facts& facts, int section) {
    Groups out;
    for (const SlotFact& s : facts.slots) {
        if (s.place.section != section) continue;
        if (s.place.slot == 0) out.emplace_back();
        out.back().push_back(&s);
    }
    return out;
}

// A pair's way back is its way there, and members who start in the middle come from the last group
// to the first.
std::vector<Step> stepsOf(const Section& section, const Groups& groups) {
    std::vector<Step> out;
    for (const auto& slots : groups) {
        for (std::size_t i = 0; i + 1 < slots.size(); ++i)
            out.push_back({slots[i], slots[i + 1], Next::InRound});
        if (slots.size() > 2 && slots[0]->group->rounds.hi() > 1)
            out.push_back({slots.back(), slots.front(), Next::RoundAgain});
    }
    for (std::size_t g = 0; g + 1 < groups.size(); ++g)
        out.push_back({groups[g].back(), groups[g + 1].front(), Next::NextGroup});
    if (groups.size() > 1 && !std::holds_alternative<StartTogether>(section.start))
        out.push_back({groups.back().back(), groups.front().front(), Next::NextGroup});
    return out;
}

} // namespace

std::vector<Demand> sharedDemands(const Exercise& a, const Exercise& b, double level) {
    std::vector<Demand> out;
    for (const Demand d : kTiring)
        if (a.demands[d] >= level && b.demands[d] >= level) out.push_back(d);
    return out;
}

std::vector<Step> overlapSteps(const Facts& facts) {
    std::vector<Step> out;
    for (int s = 0; s < static_cast<int>(facts.block.sections.size()); ++s) {
        const Section& section = facts.block.sections[static_cast<std::size_t>(s)];
        for (const Step& step : stepsOf(section, groupsOf(facts, s))) {
            const auto same = [&](const Step& o) {
                return std::minmax(o.from, o.to) == std::minmax(step.from, step.to);
            };
            if (std::none_of(out.begin(), out.end(), same)) out.push_back(step);
        }
    }
    return out;
}

namespace {
Message textFor(const Facts& facts, const Step& step, const std::vector<Demand>& demands) {
    std::vector<std::string> words;
    words.reserve(demands.size());
    for (const Demand d : demands) words.emplace_back(wordOf(d));
    const std::vector<std::string> args{slotLabel(facts.block, *step.from),
                                        slotLabel(facts.block, *step.to), listText(words)};
    switch (step.how) {
    case Next::InRound:
        return {"%1 and %2 follow each other and both ask a lot of %3: that may give out before "
                "the muscles that are meant.",
                args};
    case Next::RoundAgain:
        return {"After %1 the round begins again with %2, and both ask a lot of %3.", args};
    case Next::NextGroup: break;
    }
    return {"From %1 the class goes on to %2, and both ask a lot of %3.", args};
}

// An exercise of the same main pattern that spares what the two share.
std::vector<Remedy> remediesFor(const Facts& facts, const Step& step,
                                const std::vector<Demand>& demands, double level) {
    std::vector<Remedy> out;
    for (const SlotFact* slot : {step.to, step.from}) {
        if (slot->slot->locked || slot->slot->main) continue;
        const auto spares = [&](const Exercise& e) {
            return e.patterns.largest() == slot->exercise->patterns.largest() &&
                   std::all_of(demands.begin(), demands.end(),
                               [&](Demand d) { return e.demands[d] < level; });
        };
        for (const Exercise* e : substitutes(facts, *slot, 1, spares))
            out.push_back(useExercise(facts, *slot, *e));
    }
    if (out.empty()) out.push_back(advice({"Put something else between the two", {}}));
    return out;
}

void judgeStep(const Facts& facts, Verdict& verdict, const Step& step) {
    if (!step.from->exercise || !step.to->exercise || step.from == step.to) return;
    const double level = verdict.limit("demand").lo;
    const auto demands = sharedDemands(*step.from->exercise, *step.to->exercise, level);
    if (demands.empty()) return;
    int worst = 0;
    for (const Demand d : demands)
        worst = std::max(worst,
                         std::min(step.from->exercise->demands[d], step.to->exercise->demands[d]));
    Finding& f = verdict.add(step.how == Next::InRound ? Level::Look : Level::Note, step.to->place,
                             worst, "demand", textFor(facts, step, demands));
    f.also = {step.from->place};
    f.about = placeText(facts.block, step.from->place);
    f.remedies = remediesFor(facts, step, demands, level);
}

void judge(const Facts& facts, Verdict& verdict) {
    for (const Step& step : overlapSteps(facts)) judgeStep(facts, verdict, step);
}
} // namespace

Rule overlap() {
    return {"overlap",
            {"Two exercises in a row do not both tire grip, lumbar, overhead or impact.", {}},
            {{"demand",
              atMost(2),
              "",
              commonPractice(),
              {"From which demand on, 1 to 3, both ask a lot. Within a round a coach should look; "
               "across the round's end and from group to group it is only noted.",
               {}}}},
            judge,
            {},
            false};
}

} // namespace bw::book
