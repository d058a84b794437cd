// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/floor_search.hpp"

#include "blockwright/model/fitting.hpp"
#include "blockwright/model/shorthand.hpp"
#include "core/floor/served.hpp"
#include "core/rules/alike.hpp"
#include "core/rules/gym_limit.hpp"
#include "core/rules/remedies.hpp"
#include "core/rules/substitutes.hpp"
#include "core/rules/wording.hpp"

#include <algorithm>

namespace bw {

namespace {
constexpr std::size_t kMostQueues = 3, kMostSwaps = 3;
constexpr MeanTime kQueue{15'000}; // when the class runs over, a shorter one is none

// With all kit at hand.
bool firstTakes(const Gym& gym, const Exercise& e, const KitId& kit) {
    const auto first =
        std::ranges::find_if(e.needs, [&](const auto& one) { return served(gym, one); });
    return first != e.needs.end() &&
           std::ranges::any_of(*first, [&](const KitNeed& n) { return n.kit == kit; });
}

std::vector<KitId> queuesOf(const FloorWeek& week, const FloorSearch& search) {
    const bool over = week.answer->overrunChance > search.overrunChance;
    std::vector<const FloorKitUse*> longest;
    for (const FloorKitUse& use : week.answer->kit)
        if (use.wait.mean > search.wait || (over && use.wait.mean >= kQueue))
            longest.push_back(&use);
    std::ranges::stable_sort(longest, std::greater{},
                             [](const FloorKitUse* use) { return use->wait.mean; });
    if (longest.size() > kMostQueues) longest.resize(kMostQueues);
    std::vector<KitId> out;
    out.reserve(longest.size());
    for (const FloorKitUse* use : longest) out.push_back(use->kit);
    return out;
}

class Ideas {
public:
    explicit Ideas(const Facts& facts) : facts_(facts) {}

    void forQueue(const KitId& kit) {
        for (const SlotFact& slot : facts_.slots) {
            if (!slot.exercise || !mayTake(facts_.gym, *slot.exercise, kit)) continue;
            if (!slot.slot->locked) swapFor(slot, kit);
            const Place group{slot.place.section, slot.place.group};
            roundLess(group);
            elsewhere(group);
        }
    }
    void roundLessAnywhere() {
        for (const SlotFact& slot : facts_.slots)
            if (slot.place.slot == 0) roundLess({slot.place.section, slot.place.group});
    }
    std::vector<FloorIdea> take() { return std::move(ideas_); }

private:
    void swapFor(const SlotFact& slot, const KitId& kit) {
        const auto other = [&](const Exercise& e) {
            return standsFor(e, *slot.exercise) && !firstTakes(facts_.gym, e, kit);
        };
        for (const Exercise* e : substitutes(facts_, slot, kMostSwaps, other))
            ideas_.push_back(
                {{"Use %1 instead of %2: saves %3", {e->name, slotLabel(facts_.block, slot)}},
                 {"Use %1 instead of %2: %3 less waiting for each",
                  {e->name, slotLabel(facts_.block, slot)}},
                 slot.place,
                 useExercise(facts_, slot, *e).action});
    }

    void roundLess(Place group) {
        const Range<int> now = groupAt(facts_.block, group)->rounds;
        const auto then = fewerRounds(now, facts_.block.step(facts_.week).rounds);
        if (!then) return;
        const std::vector<std::string> args{groupLetter(facts_.block, group), roundsText(now),
                                            roundsText(*then)};
        ideas_.push_back(
            {{"Cut the rounds of group %1 from %2 to %3: saves %4", args},
             {"Cut the rounds of group %1 from %2 to %3: %4 less waiting for each", args},
             group,
             setRounds(group, *then)});
    }

    void elsewhere(Place group) {
        const int groups = static_cast<int>(sectionAt(facts_.block, group)->groups.size());
        for (int to = 0; to < groups; ++to) {
            if (to == group.group) continue;
            const std::vector<std::string> args{groupLetter(facts_.block, group),
                                                groupLetter(facts_.block, {group.section, to})};
            if (to < group.group)
                ideas_.push_back({{"Move group %1 before %2: saves %3", args},
                                  {"Move group %1 before %2: %3 less waiting for each", args},
                                  group,
                                  moveGroup(group, to)});
            else
                ideas_.push_back({{"Move group %1 behind %2: saves %3", args},
                                  {"Move group %1 behind %2: %3 less waiting for each", args},
                                  group,
                                  moveGroup(group, to)});
        }
    }

    const Facts& facts_;
    std::vector<FloorIdea> ideas_;
};

std::vector<FloorIdea> ideasFor(const Gym& gym, const Block& block, const FloorWeek& week,
                                const FloorSearch& search) {
    const History history(gym, block.month);
    const Facts facts = Facts::of(gym, block, history, week.week);
    Ideas ideas(facts);
    for (const KitId& kit : queuesOf(week, search)) ideas.forQueue(kit);
    if (week.answer->overrunChance > search.overrunChance) ideas.roundLessAnywhere();
    return ideas.take();
}
} // namespace

FloorSearch floorSearch(const Gym& gym, const Block& block) {
    const auto limit = [&](std::string_view rule, std::string_view name) {
        return limitIn(gym.settings, rule, name).hi;
    };
    FloorSearch search{.wait = MeanTime{limit("kit-queue", "look_seconds") * 1000},
                       .overrunChance = limit("overrun-chance", "look_share"),
                       .ideas = {}};
    search.ideas = [&gym, &block, plain = search](const FloorWeek& week) {
        return ideasFor(gym, block, week, plain);
    };
    return search;
}

} // namespace bw
