// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/time/timing.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Pace pace(Measure usual, Pace::Rates rates) { return Pace::of(usual, rates).value(); }
Rate rate(double x) { return Rate::of(x).value(); }
Tempo tempo(const char* text) { return Tempo::parse(text).value(); }
Dose dose(Measure m, std::int64_t lo, std::int64_t hi) { return Dose::of(m, lo, hi).value(); }

Exercise withPace(Measure usual, Pace::Rates rates, Sides sides = Sides::Both) {
    Exercise e = exercise("thing", Pattern::Squat);
    e.pace = pace(usual, rates);
    e.sides = sides;
    return e;
}
Gym bare() {
    Gym gym;
    gym.settings.opening = gym.settings.closing = Millis{0};
    gym.shelf.put(exercise("squat", Pattern::Squat, 3.0, 10));
    gym.shelf.put(exercise("row", Pattern::HorizontalPull, 2.0, 5));
    return gym;
}
SessionTime timed(const Gym& gym, const Block& b, int w = 2) {
    return timeSession(gym.settings, gym.shelf, b, week(w));
}
} // namespace

TEST_CASE("a set takes its reps times the tempo, whatever the exercise's own pace") {
    const auto e = exercise("squat", Pattern::Squat, 2.0);
    CHECK(setWork(reps(5, 5), tempo("20X1"), e).middle == Millis{20'000});
    CHECK(setWork(reps(5, 5), std::nullopt, e).middle == Millis{10'000});
}

TEST_CASE("a fast lift counts as one second wherever it stands") {
    const auto e = exercise("squat", Pattern::Squat);
    CHECK(setWork(reps(1, 1), tempo("X000"), e).low == Millis{1'000});
    CHECK(setWork(reps(1, 1), tempo("31X0"), e).low == Millis{5'000});
    CHECK(setWork(reps(1, 1), tempo("XXXX"), e).low == Millis{4'000});
}

TEST_CASE("a range gives a low, a middle and a high set") {
    const SetTime t = setWork(reps(5, 10), std::nullopt, exercise("squat", Pattern::Squat, 3.0));
    CHECK(t.low == Millis{15'000});
    CHECK(t.middle == Millis{22'500});
    CHECK(t.high == Millis{30'000});
}

TEST_CASE("reps and seconds a side are done twice; alternating is the total") {
    const auto both = withPace(Measure::Reps, {rate(3), {}, {}}, Sides::Both);
    const auto each = withPace(Measure::Reps, {rate(3), {}, {}}, Sides::Each);
    const auto alternating = withPace(Measure::Reps, {rate(3), {}, {}}, Sides::Alternating);
    CHECK(setWork(reps(8, 8), std::nullopt, both).middle == Millis{24'000});
    CHECK(setWork(reps(8, 8), std::nullopt, each).middle == Millis{48'000});
    CHECK(setWork(reps(8, 8), std::nullopt, alternating).middle == Millis{24'000});
    CHECK(setWork(reps(8, 8), tempo("2010"), each).middle == Millis{48'000});
    CHECK(setWork(secondsDose(30, 30), std::nullopt, both).middle == Millis{30'000});
    CHECK(setWork(secondsDose(30, 30), std::nullopt, each).middle == Millis{60'000});
    CHECK(setWork(secondsDose(30, 45), std::nullopt, alternating).middle == Millis{37'500});
}

TEST_CASE("metres take their length by the speed, calories by the rate") {
    const auto sled = withPace(Measure::Metres, {{}, rate(0.8), {}});
    CHECK(setWork(dose(Measure::Metres, 20'000, 20'000), std::nullopt, sled).middle ==
          Millis{25'000});
    const auto bike = withPace(Measure::Kcal, {{}, {}, rate(12)});
    CHECK(setWork(dose(Measure::Kcal, 8'000, 8'000), std::nullopt, bike).middle == Millis{40'000});
}

TEST_CASE("a distance or calories are the total even when sides are told apart") {
    const auto carry = withPace(Measure::Metres, {{}, rate(1), rate(10)}, Sides::Each);
    CHECK(setWork(dose(Measure::Metres, 20'000, 20'000), std::nullopt, carry).middle ==
          Millis{20'000});
    CHECK(setWork(dose(Measure::Kcal, 5'000, 5'000), std::nullopt, carry).middle == Millis{30'000});
}

TEST_CASE("a tempo says nothing of seconds, metres and calories") {
    const auto e = withPace(Measure::Metres, {rate(3), rate(1), rate(60)});
    CHECK(setWork(secondsDose(30, 30), tempo("9999"), e).middle == Millis{30'000});
    CHECK(setWork(dose(Measure::Metres, 7'000, 7'000), tempo("9999"), e).middle == Millis{7'000});
    CHECK(setWork(dose(Measure::Kcal, 7'000, 7'000), tempo("9999"), e).middle == Millis{7'000});
}

TEST_CASE("a dose that the exercise has no pace for takes no time") {
    const auto e = withPace(Measure::Seconds, {});
    CHECK(setWork(reps(5, 5), std::nullopt, e).high == Millis{0});
    CHECK(setWork(dose(Measure::Metres, 5'000, 5'000), std::nullopt, e).high == Millis{0});
    CHECK(setWork(dose(Measure::Kcal, 5'000, 5'000), std::nullopt, e).high == Millis{0});
    CHECK(setWork(reps(5, 5), tempo("2010"), e).high == Millis{15'000});
}

TEST_CASE("a set is rounded to whole milliseconds, halves up") {
    const auto with = [](double secondsPerRep) {
        return exercise("squat", Pattern::Squat, secondsPerRep);
    };
    CHECK(setWork(reps(1, 1), std::nullopt, with(2.0004)).low == Millis{2'000});
    CHECK(setWork(reps(1, 1), std::nullopt, with(2.0005)).low == Millis{2'001}); // just a half
    CHECK(setWork(reps(1, 1), std::nullopt, with(2.000499999)).low == Millis{2'000});
    CHECK(setWork(reps(1, 2), std::nullopt, with(2.001)).middle == Millis{3'002}); // 3001.5
    CHECK(setWork(dose(Measure::Seconds, 1, 2), std::nullopt, with(1)).middle == Millis{2}); // 1.5
    // 10 m at 3 m/s and 1 kcal at 7 a minute never end: 3333.3 and 8571.4 ms.
    const auto odd = withPace(Measure::Metres, {{}, rate(3), rate(7)});
    CHECK(setWork(dose(Measure::Metres, 10'000, 10'000), std::nullopt, odd).low == Millis{3'333});
    CHECK(setWork(dose(Measure::Metres, 20'000, 20'000), std::nullopt, odd).low == Millis{6'667});
    CHECK(setWork(dose(Measure::Kcal, 1'000, 1'000), std::nullopt, odd).low == Millis{8'571});
}

TEST_CASE("the largest doses stay exact") {
    const auto slow =
        withPace(Measure::Reps, {rate(1000), rate(0.000000001), rate(0.000000001)}, Sides::Each);
    CHECK(setWork(reps(1000, 1000), std::nullopt, slow).high == Millis{2'000'000'000});
    CHECK(setWork(dose(Measure::Metres, 20'000'000, 20'000'000), std::nullopt, slow).high ==
          Millis{20'000'000'000'000'000});
}

TEST_CASE("quarters of a millisecond round to the nearest, halves up") {
    CHECK(roundHalvesUp(ExactTime{0}) == Millis{0});
    CHECK(roundHalvesUp(ExactTime{1}) == Millis{0});
    CHECK(roundHalvesUp(ExactTime{2}) == Millis{1});
    CHECK(roundHalvesUp(ExactTime{5}) == Millis{1});
    CHECK(roundHalvesUp(ExactTime{6}) == Millis{2});
    CHECK(roundHalvesUp(ExactTime{-1}) == Millis{0});
    CHECK(roundHalvesUp(ExactTime{-2}) == Millis{0});
    CHECK(roundHalvesUp(ExactTime{-3}) == Millis{-1});
    CHECK(roundHalvesUp(ExactTime{-6}) == Millis{-1});
    CHECK(seconds(ExactTime{4'002}) == 1.001);
}

TEST_CASE("rounds of a week are the low, the high, or halfway") {
    CHECK(plannedRoundsDoubled(rounds(2, 3), RoundsMode::Low) == 4);
    CHECK(plannedRoundsDoubled(rounds(2, 3), RoundsMode::Open) == 5);
    CHECK(plannedRoundsDoubled(rounds(2, 3), RoundsMode::High) == 6);
}

TEST_CASE("two and a half rounds have one and a half rests between them") {
    const Gym gym = bare();
    const Block draft =
        block("2026-09", {section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 120),
                                                                {slot("squat", reps(5, 10))})})});
    const auto t = timed(gym, draft);
    CHECK(seconds(t.total.low) == 2 * 25 + 60);
    CHECK(seconds(t.total.high) == 3 * 40 + 2 * 120);
    CHECK(seconds(t.total.planned) == Approx(2.5 * 32.5 + 1.5 * 90));
    CHECK(seconds(timed(gym, draft, 1).total.planned) == 2 * 32.5 + 90);
}

TEST_CASE("half rounds and half rests are added exactly before they are rounded") {
    Gym gym = bare();
    gym.shelf.put(exercise("squat", Pattern::Squat, 2.001, 0));
    Group g = group(rounds(1, 2), Range<Millis>::of(Millis{0}, Millis{1}).value(),
                    {slot("squat", reps(1, 1))});
    const Block one = block("2026-09", {section(SectionKind::Strength, {g})});
    // 1.5 x 2001 + 0.5 x 0.5 = 3001.75 ms
    CHECK(timed(gym, one).total.planned == ExactTime{4 * 3'001 + 3});
    CHECK(roundHalvesUp(timed(gym, one).total.planned) == Millis{3'002});
    // Twice that and the rest between: 6003.5 + 0.5 = 6004, where rounded parts would make 6005.
    const Block two = block("2026-09", {section(SectionKind::Strength, {g, g})});
    CHECK(roundHalvesUp(timed(gym, two).total.planned) == Millis{6'004});
}

TEST_CASE("a group's round is its set-ups and its work, told apart") {
    const Gym gym = bare();
    const Block draft = block(
        "2026-09", {section(SectionKind::Strength,
                            {group(rounds(3, 3), secondsRange(90, 90),
                                   {slot("squat", reps(5, 5)), slot("row", reps(10, 12))})})});
    const auto g = timed(gym, draft).sections.at(0).groups.at(0);
    CHECK(seconds(g.roundPlanned) == 10 + 15 + 5 + 22);
    CHECK(seconds(g.workPlanned) == 15 + 22);
    CHECK(seconds(g.total.planned) == 3 * 52 + 2 * 90);
}

TEST_CASE("between two groups lies the rest of the earlier one; after the last group none") {
    const Gym gym = bare();
    Section s = section(SectionKind::Strength,
                        {group(rounds(1, 1), secondsRange(60, 120), {slot("squat", reps(5, 5))}),
                         group(rounds(1, 1), secondsRange(10, 30), {slot("row", reps(5, 5))})});
    s.talk = Millis{45'000};
    const auto t = timed(gym, block("2026-09", {s}));
    CHECK(seconds(t.total.low) == 45 + 25 + 60 + 15);
    CHECK(seconds(t.total.planned) == 45 + 25 + 90 + 15);
    CHECK(seconds(t.total.high) == 45 + 25 + 120 + 15);
}

TEST_CASE("a session is its opening, its sections and its closing") {
    Gym gym = bare();
    gym.settings.opening = Millis{180'000};
    gym.settings.closing = Millis{120'000};
    const Section s =
        section(SectionKind::Strength,
                {group(rounds(1, 1), secondsRange(60, 60), {slot("row", reps(5, 5))})});
    const auto t = timed(gym, block("2026-09", {s, s}));
    CHECK(seconds(t.total.planned) == 300 + 2 * 15);
    REQUIRE(t.sections.size() == 2);
    CHECK(seconds(t.sections[1].total.planned) == 15);
    CHECK(seconds(timed(gym, block("2026-09", {})).total.high) == 300);
}

TEST_CASE("open slots and exercises that the Shelf does not have take no time, not even a set-up") {
    const Gym gym = bare();
    Slot open;
    open.dose = reps(10, 10);
    const Block draft = block(
        "2026-09",
        {section(SectionKind::Strength,
                 {group(rounds(2, 2), secondsRange(60, 60),
                        {open, slot("gone", reps(9, 9)), slot("row", reps(5, 5)), Slot{}})})});
    const auto t = timed(gym, draft);
    CHECK(seconds(t.total.planned) == 2 * 15 + 60);
    CHECK(t.openSlots == 2);
}

TEST_CASE("a week past the end of the stair is like its last") {
    const Gym gym = bare();
    Block draft = block(
        "2026-09", {section(SectionKind::Strength,
                            {group(rounds(2, 4), secondsRange(0, 0), {slot("row", reps(5, 5))})})});
    draft.stair = {{RoundsMode::Low, Rir{}, Intent::Learn, {}},
                   {RoundsMode::High, Rir{}, Intent::Challenge, {}}};
    CHECK(seconds(timed(gym, draft, 1).total.planned) == 30);
    CHECK(seconds(timed(gym, draft, 2).total.planned) == 60);
    CHECK(seconds(timed(gym, draft, 6).total.planned) == 60);
}
