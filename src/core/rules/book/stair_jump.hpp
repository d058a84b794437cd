// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/model/effort.hpp"

namespace bw::book {

// How much more weight the same repetitions want when fewer are left in reserve, in per cent.
[[nodiscard]] double riseOfLoad(double reps, Rir from, Rir to);

} // namespace bw::book
