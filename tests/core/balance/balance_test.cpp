// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/balance/balance.hpp"

#include "blockwright/balance/rows.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <cmath>

using namespace bw;
using namespace bw::test;

namespace {
MuscleId muscle(std::string_view id) { return MuscleId::parse(id).value(); }
Share share(double part) { return Share::of(part).value(); }

Exercise mixed(std::string_view id, std::vector<std::pair<Pattern, Share>> patterns,
               std::map<MuscleId, Share> muscles = {}) {
    Exercise e = exercise(id, Pattern::Squat);
    e.patterns = Shares<Pattern>::of(patterns).value();
    e.muscles = std::move(muscles);
    return e;
}

// One slot a group, everything in one section of each kind.
Block session(std::string_view month, std::vector<std::pair<SectionKind, const char*>> rows,
              Range<int> times = rounds(2, 3)) {
    std::vector<Section> sections;
    for (const auto& [kind, id] : rows)
        sections.push_back(
            section(kind, {group(times, secondsRange(0, 0), {slot(id, reps(5, 5))})}));
    return block(month, std::move(sections));
}

Gym oneOfEach() {
    Gym gym;
    gym.shelf.put(exercise("squat", Pattern::Squat));
    gym.shelf.put(exercise("hinge", Pattern::Hinge));
    gym.shelf.put(exercise("push", Pattern::HorizontalPush));
    gym.shelf.put(exercise("press", Pattern::VerticalPush));
    gym.shelf.put(exercise("row", Pattern::HorizontalPull));
    gym.shelf.put(exercise("pull", Pattern::VerticalPull));
    return gym;
}
constexpr auto kStrength = SectionKind::Strength;
} // namespace

TEST_CASE("the sets of a slot are the week's rounds times the weight of its section") {
    Gym gym = oneOfEach();
    const Block b = session("2026-09", {{SectionKind::WarmUp, "squat"},
                                        {SectionKind::Power, "hinge"},
                                        {kStrength, "push"},
                                        {SectionKind::Finisher, "row"}});
    // The standard stair: week 1 low rounds (2), the others the middle (2.5).
    const Balance first = measureBalance(gym, b, week(1));
    CHECK(first.of(Pattern::Squat) == 0.5);
    CHECK(first.of(Pattern::Hinge) == 1);
    CHECK(first.of(Pattern::HorizontalPush) == 2);
    CHECK(first.of(Pattern::HorizontalPull) == 1);
    CHECK(first.sets == 4.5);
    CHECK(measureBalance(gym, b, week(2)).of(Pattern::HorizontalPush) == 2.5);
    gym.settings.weights.of[static_cast<std::size_t>(SectionKind::WarmUp)] = share(0.1);
    CHECK(measureBalance(gym, b, week(1)).of(Pattern::Squat) == 0.2);
}

TEST_CASE("without a week the weeks of the stair are averaged") {
    const Gym gym = oneOfEach();
    Block b = session("2026-09", {{kStrength, "squat"}});
    CHECK(measureBalance(gym, b).of(Pattern::Squat) == (2 + 2.5 + 2.5 + 2.5) / 4);
    CHECK(measureBalance(gym, b).weeks == 4);
    b.stair.resize(1);
    CHECK(measureBalance(gym, b).of(Pattern::Squat) == 2);
    b.stair[0].rounds = RoundsMode::High;
    CHECK(measureBalance(gym, b).of(Pattern::Squat) == 3);
}

TEST_CASE("an exercise of several patterns feeds each by its share, exactly") {
    Gym gym;
    gym.shelf.put(mixed("goblet", {{Pattern::Squat, share(0.9)}, {Pattern::Carry, share(0.1)}}));
    std::vector<std::pair<SectionKind, const char*>> rows(10, {kStrength, "goblet"});
    const Balance b = measureBalance(gym, session("2026-09", rows, rounds(3, 3)));
    CHECK(b.of(Pattern::Squat) == 27); // no 26.999999999999996
    CHECK(b.of(Pattern::Carry) == 3);
}

