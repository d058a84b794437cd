// SPDX-License-Identifier: GPL-3.0-or-later
// How long each set and each rest of each member takes in one class; rows as FloorPlan lays them
// out.
#pragma once
#include "core/floor/floor_plan.hpp"

namespace bw {

class FloorSteps {
public:
    // No set or rest counts longer, so that no sum of times can overflow.
    static constexpr Ticks kMost = 24 * 60 * 60'000;

    FloorSteps(const FloorPlan& plan, int members)
        : length_(plan.steps),
          ms_(static_cast<std::size_t>(plan.steps) * static_cast<std::size_t>(members)) {}

    [[nodiscard]] const Ticks* row(int member) const {
        return ms_.data() + static_cast<std::ptrdiff_t>(member) * length_;
    }
    [[nodiscard]] Ticks* row(int member) {
        return ms_.data() + static_cast<std::ptrdiff_t>(member) * length_;
    }

private:
    int length_;
    std::vector<Ticks> ms_;
};

} // namespace bw
