// SPDX-License-Identifier: GPL-3.0-or-later
// A gym with its results, which stay in the gym file where there is one.
#pragma once
#include "cli/gym_source.hpp"
#include "store/gym_file.hpp"

namespace bw::cli {

class GymResults {
public:
    explicit GymResults(const GymSource& source); // throws Ending, like all below

    [[nodiscard]] const Gym& gym() const { return gym_; }
    // Dates ascend within a member and exercise.
    void each(const ResultQuery& query, const std::function<void(const LiftResult&)>& visit) const;
    // "YYYY-MM-DD"; empty: the day of the newest result, or the first of the latest month.
    [[nodiscard]] Date day(const std::string& asked) const;
    [[nodiscard]] const Member& member(const std::string& id) const;

private:
    Gym gym_;
    std::unique_ptr<GymFile> file_;   // null: bundles
    std::vector<LiftResult> results_; // of bundles, by date
};

} // namespace bw::cli
