// SPDX-License-Identifier: GPL-3.0-or-later
// Which months used which exercise, and where.
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/model/place.hpp"

#include <unordered_map>
#include <vector>

namespace bw {

struct ShelfUse {
    Month month;
    std::vector<Place> places; // as the session runs
    bool main = false;         // a main lift in one of them
};

class ShelfUses {
public:
    explicit ShelfUses(const Gym& gym);
    // Oldest first; empty when no month used it.
    [[nodiscard]] const std::vector<ShelfUse>& of(const ExerciseId& id) const;

private:
    std::unordered_map<ExerciseId, std::vector<ShelfUse>> uses_;
};

} // namespace bw
