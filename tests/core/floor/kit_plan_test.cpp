// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/kit_plan.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
Exercise needing(const char* id, const char* what, int count, const char* load = "bodyweight") {
    Exercise e = exercise(id, Pattern::Squat);
    e.needs = {{{kit(what), count, {}}}};
    e.load = LoadId::parse(load).value();
    return e;
}

// Twelve places, eight bells, three bikes. A: squat (two bells) and lunge (one); B: bike.
Gym bellGym() {
    Gym gym;
    KitItem bells{kit("bell"), "Bell", 8, Claim::Group, {}, {}, {}, {}};
    bells.loads = {{Mass::fromKg(12).value(), 4}, {Mass::fromKg(16).value(), 4}};
    gym.put(bells);
    gym.put(KitItem{kit("bike"), "Bike", 3, Claim::Set, {}, {}, {}, {}});
    gym.shelf.put(needing("squat", "bell", 2, "implement-pair"));
    gym.shelf.put(needing("lunge", "bell", 1, "implement"));
    gym.shelf.put(needing("bike", "bike", 1));
    return gym;
}

Block drafted(Start start) {
    Section s = section(SectionKind::Strength,
                        {group(rounds(2, 2), secondsRange(60, 60),
                               {slot("squat", reps(5, 5)), slot("lunge", reps(8, 8))}),
                         group(rounds(2, 2), secondsRange(60, 60), {slot("bike", reps(5, 5))})});
    s.start = std::move(start);
    return block("2026-09", {s});
}

const KitLine& lineOf(const std::vector<KitLine>& lines, const char* id) {
    for (const KitLine& line : lines)
        if (line.kit == kit(id)) return line;
    throw std::runtime_error(id);
}
} // namespace

TEST_CASE(
    "spread over stations, kit is counted for the heads of one, and what is short is shared") {
    const auto plan = kitPlan(bellGym(), drafted(StartSpread{}), nullptr);
    REQUIRE(plan.size() == 1);
    REQUIRE(plan[0].stations.size() == 2);
    CHECK_FALSE(plan[0].together);
    CHECK(plan[0].stations[0].heads == 6);
    const KitLine& bells = lineOf(plan[0].stations[0].kit, "bell");
    CHECK(bells.wanted == 12); // six people with the two of the squat; the lunge shares them
    CHECK(bells.units == 8);
    CHECK(bells.shared());
    CHECK(lineOf(plan[0].kit, "bike").wanted == 6);
    CHECK(lineOf(plan[0].kit, "bike").units == 3);
}

TEST_CASE("together, everybody is at the first station, and all stations see everybody") {
    const auto plan = kitPlan(bellGym(), drafted(StartTogether{}), nullptr);
    CHECK(plan[0].together);
    CHECK(plan[0].stations[0].heads == 12);
    CHECK(plan[0].stations[1].heads == 0);
    CHECK(lineOf(plan[0].kit, "bell").wanted == 24);
    CHECK(lineOf(plan[0].kit, "bike").wanted == 12);
}

TEST_CASE("by head count, the largest crowd comes to every station in its turn") {
    const auto plan = kitPlan(bellGym(), drafted(StartCounts{{9, 3}}), nullptr);
    CHECK(plan[0].stations[1].heads == 3);
    CHECK(lineOf(plan[0].kit, "bike").wanted == 9);
}

TEST_CASE("kit of the same kind adds up over the stations of a spread start") {
    Block b = drafted(StartSpread{});
    b.sections[0].groups[1].slots = {slot("lunge", reps(8, 8))};
    const auto plan = kitPlan(bellGym(), b, nullptr);
    CHECK(lineOf(plan[0].kit, "bell").wanted == 12 + 6);
    CHECK(lineOf(plan[0].kit, "bell").units == 8);
}

TEST_CASE("with a ledger a line says the loads of the members' cards") {
    Gym gym = bellGym();
    gym.put(Member{MemberId::parse("m-1").value(), "Marit", {}, true, {}});
    const Block b = drafted(StartSpread{});
    Ledger ledger(gym, Date::of(2026, 8, 30).value());
    ledger.add({gym.members[0].id,
                Date::of(2026, 8, 20).value(),
                ex("squat"),
                1,
                5,
                Rir::of(1).value(),
                Mass::fromKg(24).value(),
                {}});
    const auto plan = kitPlan(gym, b, &ledger);
    const KitLine& bells = lineOf(plan[0].kit, "bell");
    CHECK(bells.loads.contains(Mass::fromKg(12).value())); // a pair of them is the 24 kg
    CHECK_FALSE(bells.total);
    CHECK(bells.units == 4 * static_cast<int>(bells.loads.size())); // four of each load
    gym.members[0].active = false;
    CHECK(lineOf(kitPlan(gym, b, &ledger)[0].kit, "bell").loads.empty());
}

TEST_CASE("a section without groups has no stations, an open slot no kit") {
    const Block b =
        block("2026-09",
              {section(SectionKind::WarmUp, {}),
               section(SectionKind::Power, {group(rounds(1, 1), secondsRange(0, 0), {Slot{}})})});
    const auto plan = kitPlan(bellGym(), b, nullptr);
    CHECK(plan[0].stations.empty());
    REQUIRE(plan[1].stations.size() == 1);
    CHECK(plan[1].stations[0].kit.empty());
}
