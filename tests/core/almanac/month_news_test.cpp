// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/talk_plan.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Slot used(const char* id, bool main = false) {
    Slot s = slot(id, reps(5, 5));
    s.main = main;
    return s;
}

Block monthOf(const char* text, std::vector<Slot> slots) {
    return block(text, {section(SectionKind::Strength,
                                {group(rounds(2, 3), secondsRange(60, 90), std::move(slots))})});
}

// June: squat (main), row. July: squat (main), press.
Gym twoMonths() {
    Gym gym;
    gym.put(monthOf("2026-06", {used("squat", true), used("row")}));
    gym.put(monthOf("2026-07", {used("squat", true), used("press")}));
    return gym;
}

const NewsLine& lineOf(const MonthNews& news, const char* id) {
    for (const NewsLine& line : news.lines)
        if (line.exercise == ex(id)) return line;
    throw std::runtime_error(id);
}
} // namespace

TEST_CASE("a month's news tells new, back, carried on and gone") {
    const Block august =
        monthOf("2026-08", {used("hinge"), used("squat", true), used("row"), used("row"), Slot{}});
    const MonthNews news = monthNews(twoMonths(), august);
    REQUIRE(news.previous);
    CHECK(*news.previous == month("2026-07"));
    REQUIRE(news.lines.size() == 3); // once each, in order of the session
    CHECK(news.lines[0] == NewsLine{ex("hinge"), {0, 0, 0}, true, true, 0, {}});
    CHECK(news.lines[1] == NewsLine{ex("squat"), {0, 0, 1}, false, false, 3, {}});
    CHECK(news.lines[2] == NewsLine{ex("row"), {0, 0, 2}, true, false, 0, month("2026-06")});
    REQUIRE(news.gone.size() == 1);
    CHECK(news.gone[0] == ex("press"));
}

TEST_CASE("a gap of a month ends a streak, and the month before the gap is compared with") {
    const MonthNews news =
        monthNews(twoMonths(), monthOf("2026-09", {used("squat", true), used("press")}));
    CHECK(*news.previous == month("2026-07"));
    CHECK(lineOf(news, "squat").mainStreak == 1);
    CHECK_FALSE(lineOf(news, "press").changed);
}

TEST_CASE("in a gym's first month nothing is new") {
    const MonthNews news = monthNews(twoMonths(), monthOf("2026-05", {used("hinge")}));
    CHECK_FALSE(news.previous);
    CHECK_FALSE(news.lines[0].changed);
    CHECK_FALSE(news.lines[0].fresh);
    CHECK(news.gone.empty());
}

TEST_CASE("the month's own stored draft is no history of it") {
    Gym gym = twoMonths();
    const MonthNews news = monthNews(gym, *gym.block(month("2026-07")));
    CHECK(*news.previous == month("2026-06"));
    CHECK(lineOf(news, "press").fresh);
}

TEST_CASE("a talk takes new exercises first, then the weeks, one part after the other") {
    const Block august = monthOf("2026-08", {used("squat", true), used("row"), used("hinge")});
    const auto plan = talkPlan(monthNews(twoMonths(), august), august);
    std::vector<TalkPart> parts;
    Millis end{0};
    for (const TalkItem& item : plan) {
        parts.push_back(item.part);
        CHECK(item.from == end);
        CHECK(item.length > Millis{0});
        end = item.from + item.length;
    }
    using enum TalkPart;
    CHECK(parts == std::vector{Month, New, Back, Stays, Week, Week, Week, Week, Care, Questions});
    CHECK(plan[1].lines[0].exercise == ex("hinge"));
    CHECK(plan[5].week == week(2));
    CHECK(talkLength(plan) == end);
}

TEST_CASE("a talk of a first month has nothing that is new or stays") {
    const Block first = monthOf("2026-05", {used("squat")});
    for (const TalkItem& item : talkPlan(monthNews(Gym{}, first), first))
        CHECK((item.part != TalkPart::New && item.part != TalkPart::Back &&
               item.part != TalkPart::Stays));
}
