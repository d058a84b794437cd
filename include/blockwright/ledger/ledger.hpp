// SPDX-License-Identifier: GPL-3.0-or-later
// What members' results say on a day. Results are shown to it one by one, and are not kept, so a
// ledger is as large as the number of members times exercises, whatever the years.
//   Ledger ledger(gym, today);
//   file.eachResult({}, [&](const LiftResult& r) { ledger.add(r); return true; });
//   ledger.estimate(member, exercise);
#pragma once
#include "blockwright/ledger/estimate.hpp"

#include <memory>
#include <span>

namespace bw {

class Ledger {
public:
    // Looks at results of the days from `on` back to rules.lookbackDays before it.
    Ledger(const Gym& gym, Date on); // the gym must outlive it
    ~Ledger();
    Ledger(Ledger&&) noexcept;
    Ledger& operator=(Ledger&&) noexcept;

    [[nodiscard]] const LedgerRules& rules() const;
    [[nodiscard]] Date on() const;
    [[nodiscard]] Date earliest() const; // older results are not looked at

    // Dates in ascending order within a member and exercise; sets of a day in any order.
    void add(const LiftResult& result);

    // From the member's own results, else passed on at a coach's ratio from the exercise that
    // makes the narrowest interval.
    [[nodiscard]] std::optional<Estimate> estimate(const MemberId& member,
                                                   const ExerciseId& exercise) const;
    // The best set of the last day. None when there was no such day.
    [[nodiscard]] std::optional<TopSet> last(const MemberId& member,
                                             const ExerciseId& exercise) const;
    // Exercises of which the member has results here, in order of id.
    [[nodiscard]] std::vector<ExerciseId> exercisesOf(const MemberId& member) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

// A day with results, and the estimate as it stood at its end.
struct LedgerDay {
    TopSet top;
    std::optional<Estimate> estimate;
};
// Of one member and exercise, in order of date. Each estimate is what a Ledger of that day says.
[[nodiscard]] std::vector<LedgerDay> overTime(const Gym& gym, std::span<const LiftResult> results);

} // namespace bw
