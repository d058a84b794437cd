// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/floor/floor.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
Gym demoGym() {
    Gym gym;
    layOver(gym, demoBundle());
    return gym;
}
Ran floorOf(const TempFolder& folder, std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), {"floor", "--bundle", demoFile()});
    return bwright(folder.path(), arguments);
}
json floorJson(const TempFolder& folder, std::vector<std::string> arguments) {
    arguments.emplace_back("--json");
    const auto ran = floorOf(folder, std::move(arguments));
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    return json::parse(ran.out);
}
double secondsOf(MeanTime t) { return t.count() / 1000; }

void checkTimes(const json& said, const FloorTimes& engine) {
    CHECK(said.size() == 4);
    CHECK(said.at("mean").get<double>() == secondsOf(engine.mean));
    CHECK(said.at("p10").get<double>() == secondsOf(engine.p10));
    CHECK(said.at("p50").get<double>() == secondsOf(engine.p50));
    CHECK(said.at("p90").get<double>() == secondsOf(engine.p90));
}
void checkSections(const json& said, const FloorAnswer& engine) {
    REQUIRE(said.size() == engine.sections.size());
    for (std::size_t s = 0; s < said.size(); ++s) {
        const FloorSectionEnd& section = engine.sections[s];
        CHECK(said[s].at("kind") == wordOf(section.kind));
        CHECK(said[s].at("over_budget").get<double>() == section.overBudget);
        checkTimes(said[s].at("end"), section.end);
        REQUIRE(said[s].at("groups").size() == section.groups.size());
        for (std::size_t g = 0; g < section.groups.size(); ++g) {
            CHECK(said[s]["groups"][g].at("rounds_mean").get<double>() == section.groups[g].mean);
            CHECK(said[s]["groups"][g].at("reached_high").get<double>() ==
                  section.groups[g].reachedHigh);
        }
    }
}
void checkKit(const json& said, const FloorAnswer& engine) {
    REQUIRE(said.at("waits").size() == engine.kit.size());
    REQUIRE(said.at("busy").size() == engine.kit.size());
    for (std::size_t k = 0; k < engine.kit.size(); ++k) {
        const FloorKitUse& use = engine.kit[k];
        CHECK(said["waits"][k].at("kit") == use.kit.text());
        CHECK(said["waits"][k].at("mean").get<double>() == secondsOf(use.wait.mean));
        CHECK(said["waits"][k].at("p90").get<double>() == secondsOf(use.wait.p90));
        CHECK(said["busy"][k].at("kit") == use.kit.text());
        CHECK(said["busy"][k].at("share").get<double>() == use.busy);
    }
    CHECK(said.at("wait_total").at("mean").get<double>() == secondsOf(engine.wait.mean));
    CHECK(said.at("wait_total").at("p90").get<double>() == secondsOf(engine.wait.p90));
}
void checkAgainst(const json& said, const FloorAnswer& engine) {
    CHECK(said.at("members") == engine.members);
    CHECK(said.at("runs") == engine.runs);
    checkTimes(said.at("finish"), engine.finish);
    CHECK(said.at("overrun_chance").get<double>() == engine.overrunChance);
    checkSections(said.at("sections"), engine);
    checkKit(said, engine);
    REQUIRE(said.at("buys").size() == engine.buys.size());
    for (std::size_t b = 0; b < engine.buys.size(); ++b)
        CHECK(said["buys"][b].at("saves_mean").get<double>() == secondsOf(engine.buys[b].saves));
    CHECK(said.at("timeline").size() == engine.timeline.size());
}
} // namespace

