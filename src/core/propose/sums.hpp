// SPDX-License-Identifier: GPL-3.0-or-later
// What the rules of the whole session read of a month, as whole numbers that each slot adds to: the
// grains of the balance (core/balance/sums.hpp), counts, and planned time in quarter milliseconds.
#pragma once
#include "core/balance/sums.hpp"
#include "core/propose/filling.hpp"
#include "core/propose/kit_waits.hpp"
#include "core/propose/task.hpp"

#include <cstdint>
#include <vector>

namespace bw::proposing {

namespace at {
enum Index : int {
    pattern = 0,
    plane = 12,
    sets = 15,
    oneSided = 16,
    muscle = 17,    // the six large ones
    anyMuscle = 23, // all of them
    family = 24,    // exercises that train each
    fresh = 29,     // exercises that no earlier month had
    carried = 30,   // main lifts of the newest month before that are again
    time = 31       // by kind of week, then by section; then the lines at kit, see kit_waits.hpp
};
} // namespace at

using Sums = std::vector<std::int64_t>;

// How much of one set of the exercise goes into one of the balance's sums.
[[nodiscard]] double partOf(const Exercise& e, int index);

class Adder {
public:
    explicit Adder(const Task& task);

    [[nodiscard]] const Sums& fixed() const { return fixed_; } // what no target changes
    [[nodiscard]] Sums of(const Filling& filling);
    [[nodiscard]] Sums months() const; // of the window, without the draft; balance only

    [[nodiscard]] const std::vector<RoundsMode>& modes() const { return modes_; }
    [[nodiscard]] int timeAt(std::size_t mode, std::size_t section) const {
        return at::time + static_cast<int>(mode * task_.block->sections.size() + section);
    }
    [[nodiscard]] const std::vector<const Exercise*>& lastMains() const { return lastMains_; }
    [[nodiscard]] const LeastWaits& waits() const { return waits_; }
    [[nodiscard]] int waitAt(std::size_t line) const { // then how many slots take it
        return timeAt(modes_.size(), 0) + 2 * static_cast<int>(line);
    }

private:
    void addFixed(); // all that no target changes
    [[nodiscard]] std::span<std::int64_t> waitsIn(Sums& sums) const;
    void addBalance(const SlotGrains& slot, Sums& to) const;
    void addCounts(const SlotFact& slot, Sums& to) const;

    const Task& task_;
    double leastShare_ = 0;         // pattern-missing.least_share
    std::vector<RoundsMode> modes_; // that the weeks have
    std::vector<const Exercise*> lastMains_;
    std::vector<SlotGrains> seats_; // of the targets, with any exercise
    LeastWaits waits_;
    Sums fixed_;
};

} // namespace bw::proposing
