// SPDX-License-Identifier: GPL-3.0-or-later
// Which slots of a draft a member's flags rule out, and what to do there instead. A flag only makes
// the program look for another exercise; a licensed professional decides what is right.
#pragma once
#include "blockwright/rules/facts.hpp"

#include <optional>
#include <vector>

namespace bw {

// Avoid rules out a demand of 1 or more, limit one of 3.
[[nodiscard]] bool rulesOut(const Flag& flag, const Exercise& exercise);
// The member's first flag that rules the exercise out; null when none does.
[[nodiscard]] const Flag* flagAgainst(const Member& member, const Exercise& exercise);

struct MemberSubstitute {
    Place place;
    const Member* member = nullptr;
    const Flag* flag = nullptr;           // that rules out what is drafted there
    const Exercise* substitute = nullptr; // null: nothing on the Shelf fits
    Message text;                         // why, for the coach
};

// None when no flag of the member meets the slot. The best substitute is one that no flag of the
// member rules out, of a role that belongs there, with its kit in the gym and not in the draft
// already: of the slot's easier versions, then its swaps, then others, rather of the same main
// pattern than of another, then what this gym has done before, then by skill.
[[nodiscard]] std::optional<MemberSubstitute>
memberSubstitute(const Facts& facts, const SlotFact& slot, const Member& member);

// Of all active members, in order of the session, then of the members.
[[nodiscard]] std::vector<MemberSubstitute> memberSubstitutes(const Facts& facts);

} // namespace bw