TEST_CASE("ratios are of the patterns they name, and none when nothing is under the line") {
    const Gym gym = oneOfEach();
    const Balance b = measureBalance(gym, session("2026-09", {{kStrength, "push"},
                                                              {kStrength, "press"},
                                                              {kStrength, "row"},
                                                              {kStrength, "squat"},
                                                              {SectionKind::Power, "hinge"}}));
    CHECK(b.pushPull().value() == 2.0);
    CHECK(b.kneeHip().value() == 2.0);
    CHECK(b.horizontalVertical().value() == 2.0);
    CHECK(b.oneSidedShare().value() == 0.0);
    const Balance onlySquat = measureBalance(gym, session("2026-09", {{kStrength, "squat"}}));
    CHECK_FALSE(onlySquat.pushPull().value());
    CHECK_FALSE(onlySquat.kneeHip().value());
    CHECK(onlySquat.kneeHip().over == 2.375);
    const Balance nothing = measureBalance(gym, session("2026-09", {}));
    CHECK_FALSE(nothing.oneSidedShare().value());
    CHECK_FALSE(nothing.planeShare(Plane::Sagittal).value());
}

TEST_CASE("each and alternating are one side at a time") {
    Gym gym = oneOfEach();
    for (const auto sides : {Sides::Each, Sides::Alternating}) {
        Exercise e = exercise("lunge", Pattern::Lunge);
        e.sides = sides;
        gym.shelf.put(e);
        const Block b = session("2026-09", {{kStrength, "squat"}, {kStrength, "lunge"}});
        CHECK(measureBalance(gym, b).oneSidedShare().value() == 0.5);
    }
}

TEST_CASE("planes are shares of the sets whose planes are told") {
    Gym gym = oneOfEach();
    Exercise chop = exercise("chop", Pattern::Rotation);
    chop.planes =
        Shares<Plane>::of({{Plane::Transverse, share(0.75)}, {Plane::Frontal, share(0.25)}})
            .value();
    gym.shelf.put(chop);
    Exercise untold = exercise("untold", Pattern::Rotation);
    untold.planes = {};
    gym.shelf.put(untold);
    const Balance b = measureBalance(
        gym,
        session("2026-09", {{kStrength, "squat"}, {kStrength, "chop"}, {kStrength, "untold"}}));
    CHECK(b.planeShare(Plane::Sagittal).value() == 0.5);
    CHECK(b.planeShare(Plane::Frontal).value() == 0.125);
    CHECK(b.planeShare(Plane::Transverse).value() == 0.375);
}

TEST_CASE("hard sets count every visit, strength in full, the finisher by its weight") {
    Gym gym;
    for (const char* id : {"a", "b", "c", "d"})
        gym.shelf.put(
            mixed(id, {{Pattern::Squat, Share::whole()}},
                  {{muscle("quadriceps"), Share::whole()}, {muscle("glutes"), share(0.5)}}));
    Block b = session("2026-09", {{SectionKind::WarmUp, "a"},
                                  {SectionKind::Power, "b"},
                                  {kStrength, "c"},
                                  {SectionKind::Finisher, "d"}});
    b.visitsPerWeek = 2;
    gym.settings.weights.of[static_cast<std::size_t>(kStrength)] = share(0.8); // still in full
    const Balance first = measureBalance(gym, b, week(1));
    CHECK(first.hardSets(muscle("quadriceps")) == 2 * 2 + 2 * 2 * 0.5);
    CHECK(first.hardSets(muscle("glutes")) == 3);
    CHECK(first.hardSets(muscle("chest")) == 0);
    CHECK(first.muscles.size() == 2);
}

TEST_CASE("a gym may count every muscle that only helps alike") {
    Gym gym;
    gym.shelf.put(mixed("bench", {{Pattern::HorizontalPush, Share::whole()}},
                        {{muscle("chest"), Share::whole()}, {muscle("triceps"), share(0.25)}}));
    const Block b = session("2026-09", {{kStrength, "bench"}}, rounds(2, 2));
    CHECK(measureBalance(gym, b).hardSets(muscle("triceps")) == 1.5);
    const auto counted = [&](double indirect) {
        gym.settings.limits["balance.indirect_share"] = {indirect, indirect, false};
        CHECK(measureBalance(gym, b).hardSets(muscle("chest")) == 6);
        return measureBalance(gym, b).hardSets(muscle("triceps"));
    };
    CHECK(counted(0.5) == 3);
    CHECK(counted(1) == 6);
    CHECK(counted(0) == 1.5); // as the Shelf says
    CHECK(counted(7) == 1.5); // no share at all
}

TEST_CASE("open slots and exercises that the Shelf lacks count nothing") {
    const Gym gym = oneOfEach();
    Block b = session("2026-09", {{kStrength, "squat"}, {kStrength, "nobody-knows-it"}});
    b.sections[0].groups[0].slots.push_back(Slot{});
    CHECK(measureBalance(gym, b).sets == 2.375);
    CHECK(slotSets(gym, b).size() == 1);
}

