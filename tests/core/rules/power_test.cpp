// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/draft.hpp"
#include "support/catch.hpp"

using namespace bw;
using namespace bw::test;

namespace {
void sidesOf(Draft& d, std::string_view id, Sides sides) {
    Exercise e = *d.gym.shelf.find(ex(id));
    e.sides = sides;
    d.gym.shelf.put(e);
}
void demandOf(Draft& d, std::string_view id, Demand demand, int level) {
    Exercise e = *d.gym.shelf.find(ex(id));
    REQUIRE(e.demands.set(demand, level));
    d.gym.shelf.put(e);
}
} // namespace

TEST_CASE("more than six reps in a power set are looked at, more than ten are stopped") {
    struct Case {
        int hi;
        std::optional<Level> level;
        double limit;
    };
    const auto c = GENERATE(values<Case>(
        {{6, std::nullopt, 0}, {7, Level::Look, 6}, {10, Level::Look, 6}, {11, Level::Stop, 10}}));
    Draft d = cleanDraft();
    d.slot(kPower, 0, 0).dose = reps(5, c.hi);
    const auto found = d.find("power-dose");
    REQUIRE(found.size() == (c.level ? 1 : 0));
    if (!c.level) return;
    CHECK(found[0].level == *c.level);
    CHECK(found[0].place == Place{kPower, 0, 0});
    CHECK(found[0].measured == c.hi);
    CHECK(found[0].limit == number(c.limit));
    CHECK(found[0].unit == "reps");
    const Draft fixed = d.after(remedy(found[0], "Set the dose of box-jump (B1) to 5–6"));
    CHECK(fixed.find("power-dose").empty());
}

TEST_CASE("a power dose is counted a side") {
    Draft d = cleanDraft();
    d.slot(kPower, 0, 0).dose = reps(12, 12);
    CHECK(d.find("power-dose").at(0).level == Level::Stop);
    sidesOf(d, "box-jump", Sides::Alternating); // twelve in all: six a side
    CHECK(d.find("power-dose").empty());
    d.slot(kPower, 0, 0).dose = reps(12, 13);
    const Finding f = d.find("power-dose").at(0);
    CHECK(f.level == Level::Look);
    CHECK(f.measured == 6.5);
    CHECK(d.after(f.remedies.at(0)).slot(kPower, 0, 0).dose == reps(12, 12));
    d.slot(kPower, 0, 0).dose = reps(6, 6);
    sidesOf(d, "box-jump", Sides::Each); // six a side as it stands
    CHECK(d.find("power-dose").empty());
    d.slot(kPower, 0, 0).dose = reps(7, 7);
    CHECK(d.find("power-dose").at(0).measured == 7);
}

TEST_CASE("only reps of power sections are counted") {
    Draft d = cleanDraft();
    d.slot(kPower, 0, 0).dose = secondsDose(20, 20);
    CHECK(d.find("power-dose").empty());
    d.slot(kStrength, 0, 1).dose = reps(20, 20);
    CHECK(d.find("power-dose").empty());
}

TEST_CASE("the gym sets how many reps are power") {
    Draft d = cleanDraft();
    d.limit("power-dose.look_reps", 5);
    const auto found = d.find("power-dose");
    REQUIRE(found.size() == 1);
    CHECK(found[0].place == Place{kPower, 0, 1});
    CHECK(found[0].basis.english() == "This gym's setting.");
    CHECK(d.after(found[0].remedies.at(0)).slot(kPower, 0, 1).dose == reps(5, 5));
    d.limit("power-dose.stop_reps", 5);
    CHECK(d.find("power-dose").at(0).level == Level::Stop);
}

TEST_CASE("power after strength is looked at and can be moved") {
    Draft d = cleanDraft();
    std::swap(d.block.sections[kPower], d.block.sections[kStrength]);
    const auto found = d.find("power-first");
    REQUIRE(found.size() == 1);
    CHECK(found[0].level == Level::Look);
    CHECK(found[0].place == Place{2});
    CHECK(found[0].also == std::vector<Place>{Place{1}});
    CHECK(found[0].measured == 1);
    CHECK(found[0].limit == number(0));
    const Draft fixed = d.after(remedy(found[0], "Move the power section"));
    CHECK(fixed.block == cleanDraft().block);
    CHECK(fixed.find("power-first").empty());
}

TEST_CASE("power after the finisher alone is in order") {
    Draft d = cleanDraft();
    std::swap(d.block.sections[kPower], d.block.sections[kFinisher]);
    std::swap(d.block.sections[kStrength], d.block.sections[kFinisher]);
    REQUIRE(d.section(2).kind == SectionKind::Power);
    CHECK(d.find("power-first").empty());
}

TEST_CASE("a warm-up exercise that asks all of grip, back or shoulders is looked at") {
    const auto demand = GENERATE(Demand::Grip, Demand::Lumbar, Demand::Overhead);
    Draft d = cleanDraft();
    demandOf(d, "dead-bug", demand, 2);
    CHECK(d.find("power-first").empty());
    demandOf(d, "dead-bug", demand, 3);
    d.gym.shelf.put(careful("side-plank", Pattern::TrunkStability, "warm-up"));
    const auto found = d.find("power-first");
    REQUIRE(found.size() == 1);
    CHECK(found[0].place == Place{kWarmUp, 0, 1});
    CHECK(found[0].measured == 3);
    CHECK(found[0].limit == number(2));
    CHECK(found[0].text.args.at(1) == wordOf(demand));
    const Draft fixed = d.after(remedy(found[0], "Use side-plank instead of dead-bug (A2)"));
    CHECK(fixed.find("power-first").empty());
}

TEST_CASE("other demands, and other sections, may ask for everything") {
    Draft d = cleanDraft();
    demandOf(d, "dead-bug", Demand::Knee, 3);
    demandOf(d, "dead-bug", Demand::Impact, 3);
    demandOf(d, "dead-bug", Demand::Breath, 3);
    demandOf(d, "swing", Demand::Grip, 3);
    CHECK(d.find("power-first").empty());
    demandOf(d, "leg-swing", Demand::Grip, 3);
    d.limit("power-first.warm_up_demand", 3);
    CHECK(d.find("power-first").empty());
}
