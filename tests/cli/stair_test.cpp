// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/ledger/target.hpp"
#include "blockwright/ramp/session_load.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
const MemberId kAnn = MemberId::parse("m-001").value();

// A month with a bar and an exercise without load, and one member who squatted in August.
Bundle houseBundle() {
    Gym gym;
    gym.settings.name = "Tide Mill";
    Exercise squat = exercise("squat", Pattern::Squat);
    squat.load = LoadId::parse("barbell").value();
    squat.needs = {{{kit("bar"), 1, {}}}};
    gym.shelf.put(squat);
    gym.shelf.put(exercise("chin-up", Pattern::VerticalPull));
    gym.put(KitItem{kit("bar"),
                    "Bar",
                    6,
                    Claim::Group,
                    {},
                    Mass::fromKg(20).value(),
                    {{Mass::fromKg(20).value(), 4},
                     {Mass::fromKg(10).value(), 4},
                     {Mass::fromKg(5).value(), 4},
                     {Mass::fromKg(2.5).value(), 4}},
                    {}});
    gym.put(block("2026-09",
                  {section(SectionKind::Strength,
                           {group(rounds(2, 3), secondsRange(60, 60),
                                  {slot("squat", reps(5, 5)), slot("chin-up", reps(5, 8))})})}));
    gym.put(Member{kAnn, "Ann", {}, true, {}});
    std::vector<LiftResult> results;
    for (const char* date : {"2026-08-20", "2026-08-27"})
        results.push_back({kAnn,
                           Date::parse(date).value(),
                           ex("squat"),
                           1,
                           5,
                           Rir::of(1).value(),
                           Mass::fromKg(100).value(),
                           {}});
    return bundleOf(gym, std::move(results));
}

std::string houseFile(const TempFolder& folder) {
    writeText(folder / "gym.json", writeBundle(houseBundle()));
    return (folder / "gym.json").string();
}
} // namespace

TEST_CASE("stair says what every slot asks of the class week by week") {
    const TempFolder folder;
    const auto ran = bwright(folder.path(), {"stair", "--bundle", houseFile(folder), "--json"});
    REQUIRE(ran.code == 0);
    const json said = json::parse(ran.out);
    CHECK(said.at("month") == "2026-09");
    CHECK(said.at("weeks").size() == 4);
    CHECK(said["weeks"][0].at("rpe") == 6);
    CHECK(said["weeks"][3].at("intent") == "challenge");
    REQUIRE(said.at("slots").size() == 2);
    const json& squat = said["slots"][0];
    CHECK(squat.at("place") == "strength/1/1");
    CHECK(squat.at("exercise") == "squat");
    CHECK(squat["weeks"][0].at("rounds") == json::array({2, 2}));
    CHECK(squat["weeks"][1].at("rounds") == json::array({2, 3}));
    CHECK(squat["weeks"][2].at("rir") == 2);
    CHECK(squat["weeks"][2].at("reps") == json::array({5, 5}));
    CHECK_FALSE(said.contains("member"));
}

TEST_CASE("stair of a member says what the engine reckons, from a bundle and from a gym file") {
    const TempFolder folder;
    const std::string bundle = houseFile(folder), file = (folder / "gym.bwgym").string();
    REQUIRE(bwright(folder.path(), {"import", "--gym", file, "--bundle", bundle}).code == 0);
    const auto ran =
        bwright(folder.path(), {"stair", "--bundle", bundle, "--member", "m-001", "--json"});
    REQUIRE(ran.code == 0);
    CHECK(bwright(folder.path(), {"stair", "--gym", file, "--member", "m-001", "--json"}).out ==
          ran.out);
    const json said = json::parse(ran.out);
    CHECK(said.at("on") == "2026-08-27");
    const json& squat = said["slots"][0];
    CHECK(squat["estimate"].at("kg") == 120);
    CHECK(squat["estimate"].at("days") == 2);
    CHECK(squat["last"].at("load_kg") == 100);
    // 120 / 1.3, / 1.2667, / 1.2333, / 1.2, to steps of 5
    std::vector<double> loads;
    for (const json& week : squat["weeks"]) loads.push_back(week["target"].at("load_kg"));
    CHECK(loads == std::vector<double>{90, 95, 95, 100});
    CHECK(squat["weeks"][0]["target"].at("loading") == "90 kg: each side 20 + 10 + 5");
    CHECK(said["slots"][1]["weeks"][0]["target"].at("aim") == "body");
    CHECK(said["done"][0].at("visits") == 0);
}

TEST_CASE("stair as it stood on an earlier day knows nothing of later results") {
    const TempFolder folder;
    const auto ran = bwright(folder.path(), {"stair", "--bundle", houseFile(folder), "--member",
                                             "m-001", "--on", "2026-08-20", "--json"});
    const json said = json::parse(ran.out);
    CHECK(said["slots"][0]["estimate"].at("days") == 1);
    CHECK(said["slots"][0]["last"].at("date") == "2026-08-20");
}

