// SPDX-License-Identifier: GPL-3.0-or-later
#include "bundle_support.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

using namespace bw;
using namespace bw::test;

namespace {
const std::string kHead = R"({"format": "blockwright-bundle", "version": 1, )";

Mass kg(double x) { return Mass::fromKg(x).value(); }
} // namespace

TEST_CASE("the example of the page is read without a fault or a note") {
    const auto reading = readBundle(docExample());
    INFO(listed(reading.errors) << listed(reading.notes));
    REQUIRE(reading.bundle);
    CHECK(reading.notes.empty());
    const Bundle& b = *reading.bundle;
    CHECK(b.settings->name == "Saltmarsh Boathouse");
    CHECK(b.settings->limits.at("push-pull.block") == LimitValue{0.6, 1.4, true});
    CHECK(b.settings->limits.at("kit-queue.look_seconds") == LimitValue{120, 120, false});
    CHECK(b.kit[1].loads == std::map<Mass, int>{{kg(8), 4}, {kg(12), 6}, {kg(16), 8}, {kg(24), 6}});
    CHECK(b.kit[0].claim == Claim::Set);
    CHECK(b.shelf[0].noHarder == "Add load instead.");
    CHECK(b.shelf[0].demands[Demand::Lumbar] == 2);
    CHECK(b.shelf[2].pace.usual() == Measure::Metres);
    CHECK(b.members[0].flags[0].level == FlagLevel::Avoid);
    CHECK(b.results[0].load == kg(40));
    CHECK_FALSE(b.results[1].rir);
}

TEST_CASE("the month of the example is read slot by slot") {
    const auto b = readGood(docExample());
    const Block& month = b.blocks.at(0);
    CHECK(month.stair == defaultStair());
    REQUIRE(month.accepted.size() == 1);
    CHECK(month.accepted[0] == Acceptance{.rule = "superset-work",
                                          .place = "group strength front-rack-squat goblet-squat",
                                          .about = "",
                                          .level = Level::Look,
                                          .measured = 52.5,
                                          .limit = {60, 120, true},
                                          .reason = "Week 1 is for finding weights; short is fine.",
                                          .extras = {}});
    REQUIRE(month.sections.size() == 2);
    const Group& pair = month.sections[0].groups.at(0);
    CHECK(pair.rounds == rounds(2, 3));
    CHECK(pair.rest == secondsRange(60, 120));
    CHECK(pair.slots[0].dose == reps(5, 5));
    CHECK(pair.slots[0].tempo->text() == "31X0");
    CHECK(pair.slots[0].main);
    CHECK(pair.slots[1].locked);
    CHECK(std::get<StartCounts>(month.sections[1].start).heads == std::vector{6, 6});
    const Slot& open = month.sections[1].groups[1].slots.at(0);
    CHECK(open.open());
    CHECK(open.patterns == std::vector{Pattern::Hinge, Pattern::Carry});
    CHECK(open.dose == secondsDose(30, 30));
}

TEST_CASE("what a bundle leaves out is as the model has it") {
    const auto b = readGood(kHead + R"("gym": {"name": "", "kit": [{"id": "box", "name": "Box"}]},
        "shelf": [{"id": "row", "name": "Row", "patterns": {"horizontal-pull": 1}, "seconds_per_rep": 2}],
        "blocks": [{"month": "2026-09", "sections": [{"kind": "power", "groups": [{}]}]}],
        "members": [{"id": "m", "name": "M"}],
        "results": [{"member": "m", "date": "2026-09-01", "exercise": "row", "reps": 0}]})");
    CHECK(b.settings == GymSettings{});
    CHECK(b.kit[0].claim == Claim::Group);
    CHECK(b.kit[0].units == 0);
    CHECK(b.shelf[0].load.text() == "bodyweight");
    CHECK(b.shelf[0].planes.none());
    CHECK(b.blocks[0].stair == defaultStair());
    CHECK(b.blocks[0].sections[0].groups[0] == Group{});
    CHECK(b.members[0].active);
    CHECK(b.results[0].set == 1);
    CHECK_FALSE(b.results[0].load);
}

TEST_CASE("a bundle of nothing but its name and version is good") {
    const auto b = readGood(R"({"format": "blockwright-bundle", "version": 1.0})");
    CHECK_FALSE(b.settings);
    CHECK_FALSE(b.hasKit);
    CHECK_FALSE(b.hasShelf);
    CHECK(same(b, Bundle{}));
}

TEST_CASE("settings that the bundle leaves out stay as they are in the gym beneath") {
    Gym gym;
    gym.settings.name = "Boathouse";
    gym.settings.places = 8;
    gym.settings.limits["planes.frontal"] = {0.1, 0.1, false};
    const auto b = readGood(
        kHead + R"("gym": {"class": {"minutes": 45}, "limits": {"novelty.look": 4}}})", &gym);
    CHECK(b.settings->name == "Boathouse");
    CHECK(b.settings->places == 8);
    CHECK(b.settings->classMinutes == 45);
    CHECK(b.settings->limits.size() == 2);
}

