// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ramp/class_plan.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Block pairDraft(std::string_view monthText = "2026-09") {
    return block(monthText,
                 {section(SectionKind::Strength,
                          {group(rounds(2, 3), secondsRange(60, 90),
                                 {slot("squat", reps(5, 5)), slot("row", reps(8, 10))})})});
}
Date day(std::string_view text) { return Date::parse(text).value(); }
Rir rir(double r) { return Rir::of(r).value(); }
constexpr Place kFirst{0, 0, 0}, kSecond{0, 0, 1};
} // namespace

TEST_CASE("the usual stair learns on low rounds, builds, and challenges in week 4") {
    const auto plan = classPlan(pairDraft(), kFirst);
    REQUIRE(plan.size() == 4);
    CHECK(plan[0].rounds == rounds(2, 2));
    for (const std::size_t week : {1U, 2U, 3U}) CHECK(plan[week].rounds == rounds(2, 3));
    const std::array<double, 4> reserves{4, 3, 2, 1};
    const std::array intents{Intent::Learn, Intent::Build, Intent::Build, Intent::Challenge};
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(plan[i].week.number() == static_cast<int>(i) + 1);
        CHECK(plan[i].rir == rir(reserves[i]));
        CHECK(plan[i].intent == intents[i]);
        CHECK(plan[i].dose == reps(5, 5));
    }
}

TEST_CASE("a slot's own effort is never passed, whatever the week says") {
    Block b = pairDraft();
    slotAt(b, kSecond)->effort = Range<Rir>::between(rir(2), rir(4));
    const auto plan = classPlan(b, kSecond);
    CHECK(plan[0].rir == rir(4));
    CHECK(plan[2].rir == rir(2));
    CHECK(plan[3].rir == rir(2));
}

TEST_CASE("the stair's reserve is for strength work, elsewhere only where the slot has an effort") {
    Block b = pairDraft();
    b.sections[0].kind = SectionKind::Finisher;
    CHECK_FALSE(classPlan(b, kFirst)[0].rir.has_value());
    slotAt(b, kFirst)->effort = Range<Rir>::between(rir(1), rir(3));
    CHECK(classPlan(b, kFirst)[0].rir == rir(4));
}

TEST_CASE("a high week takes the high rounds, and an open slot has no dose") {
    Block b = pairDraft();
    b.stair[3].rounds = RoundsMode::High;
    CHECK(classPlan(b, kFirst)[3].rounds == rounds(3, 3));
    *slotAt(b, kFirst) = Slot{};
    CHECK_FALSE(classPlan(b, kFirst)[0].dose.has_value());
    CHECK_THROWS_AS(classPlan(b, Place{0, 0, 7}), std::logic_error);
}

TEST_CASE("a week past the end of the stair has its last step") {
    Block month = pairDraft();
    month.stair.resize(2);
    const auto plan = classPlan(month, kFirst);
    REQUIRE(plan.size() == 2);
    for (const int week : {1, 2, 4}) {
        const PlanStep step = planStep(month, kFirst, Week::of(week).value());
        CHECK(step.week == plan[week == 1 ? 0 : 1].week);
        CHECK(step.rounds == plan[week == 1 ? 0 : 1].rounds);
    }
}

TEST_CASE("weeks go by sevens, and the rest of the month stays with the last") {
    const Block b = pairDraft();
    struct Row {
        const char* date;
        int week;
    };
    for (const auto& [date, number] : {Row{"2026-09-01", 1},
                                       {"2026-09-07", 1},
                                       {"2026-09-08", 2},
                                       {"2026-09-28", 4},
                                       {"2026-09-30", 4}}) {
        INFO(date);
        CHECK(weekOfDate(b, day(date)) == week(number));
    }
    CHECK_FALSE(weekOfDate(b, day("2026-08-31")).has_value());
    CHECK_FALSE(weekOfDate(b, day("2027-09-01")).has_value());
}

TEST_CASE("the days of the weeks make the month, once each") {
    for (const char* monthText : {"2026-09", "2027-02", "2026-12", "2028-02"})
        for (const std::size_t weeks : {1U, 2U, 4U, 6U}) {
            Block b = pairDraft(monthText);
            b.stair.resize(weeks, b.stair.back());
            Date next = day(std::string(monthText) + "-01");
            for (std::size_t w = 1; w <= weeks; ++w) {
                const auto [from, to] = daysOf(b, week(static_cast<int>(w)));
                CHECK(from == next);
                for (Date d = from; d < to; d = d.plusDays(1))
                    CHECK(weekOfDate(b, d)->number() == static_cast<int>(w));
                next = to;
            }
            CHECK(next.month() == b.month.plus(1));
            CHECK(next.text().ends_with("-01"));
        }
}
