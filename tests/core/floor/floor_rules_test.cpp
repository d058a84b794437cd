// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds against the deadline, and who comes first when much happens in one millisecond.
#include "core/floor/class_run.hpp"
#include "core/floor/draws.hpp"
#include "core/floor/floor_gym.hpp"
#include "support/catch.hpp"

namespace bw::test {

namespace {
// One group of 2 to 3 rounds of 60 s with 30 s rest, in a section of that budget.
double roundsUnder(int budgetMs, RoundsMode mode = RoundsMode::Open, int talkSeconds = 0) {
    TinyGym t;
    Section& s = t.add({group(rounds(2, 3), secondsRange(30, 30), {t.work(60)})});
    s.talk = Millis{talkSeconds * 1000};
    s.budget = Range<Millis>::of(Millis{0}, Millis{budgetMs}).value();
    t.draft.stair[0].rounds = mode;
    return t.steady(1).sections[0].groups[0].mean;
}

// The class's timeline when each member starts at the group said.
FloorAnswer startedAt(const TinyGym& t, const std::vector<int>& groups) {
    FloorOptions o;
    o.steady = true;
    const FloorPlan plan = planFloor(t.gym, t.draft, o.week);
    const int members = static_cast<int>(groups.size());
    FloorSteps steps(plan, members);
    Draws(plan, o).fill(0, members, steps);
    FloorAnswer shown;
    shown.timeline = ClassRun(plan, {groups}, members).timeline(steps).rows;
    return shown;
}
} // namespace

TEST_CASE("the third round is done when it would end by the deadline") {
    // Two rounds end at 150 s; rest and a round like the last one end at 240 s.
    CHECK(roundsUnder(240'000) == 3);
    CHECK(roundsUnder(239'999) == 2);
    CHECK(roundsUnder(1000) == 2);
}
TEST_CASE("talk comes off the budget") {
    CHECK(roundsUnder(300'000, RoundsMode::Open, 60) == 3);
    CHECK(roundsUnder(299'999, RoundsMode::Open, 60) == 2);
}
TEST_CASE("low and high weeks do their rounds whatever the deadline") {
    CHECK(roundsUnder(1'000'000, RoundsMode::Low) == 2);
    CHECK(roundsUnder(1000, RoundsMode::High) == 3);
}
TEST_CASE("without a budget there is no deadline") {
    TinyGym t;
    t.add({group(rounds(2, 5), secondsRange(30, 30), {t.work(60)})});
    const FloorAnswer a = t.steady(2);
    CHECK(a.sections[0].groups[0] == FloorGroupRounds{5, 1});
}

TEST_CASE("each group that a member visits has its share of the budget") {
    TinyGym t;
    Section& s = t.add({group(rounds(1, 2), secondsRange(10, 10), {t.work(50)}),
                        group(rounds(1, 2), secondsRange(10, 10), {t.work(50)}),
                        group(rounds(1, 2), secondsRange(10, 10), {t.work(50)})});
    // One round ends at 50, a second would at 110; k/3 of the budget is 110 or, a millisecond less,
    // a fraction below it.
    SECTION("in whole milliseconds") {
        s.budget = Range<Millis>{Millis{330'000}};
        // 0-110, 120-230 (deadline 220: no: 120-170), 180-290 (deadline 330)
        CHECK(laneOf(t.steady(1), 0) ==
              "set 0-50, rest 50-60, set 60-110, rest 110-120, set 120-170, "
              "rest 170-180, set 180-230, rest 230-240, set 240-290");
    }
    SECTION("and in fractions of one") {
        s.budget = Range<Millis>{Millis{329'999}};
        CHECK(t.steady(1).sections[0].groups[0].mean == 1);
    }
}

TEST_CASE("waits count into the round that decides about the next") {
    TinyGym t;
    t.own("bike", 1, Claim::Set);
    Section& s = t.add({group(rounds(1, 2), secondsRange(10, 10), {t.work(50, {{{"bike", 1}}})})});
    // Member 1 waits 50, works 50: a second round is thought to take 100 again, until 210.
    s.budget = Range<Millis>{Millis{209'999}};
    CHECK(laneOf(t.steady(2), 1) == "wait 0-50, set 50-100");
    s.budget = Range<Millis>{Millis{210'000}};
    CHECK(laneOf(t.steady(2), 1) ==
          "wait 0-50, set 50-100, rest 100-110, wait 110-150, set 150-200");
}

TEST_CASE("waiting to enter a group is before its first round") {
    TinyGym t;
    t.own("bar", 1, Claim::Group);
    Section& s = t.add({group(rounds(1, 2), secondsRange(10, 10), {t.work(50, {{{"bar", 1}}})})});
    s.budget = Range<Millis>{Millis{220'000}};
    // Member 0 holds the bar 0-110; member 1's first round, 110-160, took 50: 160 + 10 + 50 = 220.
    CHECK(laneOf(t.steady(2), 1) == "wait 0-110, set 110-160, rest 160-170, set 170-220");
}

TEST_CASE("the rest that was drawn for a round not done is the rest before the next group") {
    TinyGym t;
    Section& s = t.add({group(rounds(1, 2), secondsRange(10, 90), {t.work(50)}),
                        group(rounds(1, 1), secondsRange(10, 90), {t.work(50)})});
    s.budget = Range<Millis>{Millis{100'000}};
    const FloorPlan plan = planFloor(t.gym, t.draft, week(1));
    FloorSteps steps(plan, 1);
    const Ticks drawn[] = {50'000, 37'000, 50'000, 71'000, 40'000, 5'000};
    std::copy(std::begin(drawn), std::end(drawn), steps.row(0));
    ClassRun run(plan, {{0}}, 1);
    FloorAnswer shown;
    shown.timeline = run.timeline(steps).rows;
    CHECK(laneOf(shown, 0) == "set 0-50, rest 50-87, set 87-127");
}

TEST_CASE("in one millisecond, what is given back can be taken by who comes just then") {
    TinyGym t;
    t.own("bike", 1, Claim::Set);
    t.add({group(rounds(2, 2), secondsRange(30, 30), {t.work(30, {{{"bike", 1}}})})});
    // Member 0's rest ends at 60, when member 1 gives the bike back.
    CHECK(laneOf(t.steady(2), 0) == "set 0-30, rest 30-60, set 60-90");
}

TEST_CASE("in one millisecond, who waits goes before who just gave back") {
    TinyGym t;
    t.own("bike", 1, Claim::Set);
    t.add({group(rounds(2, 2), secondsRange(0, 0), {t.work(30, {{{"bike", 1}}})})});
    CHECK(laneOf(t.steady(2), 0) == "set 0-30, wait 30-60, set 60-90");
    CHECK(laneOf(t.steady(2), 1) == "wait 0-30, set 30-60, wait 60-90, set 90-120");
}

TEST_CASE("in one millisecond, turns are taken by member number") {
    TinyGym t;
    t.own("bike", 1, Claim::Set);
    t.add({onceThrough({t.work(10), t.work(30, {{{"bike", 1}}})})});
    const FloorAnswer a = t.steady(3);
    CHECK(laneOf(a, 0) == "set 0-10, set 10-40");
    CHECK(laneOf(a, 1) == "set 0-10, wait 10-40, set 40-70");
    CHECK(laneOf(a, 2) == "set 0-10, wait 10-70, set 70-100");
}

TEST_CASE("in one millisecond, all give-backs come before all turns") {
    TinyGym t;
    t.own("one", 1, Claim::Set).own("two", 1, Claim::Set);
    // Member 0 ends on "one" at 30 and asks for "two", which member 1 gives back at 30.
    t.add({onceThrough({t.work(30, {{{"one", 1}}}), t.work(20, {{{"two", 1}}})}),
           onceThrough({t.work(30, {{{"two", 1}}})})})
        .start = StartCounts{{1, 1}};
    CHECK(laneOf(t.steady(2), 0) == "set 0-30, set 30-50, set 50-80");
}

TEST_CASE("kit kept through a group comes back at the turn of the member who leaves") {
    TinyGym t;
    t.own("bar", 1, Claim::Group).own("bell", 1, Claim::Group);
    const auto lift = t.work(30, {{{"bar", 1}}, {{"bell", 1}}});
    t.add({onceThrough({lift}), onceThrough({t.work(30)})});
    // One leaves the bar at 30, one comes at 30 and takes the bar or, where it is not back yet, the
    // bell.
    const auto comesAndTakes = [&](const std::vector<int>& starts) {
        const FloorPlan plan = planFloor(t.gym, t.draft, week(1));
        FloorSteps steps(plan, 2);
        for (int m = 0; m < 2; ++m) std::fill_n(steps.row(m), plan.steps, 0);
        for (int m = 0; m < 2; ++m) steps.row(m)[0] = steps.row(m)[2] = 30'000;
        ClassRecord record(plan, 2);
        ClassRun(plan, {starts}, 2).play(steps, record);
        return record.busy;
    };
    CHECK(comesAndTakes({0, 1}) == std::vector<Ticks>{60'000, 0});
    CHECK(comesAndTakes({1, 0}) == std::vector<Ticks>{30'000, 30'000});
}

TEST_CASE("who enters on a give-back asks for the first set at their own turn") {
    TinyGym t;
    t.own("bar", 1, Claim::Group).own("lane", 1, Claim::Set);
    // At 20 member 0 leaves the bar to member 2, and member 1 has done 20 s of something else and
    // wants the lane: member 1's turn comes first.
    t.add({onceThrough({t.work(20, {{{"bar", 1}, {"lane", 1}}})}, 1000),
           onceThrough({t.work(20), t.work(5, {{{"lane", 1}}})}, 1000)});
    const FloorAnswer shown = startedAt(t, {0, 1, 0});
    CHECK(laneOf(shown, 1).starts_with("set 0-20, set 20-25"));
    CHECK(laneOf(shown, 2).starts_with("wait 0-20, wait 20-25, set 25-45"));
}

} // namespace bw::test
