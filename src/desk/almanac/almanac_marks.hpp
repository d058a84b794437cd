// SPDX-License-Identifier: GPL-3.0-or-later
// What the rule book says of the month on show, beside the lines it speaks of: an exercise carried
// too long, a format taken again, too much that is new, a ratio outside its band.
#pragma once
#include "desk/almanac/almanac_line.hpp"

namespace bw {

// The worst finding of a line; those that speak of no line are left out.
void markLines(std::vector<AlmanacLine>& lines, const Block& block,
               const std::vector<Finding>& findings);

} // namespace bw
