// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/shorthand.hpp"
#include "core/rules/book/book.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw::book {

namespace {
std::string budgetText(Range<Millis> budget) {
    if (budget.single()) return clockText(budget.lo());
    return clockText(budget.lo()) + "–" + clockText(budget.hi());
}

bool hasOpenSlot(const Section& section) {
    return std::any_of(section.groups.begin(), section.groups.end(), [](const Group& g) {
        return std::any_of(g.slots.begin(), g.slots.end(), [](const Slot& s) { return s.open(); });
    });
}

Message outside(const Section& section, Millis planned) {
    const Range<Millis> budget = *section.budget;
    const std::string kind = kindLabel(section);
    if (planned > budget.hi())
        return {"The %1 section is planned at %2, %3 over its budget of %4.",
                {kind, clockText(planned), clockText(planned - budget.hi()), budgetText(budget)}};
    if (hasOpenSlot(section))
        return {
            "The %1 section is planned at %2, %3 under its budget of %4; its open slots take no "
            "time yet.",
            {kind, clockText(planned), clockText(budget.lo() - planned), budgetText(budget)}};
    return {"The %1 section is planned at %2, %3 under its budget of %4.",
            {kind, clockText(planned), clockText(budget.lo() - planned), budgetText(budget)}};
}

// Moves the end of the budget that is missed to the next half minute beyond the plan.
Remedy fitBudget(const Section& section, Place place, Millis planned) {
    constexpr std::int64_t kHalfMinute = 30'000;
    const std::int64_t down = planned.count() / kHalfMinute * kHalfMinute;
    const std::int64_t up = (planned.count() + kHalfMinute - 1) / kHalfMinute * kHalfMinute;
    const auto budget = Range<Millis>::between(std::min(section.budget->lo(), Millis{down}),
                                               std::max(section.budget->hi(), Millis{up}));
    return {{"Give the %1 section a budget of %2", {kindLabel(section), budgetText(budget)}},
            [place, budget](Block& b) {
                if (Section* s = sectionAt(b, place)) s->budget = budget;
            }};
}

std::vector<Remedy> remediesFor(const Facts& facts, Place place, Millis planned) {
    const Section& section = *sectionAt(facts.block, place);
    std::vector<Remedy> out;
    if (planned > section.budget->hi())
        out = shorten(facts, place.section);
    else if (auto more = addRound(facts, place.section, section.budget->hi()))
        out.push_back(std::move(*more));
    out.push_back(fitBudget(section, place, planned));
    return out;
}

void judge(const Facts& facts, Verdict& verdict) {
    const Millis slack = toMillis(verdict.limit("slack_seconds").hi);
    for (int s = 0; s < static_cast<int>(facts.block.sections.size()); ++s) {
        const Section& section = facts.block.sections[static_cast<std::size_t>(s)];
        if (!section.budget) continue;
        const auto& time = facts.time.sections[static_cast<std::size_t>(s)];
        const Millis planned = roundHalvesUp(time.total.planned);
        const Range<Millis> budget = *section.budget;
        if (planned >= budget.lo() - slack && planned <= budget.hi() + slack) continue;
        Finding& f = verdict.add(Level::Look, {s}, inSeconds(planned), "slack_seconds",
                                 outside(section, planned));
        f.limit = within(inSeconds(budget.lo()), inSeconds(budget.hi()));
        f.basis = thisGymsSetting();
        f.remedies = remediesFor(facts, {s}, planned);
    }
}
} // namespace

Rule sectionLength() {
    return {"section-length",
            {"Each section as planned, talk included, keeps to its budget of time.", {}},
            {{"slack_seconds",
              atMost(0),
              "s",
              thisGymsSetting(),
              {"How far outside its budget a section may be before a coach should look.", {}}}},
            judge};
}

} // namespace bw::book
