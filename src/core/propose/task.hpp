// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked of a proposal: the draft with its places open, and what the hard limits leave for
// each of them.
#pragma once
#include "blockwright/propose/propose.hpp"
#include "blockwright/rules/facts.hpp"

#include <memory>

namespace bw::proposing {

struct Target {
    Place place;
    std::vector<const Exercise*> fits; // known to the gym before new, then by skill
};

struct Task {
    const Gym& gym;
    std::unique_ptr<const Block> block; // the draft, its targets open
    std::unique_ptr<const History> history;
    std::unique_ptr<const Facts> facts;  // of the block, in its first week
    std::vector<Target> targets;         // in order of the session, at least one
    std::optional<FloorOptions> floor{}; // see ProposeOptions
};

// Why(): as propose().
[[nodiscard]] Result<std::shared_ptr<const Task>> taskOf(const Gym& gym, const Block& draft,
                                                         const ProposeOptions& options);

} // namespace bw::proposing
