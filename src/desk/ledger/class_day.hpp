// SPDX-License-Identifier: GPL-3.0-or-later
// One class date: which exercises the month's session has, and for each member that is looked at
// what was lifted that day, what the time before, and what the week asks for. Members are read only
// when they are asked for, and the years behind them are let go again.
#pragma once
#include "blockwright/ledger/set_shorthand.hpp"
#include "blockwright/ledger/target.hpp"
#include "edit/result_verbs.hpp"

#include <map>
#include <memory>
#include <set>

namespace bw {

struct ClassColumn {
    Place place; // the first slot with this exercise
    ExerciseId exercise;
};

struct ClassCell {
    ExerciseId exercise;                     // what the member does there
    std::optional<MemberSubstitute> instead; // a flag rules out what is drafted
    bool ruledOut = false;                   // and nothing fits: no sets are taken
    std::vector<LiftedSet> sets;             // of the day
    std::vector<LiftedSet> last;             // of the day before it with any
    std::optional<Date> lastOn;
    std::optional<WeekTarget> aim; // of the day's week, as it stood before the day
};

struct ClassRow {
    std::vector<ClassCell> cells; // by column
};

class ClassDay {
public:
    // Columns are the session's exercises that are measured in repetitions; without `whole`, those
    // of power and strength only.
    ClassDay(const Gym& gym, Date date, bool whole);

    [[nodiscard]] const Gym& gym() const { return *gym_; } // as it was when this was made
    [[nodiscard]] const std::shared_ptr<const Gym>& gymKept() const { return gym_; }
    [[nodiscard]] Date date() const { return date_; }
    [[nodiscard]] const Gym::BlockPtr& block() const { return block_; } // null: no such month
    [[nodiscard]] Week week() const { return week_; }
    [[nodiscard]] const std::vector<ClassColumn>& columns() const { return columns_; }
    // Slots with an exercise that got no column for their measure.
    [[nodiscard]] int unmeasured() const { return unmeasured_; }

    // Reads those that were not yet; one look into the file for all of them.
    [[nodiscard]] Result<bool> read(GymFile& file, const std::vector<MemberId>& members);
    [[nodiscard]] const ClassRow* row(const MemberId& member) const; // null: not read
    // Who has at least one set on the day, of whatever exercise; reads them anew.
    [[nodiscard]] Result<bool> readCame(GymFile& file);
    [[nodiscard]] const std::set<MemberId>& came() const { return came_; }
    void forget() { rows_.clear(); }
    void forget(const MemberId& member) { rows_.erase(member); }

private:
    struct Reading;
    void addColumns(bool whole);
    [[nodiscard]] ClassRow rowOf(const Member& member, const Reading& reading);

    std::shared_ptr<const Gym> gym_;
    Date date_;
    Gym::BlockPtr block_;
    Week week_ = Week::first();
    std::unique_ptr<MonthTargets> targets_; // null: no block
    std::vector<ExerciseId> asked_;         // whose results are read
    std::vector<ClassColumn> columns_;
    int unmeasured_ = 0;
    std::map<MemberId, ClassRow> rows_;
    std::set<MemberId> came_;
};

} // namespace bw
