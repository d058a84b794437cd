// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
void steps(Draft& d, const std::vector<double>& rirs) {
    d.block.stair.clear();
    for (const double rir : rirs)
        d.block.stair.push_back({RoundsMode::Open, Rir::of(rir).value(), Intent::Build, {}});
}
std::vector<Finding> jumps(const std::vector<double>& rirs, int repsInASet = 5) {
    Draft d = cleanDraft();
    for (int g : {0, 1}) d.slot(kStrength, g, 0).dose = reps(repsInASet, repsInASet);
    steps(d, rirs);
    return d.findAll("stair-jump");
}
std::vector<Finding> shape(const std::vector<double>& rirs) {
    Draft d = cleanDraft();
    steps(d, rirs);
    return d.findAll("stair-shape");
}
} // namespace

// Epley, Poundage chart, 1985: 1 + n/30. From 5 reps with 4 left to 5 with 0 left the weight rises
// by (1 + 9/30) / (1 + 5/30) - 1.
TEST_CASE("the weight of a week is what its reserve leaves of the maximum") {
    const auto found = jumps({4, 0});
    REQUIRE(found.size() == 1);
    CHECK(found[0].measured == Approx(100 * (1.3 / (35.0 / 30) - 1)));
    CHECK(found[0].measured == Approx(11.428571).margin(1e-6));
    CHECK(found[0].place == Place{});
    CHECK(found[0].also == std::vector<Place>{{kStrength, 0, 0}});
    CHECK(jumps({4, 3, 2, 1}).empty());
    CHECK(jumps({4, 1}).empty());     // 8.3 %
    CHECK(jumps({0, 4}).empty());     // it falls: stair-shape says so
    CHECK(jumps({4, 0}, 11).empty()); // a reserve weighs less in long sets
    CHECK(jumps({1, 0}, 1).empty());  // one more possible, then a single: 6.7 %
    CHECK(jumps({5, 1}, 1).size() == 1);
}

TEST_CASE("an even stair is offered when it keeps the limit, else a gentler week") {
    Draft d = cleanDraft();
    steps(d, {4, 4, 4, 0});
    const Draft even = d.after(remedy(d.findAll("stair-jump").at(0), "Let the effort rise evenly"));
    CHECK(even.findAll("stair-jump").empty());
    CHECK(even.block.stair[1].rir == Rir::of(2.5).value());
    CHECK(even.block.stair[3].rir == Rir::of(0).value());
    steps(d, {8, 0});
    const Draft gentle =
        d.after(remedy(d.findAll("stair-jump").at(0), "Leave 4.5 in reserve in week 2"));
    CHECK(gentle.findAll("stair-jump").empty());
}

TEST_CASE("a stair without heavy repetitions, or of one week, makes no jump") {
    Draft d = cleanDraft();
    steps(d, {10, 0});
    for (Group& g : d.section(kStrength).groups)
        for (Slot& s : g.slots) s.dose = secondsDose(30, 40);
    CHECK(d.findAll("stair-jump").empty());
    CHECK(jumps({4}).empty());
}

TEST_CASE("effort never falls on the stair, and it ends harder than it began") {
    CHECK(shape({4, 3, 2, 1}).empty());
    CHECK(shape({2, 2, 2, 1}).empty());
    CHECK(shape({3}).empty());
    const auto fall = shape({4, 2, 3, 1});
    REQUIRE(fall.size() == 1);
    CHECK(fall[0].about == "falls");
    CHECK(fall[0].text.english() ==
          "Week 3 is easier than week 2: it leaves 3 in reserve after 2.");
    const auto flat = shape({2, 2, 2, 2});
    REQUIRE(flat.size() == 1);
    CHECK(flat[0].about == "rise");
    CHECK(shape({1, 2, 3, 4}).size() == 1); // told once
}

TEST_CASE("a lighter last week can be this gym's way") {
    Draft d = cleanDraft();
    steps(d, {3, 2, 1, 4});
    CHECK(d.findAll("stair-shape").size() == 1);
    d.limit("stair-shape.falls", 1);
    d.limit("stair-shape.rise", -10);
    CHECK(d.findAll("stair-shape").empty());
}

