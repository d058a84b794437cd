// SPDX-License-Identifier: GPL-3.0-or-later
// What members lifted: typed in beside a class, or brought in from a table.
#pragma once
#include "blockwright/ledger/set_shorthand.hpp"
#include "edit/open_gym.hpp"
#include "interchange/results_csv.hpp"

namespace bw {

// The sets of one member in one exercise on one day.
struct LiftDay {
    MemberId member;
    Date date;
    ExerciseId exercise;
};

[[nodiscard]] Result<std::vector<LiftResult>> setsOf(GymFile& file, const LiftDay& day);
// These, numbered from 1, in place of what is stored of the day; none takes them all away. One
// undoable step. A set that stays under its number keeps what else is stored with it. False when
// nothing changes.
[[nodiscard]] Result<bool> setSets(OpenGym& gym, const LiftDay& day,
                                   const std::vector<LiftedSet>& sets);

// What storing these results would change; reads only what is stored of their members from their
// first day to their last.
[[nodiscard]] Result<ResultsChange> changeBy(GymFile& file, std::vector<LiftResult> results);

// So many sets can be brought in as one undoable step; more would be held in memory only for that.
inline constexpr std::size_t kMostUndoableSets = 20'000;
// Stores what is fresh and what is changed, all or nothing. Beyond kMostUndoableSets it can't be
// undone, nor can anything before it.
[[nodiscard]] Result<bool> importResults(OpenGym& gym, const ResultsChange& change);

} // namespace bw
