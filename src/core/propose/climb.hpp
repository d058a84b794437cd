// SPDX-License-Identifier: GPL-3.0-or-later
// Good answers to begin with: one seat after the other is given its best choice until nothing gets
// better, then two seats at a time; then again and again from the best with some seats changed.
#pragma once
#include "core/propose/model.hpp"

#include <functional>
#include <set>

namespace bw::proposing {

using Pool = std::set<std::pair<double, Picks>>; // penalties as the model says them

// Ends early when the bound is reached, or when stopped (after the first answer). Tells each best.
[[nodiscard]] Pool climb(const Model& model, std::uint64_t seed, double bound,
                         const std::function<bool()>& stopped,
                         const std::function<void(double)>& better);

} // namespace bw::proposing
