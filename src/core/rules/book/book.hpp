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
Rule patternMissing();
Rule options();
Rule cueMissing();
Rule cautionMissing();
Rule kitShort();
Rule kitQueue();
Rule overrunChance();
Rule thirdRound();

} // namespace bw::book
