// SPDX-License-Identifier: GPL-3.0-or-later
// Changes applied to the gym in memory, and what takes them back.
#pragma once
#include "store/gym_file.hpp"

#include <optional>

namespace bw {

// Results are not part of the gym in memory: those changes do nothing here.
void applyTo(Gym& gym, const Change& change);

// What undoes the change on this gym. None when it changes nothing, or has no way back here: taking
// out kit or members; for results see results_before.hpp.
[[nodiscard]] std::optional<Change> wayBack(const Gym& gym, const Change& change);

} // namespace bw
