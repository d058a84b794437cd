// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/exercise.hpp"

namespace bw {

// Could the one stand for the other in what it trains: of the same main pattern, or named on the
// Shelf as its easier version or its swap?
[[nodiscard]] bool standsFor(const Exercise& other, const Exercise& now);

} // namespace bw
