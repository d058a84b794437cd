// SPDX-License-Identifier: GPL-3.0-or-later
// What a member should know of a slot, as a page of text.
#pragma once
#include "desk/stair/stair_member.hpp"

#include <QString>

namespace bw {

// Of the slot: what to do instead, the estimate and what to make of it, then week by week what to
// put on the bar. HTML, in the colours of the screen.
[[nodiscard]] QString slotPage(const Gym& gym, const Block& block, Place place,
                               const MemberStair& member);
// "Flags: shoulder avoid (note)." and what a flag is; empty without any.
[[nodiscard]] QString flagsOf(const Member& member);

} // namespace bw