TEST_CASE("numbers are kept to their grain, with a note when that changed them") {
    const auto text =
        kHead + R"("shelf": [{"id": "row", "name": "Row", "seconds_per_rep": 2.0000000001,
        "patterns": {"horizontal-pull": 0.3333333333, "carry": 0.6666666667}, "setup_seconds": 2.5}],
        "results": [{"member": "m", "date": "2026-09-01", "exercise": "row", "reps": 5.0, "rir": 2.25,
                     "load_kg": 0.1}]})";
    const auto reading = readBundle(text);
    REQUIRE(reading.bundle);
    CHECK(pointersOf(reading.notes) ==
          std::vector<std::string>{"/shelf/0/seconds_per_rep", "/shelf/0/patterns/horizontal-pull",
                                   "/shelf/0/patterns/carry", "/results/0/rir"});
    CHECK(reading.notes[3].text.english() ==
          "2.25 is kept as 2.3, the nearest that can be stored.");
    CHECK(reading.bundle->results[0].load->micrograms() == 100'000'000);
    CHECK(reading.bundle->shelf[0].setup == Millis{2500});
}

TEST_CASE("every tenth, thousandth and quarter that a coach may write is kept without a note") {
    std::string results;
    for (int n = 0; n <= 20'000; ++n) {
        const auto date = Date::parse("2026-01-01").value().plusDays(n / 100).text();
        results += (n ? "," : "") +
                   std::string(R"({"member":"m","exercise":"row","reps":1,"set":)") +
                   std::to_string(n % 100 + 1) + R"(,"date":")" + date + R"(","load_kg":)" +
                   std::to_string(n / 1000) + "." + std::to_string(1000 + n % 1000).substr(1) +
                   R"(,"rir":)" + std::to_string(n % 10) + "." + std::to_string(n % 7) + "}";
    }
    const auto reading = readBundle(kHead + "\"results\": [" + results + "]}");
    INFO(listed(reading.errors) << listed(reading.notes));
    REQUIRE(reading.bundle);
    CHECK(reading.notes.empty());
    CHECK(reading.bundle->results[12'345].load->micrograms() == 12'345'000'000);
}

TEST_CASE("unknown keys get a note and stay with their object") {
    Json bundle = example();
    bundle["season"] = {{"n", 1}};
    bundle["gym"]["class"]["music"] = "loud";
    bundle["gym"]["founded"] = 1987;
    bundle["shelf"][0]["needs"][0][0]["colour"] = "red";
    bundle["blocks"][0]["sections"][0]["groups"][0]["slots"][0]["a/b"] = {1, 2.50, nullptr};
    const auto reading = readBundle(bundle.dump());
    REQUIRE(reading.bundle);
    CHECK(pointersOf(reading.notes) ==
          std::vector<std::string>{"/gym/class/music", "/gym/founded", "/shelf/0/needs/0/0/colour",
                                   "/blocks/0/sections/0/groups/0/slots/0/a~1b", "/season"});
    const Bundle& b = *reading.bundle;
    CHECK(b.extras.json == R"({"season":{"n":1}})");
    CHECK(b.settings->extras.json == R"({"founded":1987,"class":{"music":"loud"}})");
    CHECK(b.shelf[0].needs[0][0].extras.json == R"({"colour":"red"})");
    CHECK(b.blocks[0].sections[0].groups[0].slots[0].extras.json == R"({"a/b":[1,2.5,null]})");
    CHECK(b.shelf[0].extras.json.empty());
}

TEST_CASE("words of a gym's own are kept with a note where the list is open") {
    Json bundle = example();
    bundle["shelf"][0]["roles"].push_back("cool-down");
    bundle["shelf"][0]["muscles"]["serratus"] = 0.5;
    bundle["shelf"][0]["load"] = "stone";
    const auto reading = readBundle(bundle.dump());
    REQUIRE(reading.bundle);
    CHECK(pointersOf(reading.notes) == std::vector<std::string>{"/shelf/0/muscles/serratus",
                                                                "/shelf/0/roles/1",
                                                                "/shelf/0/load"});
    CHECK(reading.bundle->shelf[0].hasRole("cool-down"));
}

TEST_CASE("texts are measured in characters, not in bytes") {
    Json bundle = example();
    std::string name;
    for (int i = 0; i < 200; ++i) name += "🏋";
    bundle["shelf"][0]["name"] = name;
    CHECK(readGood(bundle.dump()).shelf[0].name == name);
    bundle["shelf"][0]["name"] = name + "a";
    CHECK(errorsIn(bundle.dump()) == std::vector<std::string>{"/shelf/0/name"});
}
