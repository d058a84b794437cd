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
    struct Candidate {
        const FloorIdea* idea = nullptr;
        Block trial;
        MeanTime promise{}; // what a glance sees it bring
    };

    [[nodiscard]] Result<FloorAnswer> play(const Block& block, const FloorOptions& options) const;
    [[nodiscard]] std::vector<FloorIdea> starts(FloorOptions few) const;
    // Ideas that change the draft, each draft once.
    [[nodiscard]] std::vector<Candidate> candidates(const std::vector<FloorIdea>& ideas) const;
    // Leaves the most promising.
    void glanceAt(std::vector<Candidate>& candidates, const FloorOptions& few);
    [[nodiscard]] std::optional<ProvenChange> prove(const FloorAnswer& now,
                                                    const Candidate& candidate) const;

    const Gym& gym_;
    const Block& block_;
    FloorOptions options_;
    std::stop_token stop_;
    const FloorProgress& progress_;
    int done_ = 0, total_ = 0;
};

} // namespace bw
