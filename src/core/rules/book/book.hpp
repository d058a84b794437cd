// SPDX-License-Identifier: GPL-3.0-or-later
// The rules in the order in which the book has them. A new rule is its file and its line here.
#pragma once
#include "blockwright/rules/rule.hpp"

// clang-format off
#define BW_RULE_BOOK(RULE) \
    RULE(sessionLength) \
    RULE(sectionLength) \
    RULE(supersetWork) \
    RULE(powerRest) \
    RULE(strengthRest) \
    RULE(powerDose) \
    RULE(powerFirst) \
    RULE(heavyFirst) \
    RULE(pairing) \
    RULE(overlap) \
    RULE(patternMissing) \
    RULE(pushPull) \
    RULE(kneeHip) \
    RULE(horizontalVertical) \
    RULE(oneSided) \
    RULE(planes) \
    RULE(muscleDose) \
    RULE(kitShort) \
    RULE(kitQueue) \
    RULE(overrunChance) \
    RULE(thirdRound) \
    RULE(novelty) \
    RULE(staleness) \
    RULE(carryOver) \
    RULE(stairJump) \
    RULE(stairShape) \
    RULE(options) \
    RULE(memberFlag) \
    RULE(cueMissing) \
    RULE(cautionMissing) \
    RULE(finisherDose)
// clang-format on

namespace bw::book {

#define BW_DECLARE(rule) Rule rule();
BW_RULE_BOOK(BW_DECLARE)
#undef BW_DECLARE

} // namespace bw::book