TEST_CASE("the window is this month and the stored ones before it, by the calendar") {
    Gym gym = oneOfEach();
    for (const char* m : {"2026-05", "2026-07", "2026-08", "2026-09", "2026-10"})
        gym.put(session(m, {{kStrength, "push"}}));
    const Block draft = session("2026-09", {{kStrength, "row"}}); // stored otherwise
    const auto months = [&] {
        std::vector<std::string> out;
        for (const Block* b : windowOf(gym, draft)) out.push_back(b->month.text());
        return out;
    };
    CHECK(windowMonths(gym.settings) == 3);
    CHECK(months() == std::vector<std::string>{"2026-09", "2026-08", "2026-07"});
    CHECK(windowOf(gym, draft)[0] == &draft);
    gym.settings.limits["balance.window_months"] = {4, 4, false};
    CHECK(months() == std::vector<std::string>{"2026-09", "2026-08", "2026-07"});
    gym.settings.limits["balance.window_months"] = {5, 5, false};
    CHECK(months().back() == "2026-05");
    gym.settings.limits["balance.window_months"] = {-3, -3, false};
    CHECK(months() == std::vector<std::string>{"2026-09"});
    gym.settings.limits["balance.window_months"] = {1e9, 1e9, false};
    CHECK(windowMonths(gym.settings) == 36);
}

TEST_CASE("the window averages all weeks of its months; a week is asked of the block alone") {
    Gym gym = oneOfEach();
    Block before = session("2026-08", {{kStrength, "push"}}, rounds(4, 4));
    before.stair.resize(2);
    gym.put(before);
    const Block draft = session("2026-09", {{kStrength, "row"}}); // 2, 2.5, 2.5, 2.5
    const Balances both = balancesOf(gym, draft, week(1));
    CHECK(both.window.weeks == 6);
    CHECK(both.window.of(Pattern::HorizontalPush) == Approx(8.0 / 6).epsilon(1e-15));
    CHECK(both.window.of(Pattern::HorizontalPull) == Approx(9.5 / 6).epsilon(1e-15));
    CHECK(both.block.of(Pattern::HorizontalPull) == 2);
    CHECK(both.block.weeks == 1);
    CHECK(balancesOf(gym, draft).window == both.window);
    CHECK(measureBalance(gym, std::vector<const Block*>{}) == Balance{});
}

TEST_CASE("the rows behind a tally add up to it, largest first") {
    Gym gym;
    gym.shelf.put(mixed("goblet", {{Pattern::Squat, share(0.9)}, {Pattern::Carry, share(0.1)}},
                        {{muscle("quadriceps"), Share::whole()}}));
    gym.shelf.put(mixed("deadlift", {{Pattern::Squat, share(0.5)}, {Pattern::Hinge, share(0.5)}},
                        {{muscle("quadriceps"), share(0.5)}}));
    Exercise lunge = exercise("lunge", Pattern::Lunge);
    lunge.sides = Sides::Each;
    gym.shelf.put(lunge);
    const Block b =
        session("2026-09",
                {{kStrength, "deadlift"}, {kStrength, "goblet"}, {SectionKind::Finisher, "lunge"}});
    const Balance whole = measureBalance(gym, b);
    const auto slots = slotSets(gym, b);
    const auto sum = [&](const Tally& tally) {
        double total = 0;
        for (const TallyRow& row : rowsBehind(gym.settings, slots, tally)) total += row.sets;
        return total;
    };
    for (std::size_t i = 0; i < kCount<Pattern>; ++i)
        CHECK(sum(static_cast<Pattern>(i)) == Approx(whole.patterns[i]));
    CHECK(sum(Plane::Sagittal) == Approx(whole.planes[0]));
    CHECK(sum(OneSided{}) == Approx(whole.oneSided));
    CHECK(sum(muscle("quadriceps")) == Approx(whole.hardSets(muscle("quadriceps"))));
    const auto squats = rowsBehind(gym.settings, slots, Pattern::Squat);
    REQUIRE(squats.size() == 2);
    CHECK(squats[0].place == Place{1, 0, 0});
    CHECK(squats[1].place == Place{0, 0, 0});
    CHECK(rowsBehind(gym.settings, slots, muscle("neck")).empty());
}
