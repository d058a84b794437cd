// SPDX-License-Identifier: GPL-3.0-or-later
// What a gym can set about how the balance is counted, under "balance.name".
#pragma once
#include "blockwright/rules/rule.hpp"

#include <vector>

namespace bw {

[[nodiscard]] const std::vector<LimitSpec>& balanceLimits();

} // namespace bw
