// SPDX-License-Identifier: GPL-3.0-or-later
// One function a rule; each is made once, for the list in rule_list.cpp.
#pragma once
#include "blockwright/rules/rule.hpp"

namespace bw::book {

Rule sessionLength();
Rule sectionLength();
Rule supersetWork();
Rule powerRest();
Rule strengthRest();
Rule powerDose();
Rule powerFirst();
Rule heavyFirst();
Rule pairing();
Rule overlap();
Rule patternMissing();
Rule pushPull();
Rule kneeHip();
Rule horizontalVertical();
Rule oneSided();
Rule planes();
Rule muscleDose();
Rule kitShort();
Rule kitQueue();
Rule overrunChance();
Rule thirdRound();
Rule novelty();
Rule staleness();
Rule carryOver();
Rule stairJump();
Rule stairShape();
Rule options();
Rule memberFlag();
Rule cueMissing();
Rule cautionMissing();
Rule finisherDose();

} // namespace bw::book
