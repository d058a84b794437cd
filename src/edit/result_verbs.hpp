// SPDX-License-Identifier: GPL-3.0-or-later
// Bringing results in from a table.
#pragma once
#include "edit/open_gym.hpp"
#include "interchange/results_csv.hpp"

namespace bw {

// What storing these results would change; reads only what is stored of their members from their
// first day on.
[[nodiscard]] Result<ResultsChange> changeBy(GymFile& file, std::vector<LiftResult> results);

// Stores what is fresh and what is changed, all or nothing; can't be undone.
[[nodiscard]] Result<bool> importResults(OpenGym& gym, const ResultsChange& change);

} // namespace bw
