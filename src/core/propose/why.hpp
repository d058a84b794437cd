// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/propose/task.hpp"

namespace bw::proposing {

// What an exercise brings to its slot: what it trains, when the gym last had it, what kit it takes.
[[nodiscard]] Message whyOf(const Task& task, const Block& filled, Place place, const Exercise& e);

} // namespace bw::proposing
