// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn gyms with drafts in which much happens at once: short kit, equal times, waits of every
// kind.
#pragma once
#include "core/floor/floor_gym.hpp"

#include <random>

namespace bw::test {

struct RandomFloor {
    explicit RandomFloor(std::uint64_t seed) : random_(seed) {
        t.gym.settings.opening = Millis{upTo(3) * 60'000};
        t.gym.settings.closing = Millis{upTo(2) * 60'000};
        t.gym.settings.classMinutes = 5 + upTo(30);
        members = 1 + upTo(9);
        for (int k = 0; k < kKits; ++k)
            t.own("kit-" + std::to_string(k), upTo(4), upTo(1) == 0 ? Claim::Set : Claim::Group);
        for (int e = 0; e < 8; ++e) addExercise(e);
        const int sections = 1 + upTo(2);
        for (int s = 0; s < sections; ++s) addSection();
        constexpr RoundsMode kModes[] = {RoundsMode::Low, RoundsMode::Open, RoundsMode::Open,
                                         RoundsMode::High};
        t.draft.stair = {{kModes[upTo(3)], {}, Intent::Build, {}}};
    }

    TinyGym t;
    int members = 1;

private:
    static constexpr int kKits = 5;

    int upTo(int most) { return static_cast<int>(random_() % static_cast<unsigned>(most + 1)); }

    void addExercise(int number) {
        constexpr double kPaces[] = {1, 2, 2.5, 0.3335};
        Exercise e = exercise("drawn-" + std::to_string(number), Pattern::Hinge, kPaces[upTo(3)],
                              5 * upTo(2));
        if (upTo(3) == 0) e.sides = Sides::Each;
        const int ways = std::max(0, upTo(4) - 1);
        for (int w = 0; w < ways; ++w) {
            e.needs.emplace_back();
            for (int n = upTo(1); n >= 0; --n)
                e.needs.back().push_back(
                    {kit("kit-" + std::to_string(upTo(kKits - 1))), 1 + upTo(5) / 4, {}});
        }
        t.gym.shelf.put(std::move(e));
    }

    Slot drawnSlot() {
        if (upTo(7) == 0) return {};
        const std::string id = "drawn-" + std::to_string(upTo(7));
        const int lo = 5 * (1 + upTo(3));
        return slot(id, upTo(1) == 0 ? reps(lo, lo + upTo(3)) : secondsDose(lo, lo + 5 * upTo(1)));
    }

    void addSection() {
        std::vector<Group> groups;
        for (int g = upTo(4); g > 0; --g) {
            std::vector<Slot> slots;
            for (int s = 1 + upTo(2); s > 0; --s) slots.push_back(drawnSlot());
            const int lo = 1 + upTo(1), rest = 5 * upTo(4);
            groups.push_back(group(rounds(lo, lo + upTo(2)),
                                   secondsRange(rest, rest + 10 * upTo(1)), std::move(slots)));
        }
        Section& s = t.add(std::move(groups));
        s.talk = Millis{1000 * 15 * upTo(2)};
        if (upTo(2) > 0) s.budget = secondsRange(0, 30 * upTo(30));
        const int start = upTo(2);
        if (start == 1) s.start = StartSpread{};
        if (start == 2) {
            StartCounts counts;
            for (std::size_t g = 0; g < s.groups.size(); ++g) counts.heads.push_back(upTo(4));
            s.start = counts;
        }
    }

    std::mt19937_64 random_; // its sequence is laid down by the standard
};

// A floor on which every slot can be served, at or after this seed; the seed moves behind it.
[[nodiscard]] inline RandomFloor servedFloor(std::uint64_t& seed) {
    for (;; ++seed) {
        RandomFloor f(seed);
        if (!floorShortages(f.t.gym, f.t.draft).empty()) continue;
        ++seed;
        return f;
    }
}

} // namespace bw::test
