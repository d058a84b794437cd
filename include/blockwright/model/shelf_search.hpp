// SPDX-License-Identifier: GPL-3.0-or-later
// Finding an exercise while typing: by parts of its name, or words for pattern, kit, role or
// muscle.
//   searchShelf(gym, "squat kettle", {}) -> goblet squat, front-rack squat, ...
#pragma once
#include "blockwright/model/gym.hpp"

#include <string_view>
#include <vector>

namespace bw {

// What makes one hit better than its equal.
struct SearchWish {
    std::optional<SectionKind> section; // an exercise with a role for it comes first
    std::vector<Pattern> patterns;      // likewise one of these patterns
};

// Every word of the query must be found in the exercise. Best first: name begins with the query, a
// word of the name begins with it, inside the name, then other words; wishes next; then by name.
// Retired exercises are left out. An empty query gives all, wishes first. Letters are compared
// without case.
[[nodiscard]] std::vector<const Exercise*>
searchShelf(const Gym& gym, std::string_view query, const SearchWish& wish, std::size_t most = 60);

// The exercise whose name is this text, case and outer spaces aside; null when there is none.
[[nodiscard]] const Exercise* exerciseNamed(const Shelf& shelf, std::string_view name);

} // namespace bw
