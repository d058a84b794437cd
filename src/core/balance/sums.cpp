// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/sums.hpp"

#include "blockwright/time/timing.hpp"
#include "core/model/weeks.hpp"
#include "core/rules/gym_limit.hpp"

namespace bw {

namespace {
// To the nearest billionth.
Grains times(Share a, Share b) {
    return (a.billionths() * b.billionths() + Share::kWhole / 2) / Share::kWhole;
}

Share hardWeightOf(const GymSettings& gym, SectionKind kind) {
    if (kind == SectionKind::Strength) return Share::whole();
    if (kind == SectionKind::Finisher) return gym.weights.of[static_cast<std::size_t>(kind)];
    return {};
}

std::vector<Week> weeksOf(const Block& block, std::optional<Week> week) {
    return week ? std::vector{*week} : bw::weeksOf(block);
}

int halfRoundsIn(const Block& block, const std::vector<Week>& weeks, Range<int> rounds) {
    int sum = 0;
    for (const Week w : weeks) sum += plannedRoundsDoubled(rounds, block.step(w).rounds);
    return sum;
}
} // namespace

Grains SlotGrains::sets(Share part) const { return halfRounds * times(weight, part); }
Grains SlotGrains::hardSets(Share part) const {
    return Grains{halfRounds} * visits * times(hardWeight, part);
}

std::vector<SlotGrains> slotGrains(const Gym& gym, const Block& block, std::optional<Week> week) {
    const auto weeks = weeksOf(block, week);
    std::vector<SlotGrains> out;
    Place at;
    for (at.section = 0; const Section& section : block.sections) {
        const Share weight = gym.settings.weights.of[static_cast<std::size_t>(section.kind)];
        const Share hard = hardWeightOf(gym.settings, section.kind);
        for (at.group = 0; const Group& group : section.groups) {
            const int halves = halfRoundsIn(block, weeks, group.rounds);
            for (at.slot = 0; const Slot& slot : group.slots) {
                const Exercise* e = slot.exercise ? gym.shelf.find(*slot.exercise) : nullptr;
                if (e) out.push_back({at, e, halves, block.visitsPerWeek, weight, hard});
                ++at.slot;
            }
            ++at.group;
        }
        ++at.section;
    }
    return out;
}

int weeksAskedFor(const Block& block, std::optional<Week> week) {
    return static_cast<int>(weeksOf(block, week).size());
}

double averageSets(Grains grains, int weeks) {
    return static_cast<double>(grains) / (2.0 * Share::kWhole * weeks);
}

Share muscleShare(const GymSettings& gym, Share told) {
    const LimitValue* set = gymLimit(gym, "balance", "indirect_share");
    if (!set || told == Share::whole() || told == Share{}) return told;
    const auto share = Share::of(set->lo);
    return share && *share > Share{} ? *share : told;
}

} // namespace bw
