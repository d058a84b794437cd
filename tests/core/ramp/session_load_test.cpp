// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ramp/session_load.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
// One group of one exercise: 2 rounds of 5 reps at 12 s, 60 s between, 3 min before and 2 min
// after. Low rounds: 8 min; open: 2.5 rounds, 9 min.
struct Short {
    Gym gym;
    Block draft =
        block("2026-09", {section(SectionKind::Strength, {group(rounds(2, 3), secondsRange(60, 60),
                                                                {slot("squat", reps(5, 5))})})});
    Short() { gym.shelf.put(exercise("squat", Pattern::Squat, 12.0)); }
};

LiftResult lifted(std::string_view date, std::optional<double> rir, int set = 1) {
    LiftResult r{MemberId::parse("m-1").value(),
                 Date::parse(date).value(),
                 ex("squat"),
                 set,
                 5,
                 {},
                 Mass::fromKg(60).value(),
                 {}};
    if (rir) r.rir = Rir::of(*rir).value();
    return r;
}
} // namespace

TEST_CASE("a planned week is minutes times effort times visits") {
    const Short m;
    const auto weeks = plannedLoads(m.gym, m.draft);
    REQUIRE(weeks.size() == 4);
    CHECK(weeks[0].minutes == Approx(8.0));
    CHECK(weeks[1].minutes == Approx(9.0));
    CHECK(weeks[0].rpe == 6);
    CHECK(weeks[3].rpe == 9);
    CHECK(weeks[0].load.total == Approx(3 * 8.0 * 6));
    CHECK(weeks[3].load.total == Approx(3 * 9.0 * 9));
    CHECK(weeks[0].load.monotony.value() == Approx(0.8660).margin(0.00005)); // sqrt(3 / 4)
}

TEST_CASE("more visits than days go twice on some days, and seven alike have no monotony") {
    Short m;
    m.draft.visitsPerWeek = 7;
    CHECK_FALSE(plannedLoads(m.gym, m.draft)[0].load.monotony.has_value());
    CHECK(loadCaveats(m.draft).size() == 2);
    m.draft.visitsPerWeek = 9;
    const auto week = plannedLoads(m.gym, m.draft)[0];
    CHECK(week.load.total == Approx(9 * 8.0 * 6));
    CHECK(week.load.deviation > 0);
}

TEST_CASE("a member's week counts the days they came, at the effort they wrote down") {
    const Short m;
    const std::vector results{lifted("2026-08-31", 0.0), lifted("2026-09-01", 4.0, 1),
                              lifted("2026-09-01", 2.0, 2), lifted("2026-09-03", {}),
                              lifted("2026-09-29", 1.0)};
    const auto weeks = memberLoads(m.gym, m.draft, results);
    REQUIRE(weeks.size() == 4);
    CHECK(weeks[0].visits == 2);
    CHECK(weeks[0].reckoned == 1);
    CHECK(weeks[0].load.total == Approx(8.0 * 7 + 8.0 * 6)); // RPE 7, and 6 as planned
    CHECK(weeks[0].rpe == Approx(6.5));
    CHECK(weeks[0].days == 7);
    CHECK(weeks[1].visits == 0);
    CHECK(weeks[1].load.total == 0);
    CHECK_FALSE(weeks[1].load.monotony.has_value());
    CHECK(weeks[3].days == 9); // 22 to 30 September
    CHECK(weeks[3].load.total == Approx(9.0 * 9));
}

TEST_CASE("what the figures can't say is said") {
    const auto words = loadCaveats(Short{}.draft);
    REQUIRE(words.size() == 3);
    CHECK(words[2].english() == "With 3 like sessions a week monotony is always 0.87, so it says "
                                "next to nothing here.");
}
