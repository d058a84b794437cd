// SPDX-License-Identifier: GPL-3.0-or-later
// Tiny classes worked out by hand from docs/floor.md, to the millisecond.
#include "core/floor/floor_gym.hpp"
#include "support/catch.hpp"

namespace bw::test {

TEST_CASE("a member alone goes through opening, talk, sets and rests without waiting") {
    TinyGym t;
    t.own("bar", 1, Claim::Group).own("lane", 1, Claim::Set);
    t.gym.settings.opening = Millis{180'000};
    t.gym.settings.closing = Millis{120'000};
    t.add({group(rounds(2, 2), secondsRange(30, 30),
                 {t.work(20, {{{"bar", 1}}}, 10), t.work(40, {{{"lane", 1}}})})})
        .talk = Millis{60'000};
    const FloorAnswer a = t.steady(1);
    CHECK(laneOf(a, 0) == "talk 180-240, set 240-270, set 270-310, rest 310-340, set 340-370, "
                          "set 370-410");
    CHECK(a.finish.p50 == Millis{530'000});
    CHECK(a.sections[0].end.p50 == Millis{410'000});
    CHECK(a.wait.mean.count() == 0);
    // Taken over the time from class start to the last section's end.
    CHECK(useOf(a, "bar").busy == Approx(170.0 / 410));
    CHECK(useOf(a, "lane").busy == Approx(80.0 / 410));
}

TEST_CASE("two members take turns at the one place, first come first served") {
    TinyGym t;
    t.own("bike", 1, Claim::Set);
    t.add({group(rounds(2, 2), secondsRange(20, 20), {t.work(30, {{{"bike", 1}}})})});
    const FloorAnswer a = t.steady(2);
    CHECK(laneOf(a, 0) == "set 0-30, rest 30-50, wait 50-60, set 60-90");
    CHECK(laneOf(a, 1) == "wait 0-30, set 30-60, rest 60-80, wait 80-90, set 90-120");
    CHECK(secondsOf(a.wait.mean) == 25);
    CHECK(a.wait.p90 == Millis{40'000});
    CHECK(secondsOf(useOf(a, "bike").wait.mean) == 25);
    CHECK(useOf(a, "bike").busy == 1);
}

TEST_CASE("two slots of a group share kit: the larger count is held, not the sum") {
    TinyGym t;
    t.own("bell", 4, Claim::Group);
    t.add({onceThrough({t.work(10, {{{"bell", 2}}}), t.work(20, {{{"bell", 1}}})})});
    SECTION("so four bells serve two members who want two and one") {
        const FloorAnswer a = t.steady(2);
        CHECK(laneOf(a, 1) == "set 0-10, set 10-30");
        CHECK(useOf(a, "bell").busy == 1);
    }
    SECTION("and three serve only one at a time") {
        t.own("bell", 3, Claim::Group);
        const FloorAnswer a = t.steady(2);
        CHECK(laneOf(a, 1) == "wait 0-30, set 30-40, set 40-60");
        CHECK(useOf(a, "bell").wait.p90 == Millis{30'000});
        CHECK(useOf(a, "bell").busy == Approx(2.0 / 3));
    }
}

TEST_CASE("the first alternative that is free is taken, and a wait counts on the preferred one") {
    TinyGym t;
    t.own("rower", 1, Claim::Set).own("bike", 1, Claim::Set);
    t.add({onceThrough({t.work(30, {{{"rower", 1}}, {{"bike", 1}}})})});
    const FloorAnswer a = t.steady(3);
    CHECK(laneOf(a, 0) == "set 0-30");
    CHECK(laneOf(a, 1) == "set 0-30");
    CHECK(laneOf(a, 2) == "wait 0-30, set 30-60");
    CHECK(secondsOf(useOf(a, "rower").wait.mean) == 10);
    CHECK(useOf(a, "bike").wait.mean.count() == 0);
    CHECK(useOf(a, "rower").busy == 1); // the first give-back is member 0's
    CHECK(useOf(a, "bike").busy == 0.5);
}

TEST_CASE("an alternative chosen on entering stays until the member leaves the group") {
    TinyGym t;
    t.own("bar", 1, Claim::Group).own("bell", 2, Claim::Group);
    t.add({group(rounds(2, 2), secondsRange(0, 0), {t.work(10, {{{"bar", 1}}, {{"bell", 1}}})}),
           onceThrough({t.work(1)})});
    t.draft.sections[0].start = StartCounts{{2, 0}};
    // Member 0 leaves at 20; member 1, on the bell, goes on with it.
    const FloorAnswer a = t.steady(2);
    CHECK(laneOf(a, 1) == "set 0-10, set 10-20, set 20-21");
    CHECK(useOf(a, "bell").busy == Approx(20.0 / (2 * 21)));
}

TEST_CASE("an alternative with both claims keeps the one and takes the other for each set") {
    TinyGym t;
    t.own("bar", 2, Claim::Group).own("platform", 1, Claim::Set);
    t.add(
        {group(rounds(2, 2), secondsRange(10, 10), {t.work(10, {{{"bar", 1}, {"platform", 1}}})})});
    const FloorAnswer a = t.steady(2);
    CHECK(laneOf(a, 0) == "set 0-10, rest 10-20, set 20-30");
    CHECK(laneOf(a, 1) == "wait 0-10, set 10-20, rest 20-30, set 30-40");
    CHECK(useOf(a, "bar").busy == Approx((30.0 + 40.0) / 80));
    CHECK(useOf(a, "platform").busy == 1);
    CHECK(useOf(a, "bar").wait.mean.count() == 0);
}

TEST_CASE("the line is walked from the front, and who can be served is served") {
    TinyGym t;
    t.own("lane", 2, Claim::Set);
    t.add({onceThrough({t.work(30, {{{"lane", 1}}})}, 100),
           onceThrough({t.work(10, {{{"lane", 2}}})}, 100)})
        .start = StartCounts{{2, 1}};
    // Members 0, 1 and 3 start at the first group (the list starts again), 2 at the second.
    const FloorAnswer a = t.steady(4);
    CHECK(laneOf(a, 3).starts_with("wait 0-30, set 30-60"));
    CHECK(laneOf(a, 2).starts_with("wait 0-60, set 60-70"));
}

TEST_CASE("a section opens when every member has finished the one before") {
    TinyGym t;
    t.own("bike", 1, Claim::Set);
    t.add({onceThrough({t.work(30, {{{"bike", 1}}})})});
    t.add({onceThrough({t.work(5)})}).talk = Millis{60'000};
    const FloorAnswer a = t.steady(3);
    CHECK(laneOf(a, 0) == "set 0-30, talk 90-150, set 150-155");
    CHECK(laneOf(a, 2) == "wait 0-60, set 60-90, talk 90-150, set 150-155");
    CHECK(a.sections[0].end.p90 == Millis{90'000});
    CHECK(a.sections[1].end.p90 == Millis{155'000});
}

TEST_CASE("members start where the draft says, go round, and rest between two groups") {
    TinyGym t;
    t.add({onceThrough({t.work(10)}, 5), onceThrough({t.work(20)}, 7)});
    Start& start = t.draft.sections[0].start;
    SECTION("together") {
        start = StartTogether{};
        CHECK(laneOf(t.steady(2), 1) == "set 0-10, rest 10-15, set 15-35");
    }
    SECTION("spread") {
        start = StartSpread{};
        CHECK(laneOf(t.steady(3), 1) == "set 0-20, rest 20-27, set 27-37");
        CHECK(laneOf(t.steady(3), 2) == "set 0-10, rest 10-15, set 15-35");
    }
    SECTION("by head count, in member order") {
        start = StartCounts{{1, 2}};
        CHECK(laneOf(t.steady(3), 0) == "set 0-10, rest 10-15, set 15-35");
        CHECK(laneOf(t.steady(3), 2) == "set 0-20, rest 20-27, set 27-37");
    }
}

TEST_CASE("open slots take no time and no kit, and a section without groups is only talk") {
    TinyGym t;
    t.add({}).talk = Millis{40'000};
    Slot open;
    t.add({onceThrough({open, t.work(10), open}, 5), onceThrough({open}, 5)});
    CHECK(laneOf(t.steady(1), 0) == "talk 0-40, set 40-50, rest 50-55");
    CHECK(t.steady(1).finish.p50 == Millis{55'000});
}

TEST_CASE("a day without any section ends after opening and closing") {
    TinyGym t;
    t.gym.settings.opening = Millis{180'000};
    t.gym.settings.closing = Millis{120'000};
    const FloorAnswer a = t.steady(5);
    CHECK(a.finish.p90 == Millis{300'000});
    CHECK(a.timeline.empty());
}

TEST_CASE("middle doses and rests are rounded to whole milliseconds, halves up") {
    TinyGym t;
    Slot s = t.work(1);
    s.dose = reps(2, 3); // 2.5 reps of 1 s
    Group g = group(rounds(1, 1), Range<Millis>::of(Millis{2}, Millis{5}).value(), {s});
    t.add({g, g});
    CHECK(laneOf(t.steady(1), 0) == "set 0-2.5, rest 2.5-2.504, set 2.504-5.004");
}

} // namespace bw::test