TEST_CASE("floor says of the demo what the engine computes, with every option") {
    const TempFolder folder;
    const Gym gym = demoGym();
    FloorOptions o;
    o.members = 9;
    o.week = week(2);
    o.runs = 40;
    o.seed = 18'446'744'073'709'551'615U;
    o.paceSigma = 0.2;
    o.setSigma = 0.05;
    o.start = StartCounts{{6, 3}};
    o.timeline = o.buys = true;
    const json said =
        floorJson(folder, {"--members", "9", "--week", "2", "--runs", "40", "--seed",
                           "18446744073709551615", "--pace-sigma", "0.2", "--set-sigma", "0.05",
                           "--spread", "6,3", "--threads", "2", "--timeline"});
    CHECK(said.at("week") == 2);
    CHECK(said.at("seed") == o.seed);
    checkAgainst(said, simulateFloor(gym, *gym.latest(), o).value());
}

TEST_CASE("floor plays by standard a thousand classes of week 1 with all places taken") {
    const TempFolder folder;
    const Gym gym = demoGym();
    const json said = floorJson(folder, {"--no-buys"});
    CHECK(said.at("runs") == 1000);
    CHECK(said.at("members") == gym.settings.places);
    checkAgainst(said, simulateFloor(gym, *gym.latest(), {}).value());
}

TEST_CASE("floor --steady plays one class, in each way to start") {
    const TempFolder folder;
    const Gym gym = demoGym();
    FloorOptions o;
    o.steady = true;
    const std::pair<std::string, FloorStart> start =
        GENERATE(std::pair<std::string, FloorStart>{"together", StartTogether{}},
                 std::pair<std::string, FloorStart>{"spread", StartSpread{}},
                 std::pair<std::string, FloorStart>{"best", StartBest{}});
    o.start = start.second;
    const FloorAnswer engine = simulateFloor(gym, *gym.latest(), o).value();
    const json said = floorJson(folder, {"--steady", "--no-buys", "--spread", start.first});
    CHECK(said.at("runs") == 1);
    checkAgainst(said, engine);
    CHECK(said.contains("best") == engine.best.has_value());
    if (engine.best) CHECK(said["best"].at("heads") == engine.best->counts);
}

TEST_CASE("floor --loads takes kit by the load of each member's latest result") {
    const TempFolder folder;
    const Gym gym = demoGym();
    const Block& draft = *gym.block(month("2025-10")); // pairs of heavy dumbbells are few
    FloorOptions o;
    o.week = week(2);
    o.runs = 40;
    o.buys = o.loadAware = true;
    o.targets = latestLoads(gym, demoBundle().results);
    const FloorAnswer engine = simulateFloor(gym, draft, o).value();
    const std::vector<std::string> asked{"--month", "2025-10", "--week", "2",
                                         "--runs",  "40",      "--loads"};
    const json said = floorJson(folder, asked);
    checkAgainst(said, engine);
    int byLoad = 0;
    for (std::size_t b = 0; b < engine.buys.size(); ++b) {
        const auto* more = std::get_if<OneMoreUnit>(&engine.buys[b].change);
        const json& buy = said["buys"][b];
        CHECK(buy.contains("load_kg") == (more && more->load));
        if (!more || !more->load) continue;
        CHECK(buy["load_kg"].get<double>() == more->load->kg());
        CHECK(buy["units"] == more->units);
        ++byLoad;
    }
    CHECK(byLoad > 0);
    const std::string text = floorOf(folder, asked).out;
    CHECK(text.find("seed 1 · by load") != std::string::npos);
    CHECK(text.find("one more: Kettlebell, 2 × 24 kg") != std::string::npos);
    o.loadAware = false;
    CHECK(simulateFloor(gym, draft, o)->wait.mean < engine.wait.mean);
}

TEST_CASE("the timeline counts everything from 1, and leaves out what a row has none of") {
    const TempFolder folder;
    writeText(folder / "gym.json", smallBundle());
    const auto ran = bwright(folder.path(), {"floor", "--bundle", (folder / "gym.json").string(),
                                             "--members", "1", "--steady", "--timeline", "--json"});
    REQUIRE(ran.code == 0);
    // Low rounds: two, 5 and 9 reps of 3 s, rest 90 s between.
    const json rows = json::parse(ran.out).at("timeline");
    const auto row = [](double from, double to, const json& round, const json& slot,
                        const char* what) {
        return json{{"member", 1}, {"from", from},   {"to", to},     {"section", 1},
                    {"group", 1},  {"round", round}, {"slot", slot}, {"what", what}};
    };
    CHECK(rows == json::array({row(180, 195, 1, 1, "set"), row(195, 222, 1, 2, "set"),
                               row(222, 312, 1, nullptr, "rest"), row(312, 327, 2, 1, "set"),
                               row(327, 354, 2, 2, "set")}));
}

