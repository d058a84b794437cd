// SPDX-License-Identifier: GPL-3.0-or-later
// People of the Ledger and what they lifted. A flag makes the program look for another exercise; it
// diagnoses nothing: a licensed professional decides.
#pragma once
#include "blockwright/model/calendar.hpp"
#include "blockwright/model/effort.hpp"
#include "blockwright/model/extras.hpp"
#include "blockwright/model/id.hpp"
#include "blockwright/model/quantity.hpp"
#include "blockwright/model/vocabulary.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bw {

struct Flag {
    Demand demand = Demand::Knee;
    FlagLevel level = FlagLevel::Limit;
    std::string note; // up to 2 000 characters
    Extras extras;
    bool operator==(const Flag&) const = default;
};

struct Member {
    MemberId id;
    std::string name; // 1 to 200 characters
    std::vector<Flag> flags;
    bool active = true;
    Extras extras;
    bool operator==(const Member&) const = default;
};

// One set that a member did.
struct LiftResult {
    MemberId member;
    Date date;
    ExerciseId exercise;
    int set = 1;              // 1 to 100, counted within member, date and exercise
    int reps = 1;             // 0 to 1 000
    std::optional<Rir> rir;   // none: not known
    std::optional<Mass> load; // none: bodyweight
    Extras extras;
    bool operator==(const LiftResult&) const = default;
};

} // namespace bw
