// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/balance/balance.hpp"

#include "core/balance/sums.hpp"
#include "core/rules/gym_limit.hpp"

#include <algorithm>
#include <numeric>

namespace bw {

namespace {
class Sums {
public:
    void add(const GymSettings& gym, const SlotGrains& slot) {
        const Exercise& e = *slot.exercise;
        sets_ += slot.sets();
        if (oneSideAtATime(e)) oneSided_ += slot.sets();
        addShares(patterns_, e.patterns, slot);
        addShares(planes_, e.planes, slot);
        if (slot.hardWeight == Share{}) return;
        for (const auto& [muscle, told] : e.muscles)
            muscles_[&muscle] += slot.hardSets(muscleShare(gym, told));
    }
    [[nodiscard]] Balance average(int weeks) const {
        Balance out;
        out.weeks = weeks;
        out.sets = averageSets(sets_, weeks);
        out.oneSided = averageSets(oneSided_, weeks);
        for (std::size_t i = 0; i < patterns_.size(); ++i)
            out.patterns[i] = averageSets(patterns_[i], weeks);
        for (std::size_t i = 0; i < planes_.size(); ++i)
            out.planes[i] = averageSets(planes_[i], weeks);
        for (const auto& [muscle, grains] : muscles_)
            if (grains > 0) out.muscles.emplace(*muscle, averageSets(grains, weeks));
        return out;
    }

private:
    struct ByName {
        bool operator()(const MuscleId* a, const MuscleId* b) const { return *a < *b; }
    };
    template <class E> static void addShares(std::array<Grains, kCount<E>>& to,
                                             const Shares<E>& shares, const SlotGrains& slot) {
        for (std::size_t i = 0; i < to.size(); ++i)
            if (const E e = static_cast<E>(i); shares.has(e)) to[i] += slot.sets(shares[e]);
    }

    Grains sets_ = 0, oneSided_ = 0;
    std::array<Grains, kCount<Pattern>> patterns_{};
    std::array<Grains, kCount<Plane>> planes_{};
    std::map<const MuscleId*, Grains, ByName> muscles_;
};
} // namespace

std::optional<double> Ratio::value() const {
    return under > 0 ? std::optional(over / under) : std::nullopt;
}

double Balance::hardSets(const MuscleId& muscle) const {
    const auto it = muscles.find(muscle);
    return it == muscles.end() ? 0 : it->second;
}

Ratio Balance::pushPull() const {
    return {of(Pattern::HorizontalPush) + of(Pattern::VerticalPush),
            of(Pattern::HorizontalPull) + of(Pattern::VerticalPull)};
}
Ratio Balance::kneeHip() const {
    return {of(Pattern::Squat) + of(Pattern::Lunge), of(Pattern::Hinge)};
}
Ratio Balance::horizontalVertical() const {
    return {of(Pattern::HorizontalPush) + of(Pattern::HorizontalPull),
            of(Pattern::VerticalPush) + of(Pattern::VerticalPull)};
}
Ratio Balance::oneSidedShare() const { return {oneSided, sets}; }
Ratio Balance::planeShare(Plane p) const {
    return {planes[static_cast<std::size_t>(p)],
            std::accumulate(planes.begin(), planes.end(), 0.0)};
}

Balance measureBalance(const Gym& gym, const Block& block, std::optional<Week> week) {
    Sums sums;
    for (const SlotGrains& slot : slotGrains(gym, block, week)) sums.add(gym.settings, slot);
    return sums.average(weeksAskedFor(block, week));
}

Balance measureBalance(const Gym& gym, const std::vector<const Block*>& blocks) {
    Sums sums;
    int weeks = 0;
    for (const Block* block : blocks) {
        for (const SlotGrains& slot : slotGrains(gym, *block, {})) sums.add(gym.settings, slot);
        weeks += weeksAskedFor(*block, {});
    }
    return weeks > 0 ? sums.average(weeks) : Balance{};
}

int windowMonths(const GymSettings& gym) {
    constexpr double kUsual = 3, kMost = 36;
    const LimitValue* set = gymLimit(gym, "balance", "window_months");
    return static_cast<int>(std::clamp(set ? set->lo : kUsual, 1.0, kMost));
}

std::vector<const Block*> windowOf(const Gym& gym, const Block& draft) {
    const Month first = draft.month.plus(1 - windowMonths(gym.settings));
    std::vector<const Block*> out{&draft};
    for (auto it = gym.blocks.lower_bound(draft.month); it != gym.blocks.begin();) {
        --it;
        if (it->first < first) break;
        out.push_back(it->second.get());
    }
    return out;
}

Balances balancesOf(const Gym& gym, const Block& draft, std::optional<Week> week) {
    return {measureBalance(gym, draft, week), measureBalance(gym, windowOf(gym, draft))};
}

} // namespace bw
