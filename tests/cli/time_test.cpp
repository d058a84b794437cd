// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/time/timing.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
void checkFigures(const json& said, const Figures& engine) {
    CHECK(said.at("short").get<double>() == seconds(engine.low));
    CHECK(said.at("planned").get<double>() == seconds(engine.planned));
    CHECK(said.at("long").get<double>() == seconds(engine.high));
}
} // namespace

TEST_CASE("time says for each week of the demo what the engine computes") {
    const TempFolder folder;
    Gym gym;
    layOver(gym, demoBundle());
    const auto draft = gym.latest();
    for (int w = 1; w <= 4; ++w) {
        const auto ran = bwright(
            folder.path(), {"time", "--bundle", demoFile(), "--week", std::to_string(w), "--json"});
        REQUIRE(ran.code == 0);
        const json said = json::parse(ran.out);
        const auto engine = timeSession(gym.settings, gym.shelf, *draft, week(w));
        CHECK(said.at("week") == w);
        checkFigures(said.at("session"), engine.total);
        REQUIRE(said.at("sections").size() == engine.sections.size());
        for (std::size_t s = 0; s < engine.sections.size(); ++s) {
            const json& section = said["sections"][s];
            CHECK(section.at("kind") == wordOf(draft->sections[s].kind));
            checkFigures(section, engine.sections[s].total);
            REQUIRE(section.at("groups").size() == engine.sections[s].groups.size());
            for (std::size_t g = 0; g < engine.sections[s].groups.size(); ++g) {
                checkFigures(section["groups"][g], engine.sections[s].groups[g].total);
                CHECK(section["groups"][g].at("round_planned").get<double>() ==
                      seconds(engine.sections[s].groups[g].roundPlanned));
            }
        }
    }
}

TEST_CASE("time without a week speaks of week 1, without a month of the latest") {
    const TempFolder folder;
    writeText(folder / "gym.json", smallBundle());
    const auto ran =
        bwright(folder.path(), {"time", "--bundle", (folder / "gym.json").string(), "--json"});
    const json said = json::parse(ran.out);
    CHECK(said.at("week") == 1);
    // 5 reps of 3 s and 9 of 3 s make a round of 42 s; low rounds: two, with a rest of 90 s
    // between.
    CHECK(said["sections"][0]["groups"][0]["round_planned"] == 42);
    CHECK(said["sections"][0]["planned"] == 42 + 90 + 42);
    CHECK(said["session"]["planned"] == 180 + 174 + 120);
}

TEST_CASE("time without --json is a table for people") {
    const TempFolder folder;
    writeText(folder / "gym.json", smallBundle());
    const auto ran = bwright(folder.path(), {"time", "--bundle", (folder / "gym.json").string()});
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    CHECK(ran.out == "Tide Mill · 2026-09 · week 1\n\n"
                     "          short  planned   long   budget\n"
                     "opening    3:00     3:00   3:00\n"
                     "strength   2:18     2:54   6:15\n"
                     "  A        2:18     2:54   6:15\n"
                     "closing    2:00     2:00   2:00\n"
                     "session    7:18     7:54  11:15  1:00:00\n");
}

TEST_CASE("A week or month that is not there is bad input, and is named") {
    const TempFolder folder;
    writeText(folder / "gym.json", smallBundle());
    const std::string gym = (folder / "gym.json").string();
    const auto run = [&](const char* option, const char* value) {
        return bwright(folder.path(), {"time", "--bundle", gym, option, value});
    };
    const auto week = run("--week", "5");
    CHECK(week.code == 2);
    CHECK(week.err == "--week 5: this month has weeks 1 to 4.\n");
    CHECK(run("--week", "0").code == 2);
    CHECK(run("--week", "two").code == 2);
    const auto month = run("--month", "2026-10");
    CHECK(month.code == 2);
    CHECK(month.err == "This gym has no month 2026-10. It has: 2026-09.\n");
    CHECK(run("--month", "September").code == 2);
    CHECK(week.out.empty());
}

} // namespace bw::test
