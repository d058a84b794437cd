// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/time/timing.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Gym small() {
    Gym gym;
    gym.settings.opening = gym.settings.closing = Millis{0};
    gym.shelf.put(exercise("squat", Pattern::Squat, 3.0, 10));
    return gym;
}
} // namespace

TEST_CASE("a set takes its reps times the tempo, whatever the exercise's own pace") {
    const auto e = exercise("squat", Pattern::Squat, 2.0);
    CHECK(setWork(reps(5, 5), Tempo::parse("20X1").value(), e).middle == Millis{20'000});
    CHECK(setWork(reps(5, 5), std::nullopt, e).middle == Millis{10'000});
}

TEST_CASE("two and a half rounds have one and a half rests between them") {
    Gym gym = small();
    const Block draft =
        block("2026-09", {section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 120),
                                                                {slot("squat", reps(5, 10))})})});
    const auto t = timeSession(gym.settings, gym.shelf, draft, week(2));
    CHECK(seconds(t.total.low) == 2 * 25 + 60);
    CHECK(seconds(t.total.high) == 3 * 40 + 2 * 120);
    CHECK(seconds(t.total.planned) == Approx(2.5 * 32.5 + 1.5 * 90));
    CHECK(seconds(timeSession(gym.settings, gym.shelf, draft, week(1)).total.planned) == 2 * 32.5 + 90);
}