TEST_CASE("stair for people is a table and a reason for each load") {
    const TempFolder folder;
    const auto ran =
        bwright(folder.path(), {"stair", "--bundle", houseFile(folder), "--member", "m-001"});
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    CHECK(ran.out.find("Tide Mill · 2026-09 · Ann · as of 2026-08-27\n") == 0);
    CHECK(ran.out.find("week 1  week 2  week 3     week 4\n") != std::string::npos);
    CHECK(
        ran.out.find(
            "strength/1/1  squat    5       120 kg     113–128 kg   90 kg   95 kg   95 kg  100 kg\n"
            "strength/1/2  chin-up  5–8          –                      –       –       –       "
            "–\n") != std::string::npos);
    CHECK(ran.out.find("week 1  90 kg: each side 20 + 10 + 5. 92.3 kg for 5 repetitions with 4 in "
                       "reserve, by\n") != std::string::npos);
}

TEST_CASE("stair and ledger refuse who is not there and days that are none") {
    const TempFolder folder;
    const std::string gym = houseFile(folder);
    const auto refused = [&](std::vector<std::string> arguments) {
        arguments.insert(arguments.begin() + 1, {"--bundle", gym});
        const auto ran = bwright(folder.path(), arguments);
        CHECK(ran.code == 2);
        CHECK(ran.out.empty());
        return ran.err;
    };
    CHECK(refused({"stair", "--member", "m-009"}) == "This gym has no member “m-009”.\n");
    CHECK(refused({"ledger", "--member", "M 9"}) == "This gym has no member “M 9”.\n");
    (void)refused({"stair", "--member", "m-001", "--on", "yesterday"});
    (void)refused({"stair", "--on", "2026-09-01"}); // of whom?
    (void)refused({"ledger", "--exercise", "Front squat"});
    (void)refused({"stair", "--month", "2027-01"});
}

TEST_CASE("ledger of the demo is the engine's, from the file as from the bundle") {
    const TempFolder folder;
    const std::string file = (folder / "gym.bwgym").string();
    REQUIRE(bwright(folder.path(), {"import", "--gym", file, "--bundle", demoFile()}).code == 0);
    Gym gym;
    layOver(gym, demoBundle());
    Ledger ledger(gym, Date::parse("2026-11-21").value());
    for (const LiftResult& r : demoBundle().results) ledger.add(r);
    for (const std::vector<std::string>& of :
         {std::vector<std::string>{"--gym", file}, {"--bundle", demoFile()}}) {
        std::vector<std::string> arguments{"ledger", "--json"};
        arguments.insert(arguments.end(), of.begin(), of.end());
        const auto ran = bwright(folder.path(), arguments);
        REQUIRE(ran.code == 0);
        const json said = json::parse(ran.out);
        CHECK(said.at("on") == "2026-11-21");
        CHECK(said.at("members").size() == 24); // the active ones
        for (const json& member : said["members"]) {
            const auto id = MemberId::parse(member.at("member").get<std::string>()).value();
            CHECK(member.at("exercises").size() == ledger.exercisesOf(id).size());
            for (const json& line : member["exercises"]) {
                const auto e = ledger.estimate(id, ex(line.at("exercise").get<std::string>()));
                CHECK(line.at("estimate").is_null() == !e.has_value());
                if (e) CHECK(line["estimate"].at("kg").get<double>() == Approx(e->kg).margin(5e-4));
            }
        }
    }
}

TEST_CASE("ledger of one member and exercise goes day by day") {
    const TempFolder folder;
    const std::string gym = houseFile(folder);
    const std::vector<std::string> arguments{"ledger", "--bundle",   gym,    "--member",
                                             "m-001",  "--exercise", "squat"};
    const auto ran = bwright(folder.path(), arguments);
    CHECK(
        ran.out ==
        "Tide Mill · Ann · squat · as of 2026-08-27 · Epley\n\n"
        "day         best set            estimate  8 times in 10\n"
        "2026-08-20  5 × 100 kg, 1 left    120 kg     111–130 kg\n"
        "2026-08-27  5 × 100 kg, 1 left    120 kg     113–128 kg\n\n"
        "About 120 kg (8 times in 10 from 113 kg to 128 kg), from 2 days since 2026-08-20, last 5\n"
        "× 100 kg with 1 in reserve on 2026-08-27.\n"
        "Next: 95 kg. 97.3 kg for 5 repetitions with 2 in reserve, by the estimate.\n");
    auto asJson = arguments;
    asJson.emplace_back("--json");
    const json said = json::parse(bwright(folder.path(), asJson).out);
    CHECK(said["members"][0]["exercises"][0].at("days").size() == 2);
}

} // namespace bw::test
