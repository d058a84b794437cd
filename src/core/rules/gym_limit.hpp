// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/gym.hpp"
#include "blockwright/rules/rule.hpp"

#include <string_view>

namespace bw {

// What the gym has set under "rule.name"; null when it has not.
[[nodiscard]] const LimitValue* gymLimit(const GymSettings& gym, std::string_view rule,
                                         std::string_view name);
// That, else the rule book's own. The rule and the limit must be in the book.
[[nodiscard]] LimitValue limitIn(const GymSettings& gym, std::string_view rule,
                                 std::string_view name);

// What one finding of this level adds to the penalty.
[[nodiscard]] double weightIn(const GymSettings& gym, const Rule& rule, Level level);

} // namespace bw
