// SPDX-License-Identifier: GPL-3.0-or-later
// Other ways to start in a section: together, spread, or with these heads.
#pragma once
#include "blockwright/floor/study.hpp"

namespace bw {

// For each section with a choice. The draft's own start is among them when it is one of these.
[[nodiscard]] std::vector<FloorIdea> startIdeas(const Block& block, const FloorHeads& best);

} // namespace bw
