// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/bench/minute_rail_plan.hpp"
#include "desk/bench/minute_rail_words.hpp"
#include "desk/rail_gym.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
RailPlan planOf(const RailGym& gym) {
    return RailPlan::of(gym.open->gym().settings, *gym.draft->block(), gym.draft->time());
}
constexpr ExactTime at(double s) { return ExactTime{static_cast<std::int64_t>(s * 4000)}; }
} // namespace

TEST_CASE("The rail lays opening, sections and closing end to end") {
    const RailPlan plan = planOf(RailGym());
    REQUIRE(plan.pieces.size() == 4);
    const ExactTime ends[] = {at(180), at(258), at(775.5), at(895.5)};
    ExactTime start{};
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(plan.pieces[i].start == start);
        CHECK(plan.pieces[i].end == ends[i]);
        start = plan.pieces[i].end;
    }
    CHECK(plan.total.planned == at(895.5));
    CHECK(plan.openSlots == 1);
    CHECK(plan.pieces[2].openSlots == 1);
    CHECK(plan.pieces[1].openSlots == 0);
}

TEST_CASE("A section's short and long ends are counted from its own start") {
    const RailPlan plan = planOf(RailGym());
    CHECK(plan.pieces[2].earliest() == at(258 + 390));
    CHECK(plan.pieces[2].latest() == at(258 + 675));
}

TEST_CASE("Groups stand behind the talk, with the rest between them") {
    const auto groups = planOf(RailGym()).pieces[2].groups;
    REQUIRE(groups.size() == 2);
    CHECK(groups[0].letter == "B");
    CHECK(groups[0].start == at(258 + 60));
    CHECK(groups[0].end == at(258 + 60 + 247.5));
    CHECK(groups[1].letter == "C");
    CHECK(groups[1].start == groups[0].end + at(90));
    CHECK(groups[1].end == planOf(RailGym()).pieces[2].end);
    CHECK(groups[1].openSlots == 1);
}

TEST_CASE("The scale holds the class, and grows in steps of five minutes with what is longer") {
    CHECK(planOf(RailGym(20)).span == std::chrono::minutes(25));
    CHECK(planOf(RailGym(10)).span == std::chrono::minutes(20)); // the long end is at 15:33
    CHECK(planOf(RailGym(60)).span == std::chrono::minutes(65));
}

TEST_CASE("A step along the rail stays among sections, or among groups") {
    const RailPlan plan = planOf(RailGym());
    const Place warmUp{0}, strength{1}, a{0, 0}, b{1, 0}, c{1, 1};
    CHECK(plan.beside(warmUp, 1) == strength);
    CHECK(plan.beside(strength, 1) == strength);
    CHECK(plan.beside(warmUp, -1) == warmUp);
    CHECK(plan.beside(a, 1) == b);
    CHECK(plan.beside(b, 1) == c);
    CHECK(plan.beside(c, 1) == c);
    CHECK(plan.beside(b, -1) == a);
    CHECK(plan.beside({7, 3}, 1) == warmUp);
    CHECK(plan.first() == warmUp);
    CHECK(plan.last() == strength);
}

TEST_CASE("Places that are not on the rail are not found") {
    const RailPlan plan = planOf(RailGym());
    CHECK(plan.sectionAt({}) == nullptr);
    CHECK(plan.sectionAt({2}) == nullptr); // the closing is no section
    CHECK(plan.groupAt({1, 2}) == nullptr);
    CHECK(plan.groupAt({1}) == nullptr);
    REQUIRE(plan.groupAt({1, 1, 0}) != nullptr);
    CHECK(plan.groupAt({1, 1, 0})->letter == "C");
    CHECK(RailPlan{}.first().isSession());
    CHECK(RailPlan{}.last().isSession());
}

TEST_CASE("The rail in words says the whole, then each piece against its budget") {
    CHECK(railSummary(planOf(RailGym())).toStdString() ==
          "Planned 14:56 of 20:00, 5:04 to spare. Short 12:48, long 17:33. Opening 3:00. "
          "Warm-up 1:18 in 1–2 min. Strength 8:38 in 7–8 min. Closing 2:00. "
          "1 open slot takes no time yet.");
    CHECK(railSummary(RailPlan{}).toStdString() ==
          "There is no month yet: start one to see its hour.");
}

TEST_CASE("The headline says how much is left, or how much is over") {
    CHECK(railHeadline(planOf(RailGym(20)))[1] == "5:04 to spare");
    CHECK(railHeadline(planOf(RailGym(10)))[1] == "4:56 over");
    RailPlan full = planOf(RailGym(20));
    full.total.planned = full.wall;
    CHECK(railHeadline(full)[1] == "exactly full");
    CHECK(railHeadline(RailPlan{}).size() == 1);
}

TEST_CASE("A piece says planned, short, long and its budget") {
    const RailPlan plan = planOf(RailGym());
    CHECK(pieceSentence(plan.pieces[0]) == "Opening: 3:00.");
    CHECK(pieceSentence(plan.pieces[2]).toStdString() ==
          "Strength: planned 8:38; short 6:30, long 11:15; budget 7–8 min; "
          "1 open slot takes no time yet.");
    CHECK(groupSentence(plan.pieces[2], plan.pieces[2].groups[0]).toStdString() ==
          "Strength, group B: planned 4:08; short 2:30, long 6:15.");
}

TEST_CASE("Clocks and budgets are written as on the ruler") {
    CHECK(railClock(at(3600)) == "60:00");
    CHECK(railClock(at(59.5)) == "1:00");
    CHECK(railClock(at(0)) == "0:00");
    CHECK(railBudget(secondsRange(480, 720)).toStdString() == "8–12 min");
    CHECK(railBudget(secondsRange(450, 720)).toStdString() == "7:30–12:00");
    CHECK(railBudget(secondsRange(300, 300)).toStdString() == "5 min");
}
