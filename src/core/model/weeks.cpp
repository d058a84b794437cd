// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/weeks.hpp"

#include <algorithm>

namespace bw {

std::vector<Week> weeksOf(const Block& block) {
    std::vector<Week> out;
    const auto steps = std::clamp(static_cast<int>(block.stair.size()), 1, Week::kMost);
    for (int n = 1; n <= steps; ++n) out.push_back(Week::of(n).value());
    return out;
}

} // namespace bw
