// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/shift.hpp"

#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Shift shift(const Draft& a, const Draft& b) {
    return shiftBetween(check(a.gym, a.block), check(b.gym, b.block));
}
} // namespace

TEST_CASE("nothing changes between a draft and itself") {
    const Draft d = cleanDraft();
    CHECK(shift(d, d).nothing());
}

TEST_CASE("a limit moved below what is measured makes a finding appear, moved back it goes") {
    const Draft before = cleanDraft();
    Draft after = cleanDraft();
    after.limit("power-rest.seconds", 200, 240, true);
    const Shift there = shift(before, after);
    REQUIRE(there.appear.size() == 1);
    CHECK(there.appear[0].rule == "power-rest");
    CHECK(there.go.empty());
    CHECK(there.turn.empty());
    CHECK(there.after == Approx(there.before + LevelWeights{}.look));
    const Shift back = shift(after, before);
    REQUIRE(back.go.size() == 1);
    CHECK(back.go[0].rule == "power-rest");
    CHECK(back.after == there.before);
}

TEST_CASE("a finding of another level turns; other figures alone are no difference") {
    Draft before = cleanDraft(), after = cleanDraft();
    before.slot(kPower, 0, 0).dose = reps(8, 8);
    after.slot(kPower, 0, 0).dose = reps(12, 12);
    const Shift worse = shift(before, after);
    CHECK(worse.appear.empty());
    CHECK(worse.go.empty());
    REQUIRE(worse.turn.size() == 1);
    CHECK(worse.turn[0].first == Level::Look);
    CHECK(worse.turn[0].second.level == Level::Stop);
    after.slot(kPower, 0, 0).dose = reps(9, 9);
    CHECK(shift(before, after).nothing());
}

TEST_CASE("a weight changes the penalty alone") {
    Draft before = cleanDraft();
    before.slot(kPower, 0, 0).dose = reps(8, 8);
    Draft after = before;
    after.limit("power-dose.weight_look", 7);
    const Shift lighter = shift(before, after);
    CHECK(lighter.turn.empty());
    CHECK(lighter.before - lighter.after == Approx(3)); // from 10
    CHECK_FALSE(lighter.nothing());
}
