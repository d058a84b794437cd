// SPDX-License-Identifier: GPL-3.0-or-later
// What the Ledger tells of one member in one exercise, as it stands at the end of a day, and what
// the member's flags change in the month's session.
#pragma once
#include "blockwright/ledger/target.hpp"
#include "store/gym_file.hpp"

#include <memory>

namespace bw {

struct MemberStory {
    std::shared_ptr<const Gym> gym; // whom all pointers below belong to
    const Member* member = nullptr;
    std::vector<ExerciseId> exercises;  // with results in sight, and those of the session
    std::optional<ExerciseId> exercise; // none: there is nothing to tell of
    Date on;
    std::vector<LedgerDay> days; // in order of date
    std::optional<Estimate> estimate;
    std::vector<Message> remarks;
    std::optional<Target> next;
    std::vector<MemberSubstitute> substitutes; // in order of the session
};

struct StoryAsk {
    std::shared_ptr<const Gym> gym;
    MemberId member;
    std::optional<ExerciseId> exercise; // none, or one without anything to tell: the first that has
    std::vector<ExerciseId> session;    // exercises to list first
    Date on;
    Gym::BlockPtr block; // null: no month
};

// Why() when the file could not be read; the member must be one of the gym's.
[[nodiscard]] Result<MemberStory> tellOf(GymFile& file, const StoryAsk& ask);

} // namespace bw
