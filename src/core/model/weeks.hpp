// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/block.hpp"

namespace bw {

// The weeks of the stair, from the first; at least one.
[[nodiscard]] std::vector<Week> weeksOf(const Block& block);

} // namespace bw
