// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "blockwright/ledger/target.hpp"
#include "blockwright/ramp/session_load.hpp"
#include "cli/json_text.hpp"

namespace bw::cli {

// One member's part of the stair.
struct MemberStair {
    const Member& member;
    const Ledger& ledger;
    std::vector<SlotTargets> slots;
    std::vector<SessionWeek> weeks; // what was done
};

// Without a member, the class plan.
[[nodiscard]] Json stairJson(const Gym& gym, const Block& block, const MemberStair* member);
[[nodiscard]] std::string stairText(const Gym& gym, const Block& block, const MemberStair* member);

} // namespace bw::cli
