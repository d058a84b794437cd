// SPDX-License-Identifier: GPL-3.0-or-later
// Figures over many runs, the best start, what buys the most, and what is refused.
#include "core/floor/floor_random.hpp"
#include "core/floor/head_counts.hpp"
#include "core/floor/tally.hpp"
#include "support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

namespace bw::test {

namespace {
// Two bikes, one rower, pairs of bells short: waits of every kind, in sections of two and three
// groups.
TinyGym busyGym() {
    TinyGym t;
    t.gym.settings.classMinutes = 12;
    t.own("bike", 1, Claim::Set).own("rower", 1, Claim::Set).own("bell", 3, Claim::Group);
    t.add({group(rounds(1, 2), secondsRange(10, 30), {t.work(40, {{{"bike", 1}}})}),
           group(rounds(1, 2), secondsRange(10, 30), {t.work(30, {{{"bell", 2}}}), t.work(20)})})
        .budget = secondsRange(100, 200);
    t.add({onceThrough({t.work(30, {{{"rower", 1}}})}, 5), onceThrough({t.work(25)}, 5),
           onceThrough({t.work(20, {{{"bike", 1}}, {{"rower", 1}}})}, 5)});
    return t;
}
FloorOptions manyRuns(int members = 4, int runs = 60) {
    FloorOptions o;
    o.members = members;
    o.runs = runs;
    return o;
}
FloorAnswer played(const TinyGym& t, const FloorOptions& o) {
    return simulateFloor(t.gym, t.draft, o).value();
}
std::string refusal(const TinyGym& t, const FloorOptions& o) {
    const auto result = simulateFloor(t.gym, t.draft, o);
    REQUIRE(!result.ok());
    return result.why().english();
}
double meanWait(const FloorAnswer& a) { return a.wait.mean.count(); }
} // namespace

TEST_CASE("percentiles stand at the index of the rule") {
    CHECK(percentileIndex(90, 1) == 0);
    CHECK(percentileIndex(10, 10) == 0);
    CHECK(percentileIndex(50, 10) == 4);
    CHECK(percentileIndex(90, 10) == 8);
    CHECK(percentileIndex(90, 11) == 9);
    CHECK(percentileIndex(50, 11) == 5);
}

TEST_CASE("waits that were none count in mean and percentile") {
    WaitSample sample;
    for (const Ticks w : {0, 500, 0, 300, 0, 0, 0, 0, 0, 0}) sample.add(w);
    CHECK(sample.figures(10) == FloorWait{MeanTime{80}, Millis{300}});
    CHECK(sample.figures(20) == FloorWait{MeanTime{40}, Millis{0}}); // ten more without
}

TEST_CASE("finish, chance of running over and the median run come from the runs' finishes") {
    const TinyGym t = busyGym();
    FloorOptions o = manyRuns();
    o.timeline = true;
    const FloorAnswer a = played(t, o);
    REQUIRE(a.finishes.size() == 60);
    std::vector<Millis> sorted = a.finishes;
    std::ranges::sort(sorted);
    CHECK(a.finish.p10 == sorted[5]);
    CHECK(a.finish.p50 == sorted[29]);
    CHECK(a.finish.p90 == sorted[53]);
    const auto sum = std::accumulate(sorted.begin(), sorted.end(), Millis{0});
    CHECK(a.finish.mean.count() == Approx(static_cast<double>(sum.count()) / 60));
    const auto late =
        std::ranges::count_if(sorted, [](Millis f) { return f > Millis{12 * 60'000}; });
    CHECK(a.overrunChance == static_cast<double>(late) / 60);
    CHECK(a.finishes[static_cast<std::size_t>(a.medianRun)] == a.finish.p50);
    for (int r = 0; r < a.medianRun; ++r)
        CHECK(a.finishes[static_cast<std::size_t>(r)] != a.finish.p50);
    Millis last{0};
    for (const FloorRow& row : a.timeline) last = std::max(last, row.to);
    CHECK(last <= a.finish.p50);
    CHECK(a.sections.back().end == a.finish); // no closing
}

TEST_CASE("running over is later than the class's minutes, not at their very end") {
    TinyGym t;
    t.gym.settings.classMinutes = 5;
    t.add({onceThrough({t.work(300)})});
    CHECK(t.steady(1).overrunChance == 0);
    t.gym.settings.closing = Millis{1};
    CHECK(t.steady(1).overrunChance == 1);
}

TEST_CASE("a section is over its budget when talk and groups take longer") {
    TinyGym t;
    t.gym.settings.opening = Millis{50'000};
    Section& s = t.add({onceThrough({t.work(100)})});
    s.talk = Millis{20'000};
    s.budget = secondsRange(60, 120);
    CHECK(t.steady(1).sections[0].overBudget == 0);
    s.budget = secondsRange(60, 119);
    CHECK(t.steady(1).sections[0].overBudget == 1);
}

TEST_CASE("a wait counts on every kit item that was short when the member joined the line") {
    TinyGym t;
    t.own("bar", 1, Claim::Group).own("rack", 1, Claim::Group).own("mat", 9, Claim::Group);
    t.add({onceThrough(
        {t.work(5), t.work(30, {{{"mat", 1}, {"bar", 1}, {"rack", 1}}, {{"bar", 1}}})})});
    const FloorAnswer a = t.steady(2);
    CHECK(secondsOf(useOf(a, "bar").wait.mean) == 17.5);
    CHECK(secondsOf(useOf(a, "rack").wait.mean) == 17.5);
    CHECK(useOf(a, "mat").wait.mean.count() == 0);
    CHECK(secondsOf(a.wait.mean) == 17.5);
}

TEST_CASE("on entering a group, a wait counts on the first slot that found none") {
    TinyGym t;
    t.own("bar", 1, Claim::Group).own("bell", 1, Claim::Group).own("box", 2, Claim::Group);
    t.add({onceThrough(
        {t.work(10, {{{"box", 1}}}), t.work(10, {{{"bell", 1}}}), t.work(10, {{{"bar", 1}}})})});
    FloorOptions o = manyRuns(2);
    o.steady = o.timeline = true;
    const FloorAnswer a = played(t, o);
    CHECK(secondsOf(useOf(a, "bell").wait.mean) == 15);
    CHECK(useOf(a, "bar").wait.mean.count() == 0);
    const auto wait = std::ranges::find(a.timeline, FloorDoing::Wait, &FloorRow::doing);
    REQUIRE(wait != a.timeline.end());
    CHECK(placeText(t.draft, wait->place) == "strength/1/2");
}

TEST_CASE("a need that can never be met is told by its slot and its kit item") {
    TinyGym t;
    t.own("sled", 1, Claim::Set).own("hurdle", 0, Claim::Group);
    t.add({onceThrough({t.work(10), t.work(10, {{{"sled", 1}, {"hurdle", 3}}})})});
    CHECK(refusal(t, {}) ==
          "strength/1/2 can never be served: it takes 3 of “hurdle” and the gym has "
          "0. Choose another exercise, or change what this one needs.");
    const auto shortages = floorShortages(t.gym, t.draft);
    REQUIRE(shortages.size() == 1);
    CHECK(shortages[0] == FloorShortage{{0, 0, 1}, kit("hurdle"), 3, 0});
}

TEST_CASE("kit that the gym does not even know can never be had") {
    TinyGym t;
    t.add({onceThrough({t.work(10, {{{"moon-boots", 1}}})})});
    CHECK(refusal(t, {}).find("moon-boots") != std::string::npos);
}

TEST_CASE(
    "of several alternatives one that can be served is enough, and the others are never taken") {
    TinyGym t;
    t.own("hurdle", 1, Claim::Group).own("box", 1, Claim::Group);
    t.add({onceThrough({t.work(10, {{{"hurdle", 2}}, {{"box", 1}}, {{"moon-boots", 1}}})})});
    const FloorAnswer a = t.steady(2);
    CHECK(laneOf(a, 1) == "wait 0-10, set 10-20");
    REQUIRE(a.kit.size() == 1);
    CHECK(secondsOf(useOf(a, "box").wait.mean) == 5);
}

TEST_CASE("the same kit item named twice in one alternative is taken twice") {
    TinyGym t;
    t.own("bell", 3, Claim::Group);
    t.add({onceThrough({t.work(10, {{{"bell", 1}, {"bell", 1}}})})});
    CHECK(laneOf(t.steady(2), 1) == "wait 0-10, set 10-20");
    t.own("bell", 1, Claim::Group);
    CHECK(!simulateFloor(t.gym, t.draft, {}).ok());
}

TEST_CASE("options out of range are refused with what is possible") {
    const TinyGym t = busyGym();
    FloorOptions o;
    o.members = 401;
    CHECK(refusal(t, o) == "A class has 1 to 400 members.");
    o = {};
    o.runs = 0;
    CHECK(refusal(t, o) == "Play 1 to 100000 runs.");
    o = {};
    o.threads = 65;
    CHECK(refusal(t, o) == "Use 1 to 64 threads.");
    o = {};
    o.setSigma = std::nan("");
    CHECK(refusal(t, o) == "How varied a class is goes from 0 to 1.");
    o = {};
    o.start = StartCounts{{1, 1, 1, 1}};
    CHECK(refusal(t, o) == "No section has 4 groups, so 4 head counts fit nowhere.");
    o.start = StartCounts{{0, 0}};
    CHECK(refusal(t, o) == "Somebody must start somewhere: no count is above 0.");
    o.start = StartCounts{{-1, 2}};
    CHECK(refusal(t, o) == "At each group 0 to 400 members start.");
}

TEST_CASE("a class too large to simulate is refused") {
    TinyGym t;
    t.add({group(rounds(20'000, 20'000), secondsRange(0, 0), {t.work(1)})});
    FloorOptions o;
    o.members = 400;
    CHECK(refusal(t, o) == "So many members and rounds are too much to simulate. Take fewer.");
}

TEST_CASE("without a number of members, the class is full") {
    TinyGym t = busyGym();
    t.gym.settings.places = 7;
    CHECK(played(t, manyRuns(0)).members == 7);
}

TEST_CASE("head counts are for the sections that have as many groups") {
    TinyGym t = busyGym();
    t.draft.sections[1].start = StartSpread{};
    FloorOptions o = manyRuns();
    o.start = StartCounts{{1, 3}};
    const FloorAnswer a = played(t, o);
    t.draft.sections[0].start = StartCounts{{1, 3}};
    CHECK(played(t, manyRuns()) == a);
}

TEST_CASE("the simulation can be stopped, and tells how far it is") {
    TinyGym t = busyGym();
    FloorOptions o = manyRuns(6, 5000);
    o.buys = true;
    o.threads = GENERATE(1, 3);
    const auto stage = GENERATE(FloorStage::Classes, FloorStage::BestStart, FloorStage::Buys);
    std::stop_source stop;
    std::set<FloorStage> told;
    const auto result = simulateFloor(t.gym, t.draft, o, stop.get_token(),
                                      [&](FloorStage now, int done, int total) {
                                          told.insert(now);
                                          CHECK((done >= 0 && done <= total && total == 5000));
                                          if (now == stage) stop.request_stop();
                                      });
    REQUIRE(!result.ok());
    CHECK(result.why().english() == "Stopped as asked; there is no answer.");
    CHECK(*told.rbegin() == stage);
}

TEST_CASE("what buys the most are the differences of whole simulations with the same draws") {
    TinyGym t = busyGym();
    FloorOptions o = manyRuns(5);
    o.buys = true;
    const FloorAnswer a = played(t, o);
    o.buys = false;
    CHECK(std::ranges::is_sorted(a.buys, std::greater{}, &FloorBuy::saves));
    std::set<std::string> units;
    int best = 0, fewer = 0;
    for (const FloorBuy& buy : a.buys) {
        TinyGym other = t;
        FloorOptions changed = o;
        if (const auto* unit = std::get_if<OneMoreUnit>(&buy.change)) {
            units.insert(unit->kit.text());
            KitItem item = *t.gym.findKit(unit->kit);
            ++item.units;
            other.gym.put(item);
        } else if (const auto* heads = std::get_if<BestHeads>(&buy.change)) {
            ++best;
            for (std::size_t s = 0; s < 2; ++s)
                other.draft.sections[s].start = StartCounts{heads->heads.counts[s]};
        } else {
            ++fewer;
            changed.members = 4;
        }
        CHECK(buy.saves.count() ==
              Approx(a.finish.mean.count() - played(other, changed).finish.mean.count()));
    }
    CHECK(units == std::set<std::string>{"bell", "bike", "rower"});
    CHECK(best == 1);
    CHECK(fewer == 1);
}

TEST_CASE("a lone member in a class without groups to choose from has nothing to buy") {
    TinyGym t;
    t.add({onceThrough({t.work(10)})});
    FloorOptions o = manyRuns(1);
    o.buys = true;
    CHECK(played(t, o).buys.empty());
}

TEST_CASE("all head counts are listed once, the most even first") {
    const HeadCounts counts = headCounts(12, 4, 5000);
    CHECK(counts.complete);
    CHECK(counts.all.size() == 455); // C(15, 3)
    CHECK(counts.all.front() == std::vector<int>{3, 3, 3, 3});
    CHECK(std::set(counts.all.begin(), counts.all.end()).size() == 455);
    for (const auto& heads : counts.all)
        CHECK(std::accumulate(heads.begin(), heads.end(), 0) == 12);
    CHECK(headCounts(1, 2, 5000).all.size() == 2);
    CHECK(headCounts(7, 1, 5000).all == std::vector<std::vector<int>>{{7}});
}

TEST_CASE("of too many head counts, those without a crowd are tried, and that is told") {
    const HeadCounts many = headCounts(24, 6, 5000); // C(29, 5) = 118 755
    CHECK(!many.complete);
    CHECK((many.all.size() > 1000 && many.all.size() <= 5001));
    CHECK(many.all.front() == std::vector<int>{4, 4, 4, 4, 4, 4});
    CHECK(many.all.back() == std::vector<int>{24, 0, 0, 0, 0, 0});
    const HeadCounts vast = headCounts(400, 40, 5000);
    CHECK(!vast.complete);
    CHECK((!vast.all.empty() && vast.all.size() <= 5001));
    const HeadCounts hopeless = headCounts(20, 40, 5000); // even ones alone: C(40, 20)
    CHECK(!hopeless.complete);
    CHECK(hopeless.all.size() == 2);
}

TEST_CASE("the best start has the lowest p90 finish of all head counts, then the lowest wait") {
    TinyGym t = busyGym();
    FloorOptions o = manyRuns(5);
    SECTION("drawn") { o.runs = GENERATE(1, 60, 200); }
    SECTION("steady") { o.steady = true; }
    SECTION("with a section without groups, and one of a single group") {
        t.add({});
        t.add({onceThrough({t.work(30, {{{"bike", 1}}})})});
    }
    o.start = StartBest{};
    const FloorAnswer best = played(t, o);
    REQUIRE(best.best);
    CHECK(best.best->allTried);
    o.start = StartAsDrafted{};
    std::pair lowest{Millis::max(), 0.0};
    for (const auto& two : headCounts(5, 2, 5000).all)
        for (const auto& three : headCounts(5, 3, 5000).all) {
            t.draft.sections[0].start = StartCounts{two};
            t.draft.sections[1].start = StartCounts{three};
            const FloorAnswer a = played(t, o);
            lowest = std::min(lowest, std::pair{a.finish.p90, meanWait(a)});
        }
    CHECK(best.finish.p90 == lowest.first);
    CHECK(meanWait(best) == lowest.second);
    for (std::size_t s = 0; s < 2; ++s)
        t.draft.sections[s].start = StartCounts{best.best->counts[s]};
    CHECK(played(t, o).finishes == best.finishes);
}

} // namespace bw::test
