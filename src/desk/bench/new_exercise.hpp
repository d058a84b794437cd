// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "desk/bench/sheet_cells.hpp"

#include <optional>
#include <string_view>

namespace bw {

// What a word of the name says of the pattern, by common practice; none when none does.
[[nodiscard]] std::optional<Pattern> patternInName(std::string_view name);

// A first guess at the pattern of an exercise that is not on the Shelf: what the slot wants, else a
// word of the name, else what stands beside it in the group, else trunk stability.
[[nodiscard]] Pattern likelyPattern(const SheetCell& cell, std::string_view name);

} // namespace bw
