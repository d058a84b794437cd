// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/month_news.hpp"

#include <algorithm>
#include <functional>
#include <set>

namespace bw {

namespace {
void eachUse(const Block& block, const std::function<void(const Slot&, Place)>& visit) {
    for (int s = 0; s < static_cast<int>(block.sections.size()); ++s) {
        const Section& section = *sectionAt(block, {s});
        for (int g = 0; g < static_cast<int>(section.groups.size()); ++g) {
            const Group& group = *groupAt(block, {s, g});
            for (int i = 0; i < static_cast<int>(group.slots.size()); ++i)
                if (const Slot& slot = *slotAt(block, {s, g, i}); slot.exercise)
                    visit(slot, {s, g, i});
        }
    }
}

std::set<ExerciseId> usesOf(const Block& block, bool mainOnly = false) {
    std::set<ExerciseId> uses;
    eachUse(block, [&](const Slot& slot, Place) {
        if (slot.main || !mainOnly) uses.insert(*slot.exercise);
    });
    return uses;
}

// Months before the block, the latest first.
std::vector<Gym::BlockPtr> before(const Gym& gym, Month month) {
    std::vector<Gym::BlockPtr> out;
    for (auto it = gym.blocks.lower_bound(month); it != gym.blocks.begin();)
        out.push_back((--it)->second);
    return out;
}

int mainStreak(const std::vector<Gym::BlockPtr>& past, Month month, const ExerciseId& id) {
    int streak = 1;
    for (const auto& block : past) {
        if (month.monthsSince(block->month) != streak || !usesOf(*block, true).contains(id)) break;
        ++streak;
    }
    return streak;
}

void compare(NewsLine& line, const std::vector<Gym::BlockPtr>& past) {
    for (const auto& block : past)
        if (usesOf(*block).contains(line.exercise)) {
            line.changed = block != past.front();
            if (line.changed) line.since = block->month;
            return;
        }
    line.changed = line.fresh = !past.empty();
}
} // namespace

MonthNews monthNews(const Gym& gym, const Block& block) {
    const auto past = before(gym, block.month);
    const auto here = usesOf(block), mains = usesOf(block, true);
    MonthNews news;
    std::set<ExerciseId> told;
    eachUse(block, [&](const Slot& slot, Place place) {
        const ExerciseId& id = *slot.exercise;
        if (!told.insert(id).second) return;
        NewsLine line{id, place, false, false, 0, {}};
        if (mains.contains(id)) line.mainStreak = mainStreak(past, block.month, id);
        compare(line, past);
        news.lines.push_back(std::move(line));
    });
    if (past.empty()) return news;
    const Block& last = *past.front();
    news.previous = last.month;
    news.formatChanged = last.format != block.format;
    std::set<ExerciseId> left;
    eachUse(last, [&](const Slot& slot, Place) {
        if (!here.contains(*slot.exercise) && left.insert(*slot.exercise).second)
            news.gone.push_back(*slot.exercise);
    });
    return news;
}

} // namespace bw
