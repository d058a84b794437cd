// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/almanac/almanac.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
struct Use {
    const char* exercise;
    bool main = false;
};

Block monthOf(std::string_view text, std::optional<Format> format, const std::vector<Use>& uses) {
    std::vector<Slot> slots;
    for (const Use& use : uses) {
        slots.push_back(slot(use.exercise, reps(5, 5)));
        slots.back().main = use.main;
    }
    Block b = block(text, {section(SectionKind::Strength,
                                   {group(rounds(2, 3), secondsRange(60, 90), std::move(slots))})});
    b.format = format;
    return b;
}

// January to June 2026 without a block in April.
Gym gymWithGap() {
    Gym gym;
    gym.shelf.put(exercise("squat", Pattern::Squat));
    gym.shelf.put(exercise("press", Pattern::HorizontalPush));
    gym.shelf.put(exercise("row", Pattern::HorizontalPull));
    using enum Format;
    gym.put(monthOf("2026-01", Opposed, {{"squat", true}, {"row"}}));
    gym.put(monthOf("2026-02", Opposed, {{"squat", true}, {"press"}}));
    gym.put(monthOf("2026-03", RoundTrip, {{"squat"}, {"press", true}}));
    gym.put(monthOf("2026-05", RoundTrip, {{"squat", true}, {"press"}}));
    gym.put(monthOf("2026-06", {}, {{"squat", true}, {"squat"}, {"row"}}));
    return gym;
}

const AlmanacRow& rowOf(const Almanac& a, std::string_view id) {
    for (const AlmanacRow& row : a.rows)
        if (row.exercise.text() == id) return row;
    throw std::runtime_error("no such row");
}
std::vector<int> streaks(const AlmanacRow& row) {
    std::vector<int> out;
    for (const AlmanacCell& c : row.cells) out.push_back(c.streak);
    return out;
}
std::vector<int> mains(const AlmanacRow& row) {
    std::vector<int> out;
    for (const AlmanacCell& c : row.cells) out.push_back(c.mainStreak);
    return out;
}
} // namespace

TEST_CASE("The almanac has a column for every month, also for those without a block") {
    const Almanac a = almanac(gymWithGap());
    REQUIRE(a.months.size() == 6);
    CHECK(a.months.front().month == month("2026-01"));
    CHECK(a.months.back().month == month("2026-06"));
    CHECK(a.months[3].month == month("2026-04"));
    CHECK_FALSE(a.months[3].block);
    CHECK(a.months[4].block->month == month("2026-05"));
    for (const AlmanacRow& row : a.rows) CHECK(row.cells.size() == 6);
}

TEST_CASE("A streak counts calendar months in a row, and begins again after a gap") {
    const Almanac a = almanac(gymWithGap());
    CHECK(streaks(rowOf(a, "squat")) == std::vector<int>{1, 2, 3, 0, 1, 2});
    CHECK(mains(rowOf(a, "squat")) == std::vector<int>{1, 2, 0, 0, 1, 2});
    CHECK(streaks(rowOf(a, "press")) == std::vector<int>{0, 1, 2, 0, 1, 0});
    CHECK(mains(rowOf(a, "press")) == std::vector<int>{0, 0, 1, 0, 0, 0});
    CHECK(streaks(rowOf(a, "row")) == std::vector<int>{1, 0, 0, 0, 0, 1});
}

TEST_CASE("An exercise with two slots in a month, one of them the main lift, is a main lift once") {
    const Almanac a = almanac(gymWithGap());
    CHECK(rowOf(a, "squat").cells[5] == AlmanacCell{true, false, 2, 2});
}

TEST_CASE("A shorter view counts on from the months before it") {
    const Almanac a = almanac(gymWithGap(), {2, month("2026-03")});
    REQUIRE(a.months.size() == 2);
    CHECK(streaks(rowOf(a, "squat")) == std::vector<int>{2, 3});
    CHECK(a.formats[static_cast<std::size_t>(Format::Opposed)].streaks == std::vector<int>{2, 0});
    CHECK(rowOf(a, "row").last == month("2026-01")); // as seen from March
    CHECK_FALSE(rowOf(a, "row").usedInView());
    CHECK(rowOf(a, "press").usedInView());
}

TEST_CASE("First and last use are told for every exercise used so far") {
    const Almanac a = almanac(gymWithGap());
    CHECK(rowOf(a, "row").first == month("2026-01"));
    CHECK(rowOf(a, "row").last == month("2026-06"));
    CHECK(rowOf(a, "press").first == month("2026-02"));
    CHECK(rowOf(a, "press").last == month("2026-05"));
}

