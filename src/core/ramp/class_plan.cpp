// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ramp/class_plan.hpp"

#include "core/model/weeks.hpp"

#include <algorithm>
#include <stdexcept>

namespace bw {

namespace {
constexpr int kDaysAWeek = 7;

Range<int> roundsIn(Range<int> rounds, RoundsMode mode) {
    switch (mode) {
    case RoundsMode::Low: return Range<int>(rounds.lo());
    case RoundsMode::High: return Range<int>(rounds.hi());
    case RoundsMode::Open: return rounds;
    }
    return rounds;
}

Date firstOf(Month month) { return Date::of(month.year(), month.month(), 1).value(); }
} // namespace

std::vector<PlanStep> classPlan(const Block& block, Place place) {
    const Slot* slot = slotAt(block, place);
    const Group* group = groupAt(block, place);
    const Section* section = sectionAt(block, place);
    if (!slot || !group || !section) throw std::logic_error("no slot of the block");
    std::vector<PlanStep> out;
    for (const Week week : weeksOf(block)) {
        const StairStep& step = block.step(week);
        std::optional<Rir> rir;
        if (slot->effort)
            rir = std::max(step.rir, slot->effort->lo());
        else if (section->kind == SectionKind::Strength)
            rir = step.rir;
        out.push_back({week, roundsIn(group->rounds, step.rounds), slot->dose, rir, step.intent});
    }
    return out;
}

PlanStep planStep(const Block& block, Place slot, Week week) {
    const std::vector<PlanStep> plan = classPlan(block, slot);
    return plan[std::min(static_cast<std::size_t>(week.index()), plan.size() - 1)];
}

std::optional<Week> weekOfDate(const Block& block, Date date) {
    if (date.month() != block.month) return std::nullopt;
    const auto day = static_cast<int>((date.days() - firstOf(block.month).days()).count());
    const auto weeks = weeksOf(block);
    return weeks[std::min(static_cast<std::size_t>(day / kDaysAWeek), weeks.size() - 1)];
}

DaysOfWeek daysOf(const Block& block, Week week) {
    const Date first = firstOf(block.month), after = firstOf(block.month.plus(1));
    const Date from = std::min(first.plusDays(kDaysAWeek * week.index()), after);
    const bool last = week == weeksOf(block).back();
    return {from, last ? after : std::min(from.plusDays(kDaysAWeek), after)};
}

} // namespace bw
