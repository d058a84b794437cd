// SPDX-License-Identifier: GPL-3.0-or-later
// What a member should take for each slot and week of the month, in loads that this gym has.
//   MonthTargets targets(gym, block);
//   for (const Member& m : gym.members) show(targets.of(ledger, m));
#pragma once
#include "blockwright/ledger/ledger.hpp"
#include "blockwright/ledger/loading.hpp"
#include "blockwright/ledger/progression.hpp"
#include "blockwright/ramp/class_plan.hpp"
#include "blockwright/rules/member_substitute.hpp"

#include <map>

namespace bw {

enum class Aim {
    Load,   // take this load
    Find,   // nothing is known yet: find the load in the first week
    Follow, // what the first week found, by the week's reserve
    AsLast, // the last load: the slot has no repetitions or effort to reckon by
    Body    // no load to choose: repetitions, or the dose as it stands
};
template <> struct Spelling<Aim> {
    static constexpr std::array<std::string_view, 5> words{"load", "find", "follow", "as-last",
                                                           "body"};
};

struct Target {
    Aim aim = Aim::Find;
    std::optional<Loading> loading; // with Load and AsLast
    std::optional<BodyStep> body;   // with Body, after a result
    Message text;                   // why, or what to do
};

struct WeekTarget {
    PlanStep plan;
    Target target;
};

struct SlotTargets {
    Place place;
    const Exercise* exercise = nullptr; // the substitute where there is one
    std::optional<MemberSubstitute> instead;
    std::optional<Estimate> estimate;
    std::optional<TopSet> last;
    std::vector<WeekTarget> weeks; // none where a flag rules the slot out and nothing fits
};

class MonthTargets {
public:
    MonthTargets(const Gym& gym, const Block& block); // both must outlive it

    // Slots with an exercise of the Shelf, in order of the session. Keeps what it worked out about
    // loads, so not from two threads at once.
    [[nodiscard]] std::vector<SlotTargets> of(const Ledger& ledger, const Member& member);
    // Exercises that of() may ask a ledger about: those of the draft and, for members with flags,
    // their substitutes, with what a coach's ratio passes on to them. In order of id.
    [[nodiscard]] std::vector<ExerciseId> exercises() const;

private:
    [[nodiscard]] const Loadings& loadings(const Exercise& exercise);

    const Gym& gym_;
    const Block& block_;
    History history_;
    Facts facts_;
    std::vector<std::vector<PlanStep>> plans_; // by slot of the facts
    std::map<ExerciseId, Loadings> loadings_;
};

// The next step whatever the month: the repetitions of last time, two in reserve. None without a
// last time.
[[nodiscard]] std::optional<Target> nextTime(const Gym& gym, const Ledger& ledger,
                                             const Member& member, const Exercise& exercise);

} // namespace bw
