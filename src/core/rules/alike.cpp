// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/alike.hpp"

#include <algorithm>

namespace bw {

bool standsFor(const Exercise& other, const Exercise& now) {
    const auto named = [&](const std::vector<ExerciseId>& list) {
        return std::find(list.begin(), list.end(), other.id) != list.end();
    };
    return other.patterns.largest() == now.patterns.largest() || named(now.easier) ||
           named(now.swaps);
}

} // namespace bw
