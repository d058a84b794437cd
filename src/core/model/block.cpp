// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/block.hpp"

#include <algorithm>

namespace bw {

std::vector<StairStep> defaultStair() {
    const auto step = [](RoundsMode rounds, int rir, Intent intent) {
        return StairStep{rounds, Rir::fromTenths(rir * 10).value(), intent, {}};
    };
    return {step(RoundsMode::Low, 4, Intent::Learn), step(RoundsMode::Open, 3, Intent::Build),
            step(RoundsMode::Open, 2, Intent::Build), step(RoundsMode::Open, 1, Intent::Challenge)};
}

const StairStep& Block::step(Week w) const {
    return stair[std::min(static_cast<std::size_t>(w.index()), stair.size() - 1)];
}

} // namespace bw