TEST_CASE("each way out of a crooked stair makes it straight, over any number of weeks") {
    for (const std::vector<double>& rirs :
         {std::vector<double>{1, 4}, {4, 2, 3, 1}, {0, 5, 1, 4, 2, 3}, {2, 2}}) {
        Draft d = cleanDraft();
        steps(d, rirs);
        d.block.stair.front().rounds = RoundsMode::High;
        const auto found = d.findAll("stair-shape");
        REQUIRE(found.size() == 2); // the effort, and the rounds of week 1
        const Draft usual = d.after(remedy(found[0], "Take the usual stair"));
        CHECK(usual.findAll("stair-shape").empty());
        CHECK(usual.block.stair.front().rir == Rir::of(4).value());
        CHECK(usual.block.stair.back().rir == Rir::of(1).value());
        CHECK(usual.block.stair.back().intent == Intent::Challenge);
        const Draft low = d.after(remedy(found[1], "Take the low rounds in week 1"));
        CHECK(low.findAll("stair-shape").size() == 1);
    }
}

namespace {
// One exercise of the finisher, all out for so many seconds.
Draft allOut(int work, Range<Millis> rest, int breath = 3) {
    Draft d = cleanDraft();
    Exercise bike = careful("bike", Pattern::Locomotion, "finisher");
    (void)bike.demands.set(Demand::Breath, breath);
    d.gym.shelf.put(bike); // 10 s to set up
    d.section(kFinisher).groups = {
        group(rounds(1, 3), rest, {slot("bike", secondsDose(work, work))})};
    return d;
}
} // namespace

// Haff and Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed., 2016, table
// 3.6: 15 to 30 s of work, 3 to 5 times as long a rest; 5 to 10 s, 12 to 20 times.
TEST_CASE("short all-out work has three times its length before it comes again") {
    CHECK(allOut(20, secondsRange(50, 50)).findAll("finisher-dose").empty()); // with the set-up, 60
    const Draft d = allOut(20, secondsRange(40, 58));
    const auto found = d.findAll("finisher-dose");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Note);
    CHECK(found[0].measured == 59);
    CHECK(found[0].limit == number(60));
    CHECK(found[0].unit == "s");
    CHECK(d.after(remedy(found[0], "Set the rest of group E to 45–63 s"))
              .findAll("finisher-dose")
              .empty());
    CHECK(d.after(remedy(found[0], "Go through group E once")).findAll("finisher-dose").empty());
    CHECK(allOut(10, secondsRange(109, 109)).findAll("finisher-dose").size() == 1);
    CHECK(allOut(10, secondsRange(110, 110)).findAll("finisher-dose").empty());
}

TEST_CASE("nothing is said between the table's rows, of longer or easier work, or of one round") {
    CHECK(allOut(12, secondsRange(5, 5)).findAll("finisher-dose").empty());
    CHECK(allOut(31, secondsRange(5, 5)).findAll("finisher-dose").empty());
    CHECK(allOut(20, secondsRange(5, 5), 2).findAll("finisher-dose").empty());
    Draft once = allOut(20, secondsRange(5, 5));
    once.group(kFinisher).rounds = rounds(1, 1);
    CHECK(once.findAll("finisher-dose").empty());
}

TEST_CASE("easier work between counts as rest, hard work does not") {
    Draft d = allOut(20, secondsRange(0, 0));
    d.group(kFinisher).slots.push_back(slot("crawl", secondsDose(40, 40))); // with set-ups 60
    CHECK(d.findAll("finisher-dose").empty());
    Exercise row = careful("hard-row", Pattern::Locomotion, "finisher");
    (void)row.demands.set(Demand::Breath, 3);
    d.gym.shelf.put(row);
    d.slot(kFinisher, 0, 1) = slot("hard-row", secondsDose(25, 25));
    const auto found = d.findAll("finisher-dose");
    REQUIRE(found.size() == 2);
    CHECK(found[0].measured == 20); // the two set-ups
}
