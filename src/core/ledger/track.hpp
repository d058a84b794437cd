// SPDX-License-Identifier: GPL-3.0-or-later
// One member's results in one exercise, day after day, and the level that they show.
#pragma once
#include "blockwright/ledger/estimate.hpp"
#include "blockwright/ledger/local_level.hpp"
#include "core/ledger/set_model.hpp"

namespace bw {

// Of the normal distribution: 10 % lie beyond it on each side.
inline constexpr double kEightyPercent = 1.2815515655446;

// All sets of one day, in whatever order they came.
class DaySets {
public:
    explicit DaySets(Date date) : date_(date) {}
    void add(const LiftResult& result, const std::optional<SetFigure>& figure);

    [[nodiscard]] Date date() const { return date_; }
    [[nodiscard]] const TopSet& top() const { return *top_; } // only after add
    [[nodiscard]] bool counts() const { return weight_ > 0 || unknown_; }
    [[nodiscard]] bool known() const { return weight_ > 0; }
    [[nodiscard]] bool outside() const { return outside_; }

    struct Seen {
        double logMax, noise, n;
    };
    // What the sets say together; a set of unknown reserve above `level` counts like the others,
    // one below it little. Only when it counts.
    [[nodiscard]] Seen seen(const std::optional<double>& level) const;

private:
    Date date_;
    std::optional<TopSet> top_;
    double weight_ = 0, weightedLog_ = 0, weightedReps_ = 0; // of the sets with known reserve
    std::optional<SetFigure> unknown_;                       // the best of the others
    bool outside_ = true;
};

class Track {
public:
    // Days in ascending order. Those that say nothing of strength are remembered as last time.
    void day(const DaySets& sets, const LedgerRules& rules);
    // None before a day that counts. Not before the last day.
    [[nodiscard]] std::optional<Estimate> at(Date on, const LedgerRules& rules) const;
    [[nodiscard]] const std::optional<TopSet>& last() const { return last_; }

private:
    // True when all before is forgotten.
    bool see(const DaySets::Seen& seen);

    LocalLevel level_;
    std::optional<Date> since_, until_;
    std::optional<TopSet> last_;
    double reps_ = 1; // n of the last day
    int days_ = 0;
    int farSide_ = 0; // on which side the last day was far off: -1, 1, or 0 for near
    bool known_ = false, outside_ = false;
};

} // namespace bw