TEST_CASE("what buys the most is told by name, and in numbers for programs") {
    const TempFolder folder;
    const json said = floorJson(folder, {"--week", "2", "--runs", "50"});
    std::vector<std::string> changes;
    for (const json& buy : said.at("buys")) {
        changes.push_back(buy.at("change"));
        if (buy.contains("kit"))
            CHECK(buy["change"] == "one more " + buy["kit"].get<std::string>());
        if (buy["change"] == "best spread")
            CHECK(buy.at("heads").size() == said["sections"].size());
    }
    for (const char* change : {"one more trap-bar", "best spread", "one member fewer"})
        CHECK(std::ranges::count(changes, change) == 1);
}

TEST_CASE("floor without --json is for people: ends, rounds, waits, what helps, who does what") {
    const TempFolder folder;
    const auto ran = floorOf(folder, {"--week", "2", "--runs", "50", "--timeline"});
    REQUIRE(ran.code == 0);
    CHECK(ran.err.empty());
    for (const char* words :
         {"week 2 · 12 members · 50 runs, seed 1", "over 1:00:00", "over budget", "Trap bar",
          "what buys the most", "one member fewer", "one more: Trap bar", "starting at warm-up A",
          "waits for strength/2/1", "listens", "rests"}) {
        INFO(words);
        CHECK(ran.out.find(words) != std::string::npos);
    }
}

TEST_CASE("floor refuses what it can't play, says why, and ends with 2") {
    const TempFolder folder;
    const auto refused = [&](const std::vector<std::string>& arguments, std::string_view why) {
        const auto ran = floorOf(folder, arguments);
        INFO(ran.err);
        CHECK(ran.code == 2);
        CHECK(ran.out.empty());
        CHECK(ran.err.find(why) != std::string::npos);
    };
    refused({"--members", "0"}, "--members");
    refused({"--runs", "0"}, "Play 1 to 100000 runs.");
    refused({"--threads", "0"}, "Use 1 to 64 threads.");
    refused({"--pace-sigma", "-1"}, "How varied a class is goes from 0 to 1.");
    refused({"--week", "9"}, "week");
    refused({"--spread", "sideways"}, "“sideways” is no way to start");
    refused({"--spread", "6,,6"}, "is no way to start");
    refused({"--spread", "1,1,1,1,1,1,1"}, "No section has 7 groups");
}

TEST_CASE("a slot that can never be served is named") {
    const TempFolder folder;
    Gym gym = demoGym();
    for (KitItem item : gym.kit)
        if (item.id.text() == "trap-bar") {
            item.units = 0;
            gym.put(item);
            break;
        }
    writeText(folder / "gym.json", writeBundle(bundleOf(gym)));
    const auto ran =
        bwright(folder.path(), {"floor", "--bundle", (folder / "gym.json").string(), "--json"});
    CHECK(ran.code == 2);
    CHECK(ran.out.empty());
    CHECK(ran.err.find(
              "strength/2/1 can never be served: it takes 1 of “Trap bar” and the gym has 0.") !=
          std::string::npos);
}

TEST_CASE("floor ends cleanly on Ctrl-C") {
    const TempFolder folder;
    const auto ran = interrupted(
        folder.path(), {"floor", "--bundle", demoFile(), "--runs", "100000", "--json"}, 1500);
    CHECK(ran.code == 130);
    CHECK(ran.out.empty());
    CHECK(ran.err.find("Stopped as asked") != std::string::npos);
}

} // namespace bw::test
