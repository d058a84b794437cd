// SPDX-License-Identifier: GPL-3.0-or-later
// Simulates changes of a draft in one week, with the random numbers of the draft itself, and keeps
// those that help.
#pragma once
#include "blockwright/floor/study.hpp"

namespace bw {

class ChangeTrial {
public:
    // All that is handed in must outlive this.
    ChangeTrial(const Gym& gym, const Block& block, const FloorOptions& options,
                std::stop_token stop, const FloorProgress& progress);

    // Of the ideas for the week that this answers, and of other starts; the most saved first. None
    // when stopped.
    [[nodiscard]] std::vector<ProvenChange> proven(const FloorAnswer& now,
                                                   const std::vector<FloorIdea>& ideas);

private:
    [[nodiscard]] Result<FloorAnswer> play(const Block& block, FloorOptions options) const;
    [[nodiscard]] std::vector<FloorIdea> starts(FloorOptions few) const;
    [[nodiscard]] std::optional<ProvenChange> prove(const FloorAnswer& now, const FloorIdea& idea);
    [[nodiscard]] bool promising(const Block& trial);

    const Gym& gym_;
    const Block& block_;
    FloorOptions options_;
    std::stop_token stop_;
    const FloorProgress& progress_;
    std::optional<FloorAnswer> glance_; // at the draft, over a few runs; none: all runs are few
    std::vector<Block> tried_;
    int done_ = 0, total_ = 0;
};

} // namespace bw