TEST_CASE("New is what no earlier month used; in the first month nothing is") {
    const Almanac a = almanac(gymWithGap());
    CHECK(a.months[0].fresh.empty());
    CHECK(a.months[1].fresh == std::vector{ex("press")});
    for (const std::size_t m : {2U, 3U, 4U, 5U}) CHECK(a.months[m].fresh.empty());
    CHECK(rowOf(a, "press").cells[1].fresh);
    CHECK_FALSE(rowOf(a, "press").cells[4].fresh); // back after a gap, not new
    CHECK_FALSE(rowOf(a, "squat").cells[0].fresh);
    const Almanac later = almanac(gymWithGap(), {1, month("2026-02")});
    CHECK(later.months[0].fresh == std::vector{ex("press")});
}

TEST_CASE("Each format has its months, its streak and when it was last used") {
    const Almanac a = almanac(gymWithGap());
    REQUIRE(a.formats.size() == kCount<Format>);
    const auto& opposed = a.formats[static_cast<std::size_t>(Format::Opposed)];
    CHECK(opposed.format == Format::Opposed);
    CHECK(opposed.streaks == std::vector<int>{1, 2, 0, 0, 0, 0});
    CHECK(opposed.last == month("2026-02"));
    const auto& round = a.formats[static_cast<std::size_t>(Format::RoundTrip)];
    CHECK(round.streaks == std::vector<int>{0, 0, 1, 0, 1, 0});
    CHECK_FALSE(a.formats[static_cast<std::size_t>(Format::StraightHeavy)].last);
}

TEST_CASE("Rows go by pattern, then name; what the Shelf lacks or can't place comes last") {
    Gym gym = gymWithGap();
    Exercise mixed = exercise("air-squat", Pattern::Squat);
    mixed.name = "Air squat";
    gym.shelf.put(mixed);
    Exercise unplaced = exercise("zz", Pattern::Squat);
    unplaced.patterns = {};
    gym.shelf.put(unplaced);
    gym.put(monthOf("2026-07", {}, {{"zz"}, {"gone"}, {"air-squat"}}));
    const Almanac a = almanac(gym);
    std::vector<std::string> ids;
    for (const AlmanacRow& row : a.rows) ids.push_back(row.exercise.text());
    CHECK(ids == std::vector<std::string>{"air-squat", "squat", "press", "row", "gone", "zz"});
    CHECK_FALSE(rowOf(a, "gone").entry);
    CHECK(rowOf(a, "gone").name() == "gone");
    CHECK_FALSE(rowOf(a, "zz").pattern());
}

TEST_CASE("The main pattern is the one with the largest share") {
    Gym gym = gymWithGap();
    Exercise e = exercise("squat", Pattern::Squat);
    e.patterns = Shares<Pattern>::of({{Pattern::Squat, Share::of(0.4).value()},
                                      {Pattern::Carry, Share::of(0.6).value()}})
                     .value();
    gym.shelf.put(e);
    CHECK(rowOf(almanac(gym), "squat").pattern() == Pattern::Carry);
}

TEST_CASE("Open slots are no use of anything, and a gym without months has an empty almanac") {
    CHECK(almanac(Gym{}).months.empty());
    CHECK(almanac(Gym{}).rows.empty());
    Gym gym;
    Block b = monthOf("2026-01", {}, {});
    b.sections[0].groups[0].slots = {Slot{}};
    gym.put(std::move(b));
    const Almanac a = almanac(gym);
    CHECK(a.months.size() == 1);
    CHECK(a.rows.empty());
}

TEST_CASE("The view never begins before the gym's first month, nor ends for want of calendar") {
    CHECK(almanac(gymWithGap(), {36, {}}).months.size() == 6);
    CHECK(almanac(gymWithGap(), {0, {}}).months.size() == 6);
    const Almanac early = almanac(gymWithGap(), {12, month("2025-03")});
    REQUIRE(early.months.size() == 1); // before anything
    CHECK(early.rows.empty());
    const Almanac far = almanac(gymWithGap(), {0, month("2999-12")});
    CHECK(far.months.size() == 1200);
    CHECK(far.months.back().month == month("2999-12"));
    CHECK_FALSE(rowOf(far, "squat").usedInView());
}

TEST_CASE("Each month has its own balance, and the window that of the last three months") {
    const Gym gym = gymWithGap();
    const Almanac a = almanac(gym);
    CHECK(a.months[1].balance == measureBalance(gym, *gym.block(month("2026-02"))));
    CHECK(a.months[3].balance == Balance{});
    // April has no block: the window ending in June is May and June.
    CHECK(a.window == balancesOf(gym, *gym.block(month("2026-06"))).window);
    CHECK(a.window.weeks == 8);
    const Almanac april = almanac(gym, {12, month("2026-04")});
    CHECK(april.window.weeks == 8); // February and March
}
