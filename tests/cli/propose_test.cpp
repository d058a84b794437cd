// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/model/fitting.hpp"
#include "blockwright/model/place.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
// The demo's latest month with an answer's exercises, as a bundle of the whole gym.
std::string filledBundle(const json& answer) {
    Gym gym;
    layOver(gym, demoBundle());
    Block month = *gym.latest();
    for (const json& slot : answer.at("slots")) {
        const Place place = placeFrom(month, slot.at("place").get<std::string>()).value();
        const ExerciseId id = ex(slot.at("exercise").get<std::string>());
        Slot& open = *slotAt(month, place);
        REQUIRE(open.open());
        open.exercise = id;
        open.dose = fittingDose(open, *gym.shelf.find(id), sectionAt(month, place)->kind);
    }
    gym.put(std::move(month));
    return writeBundle(bundleOf(gym));
}
} // namespace

TEST_CASE("What propose says an answer costs is what check says of the filled month") {
    const TempFolder folder;
    const Ran ran = bwright(folder.path(), {"propose", "--bundle", demoFile(), "--floor-runs", "30",
                                            "--top", "2", "--seconds", "60", "--json"});
    REQUIRE(ran.code == 0);
    const json said = json::parse(ran.out);
    CHECK(said.size() == 4);
    REQUIRE(said.at("answers").size() == 2);
    const json& best = said["answers"][0];
    CHECK(best.size() == 3);
    CHECK_FALSE(best.at("why").empty());
    CHECK(said.at("proved_best").get<bool>() == (said.at("gap").get<double>() == 0));
    CHECK(best.at("penalty").get<double>() <= said["answers"][1].at("penalty").get<double>());
    const auto penaltyOf = [&](const std::string& file) {
        const Ran checked =
            bwright(folder.path(), {"check", "--bundle", file, "--floor-runs", "30", "--json"});
        REQUIRE(checked.code <= 1);
        return json::parse(checked.out).at("penalty").get<double>();
    };
    CHECK(said.at("penalty_now").get<double>() == penaltyOf(demoFile()));
    for (const json& answer : said["answers"]) {
        const std::string file = (folder / "filled.bundle.json").string();
        writeText(file, filledBundle(answer));
        CHECK(answer.at("penalty").get<double>() == penaltyOf(file));
    }
}

TEST_CASE("Propose can make a month anew, and leaves what is locked and its main lifts") {
    const TempFolder folder;
    const Ran ran = bwright(folder.path(), {"propose", "--bundle", demoFile(), "--floor-runs", "0",
                                            "--top", "1", "--seconds", "0.2", "--anew", "--json"});
    REQUIRE(ran.code == 0);
    Gym gym;
    layOver(gym, demoBundle());
    const Block& month = *gym.latest();
    const json said = json::parse(ran.out);
    std::size_t filled = 0;
    for (const json& one : said.at("answers").at(0).at("slots")) {
        const Slot& slot =
            *slotAt(month, placeFrom(month, one.at("place").get<std::string>()).value());
        CHECK_FALSE(slot.locked);
        CHECK_FALSE(slot.main);
        if (slot.open()) continue;
        ++filled;
        const auto now = ex(one.at("exercise").get<std::string>());
        CHECK(gym.shelf.find(now)->patterns.largest() ==
              gym.shelf.find(*slot.exercise)->patterns.largest());
    }
    CHECK(filled > 4);
    CHECK(said["answers"][0].at("penalty").get<double>() <= said.at("penalty_now").get<double>());
}

TEST_CASE("Propose can be asked for one slot, and says what is wrong with a place") {
    const TempFolder folder;
    const auto ask = [&](const std::string& option, const std::string& value) {
        return bwright(folder.path(), {"propose", "--bundle", demoFile(), "--floor-runs", "0",
                                       "--json", option, value});
    };
    const Ran one = ask("--slot", "strength/4/1");
    REQUIRE(one.code == 0);
    const json said = json::parse(one.out);
    REQUIRE(said.at("answers").size() == 3);
    for (const json& answer : said["answers"]) {
        REQUIRE(answer.at("slots").size() == 1);
        CHECK(answer["slots"][0].at("place") == "strength/4/1");
    }
    CHECK(ask("--slot", "strength/9/1").code == 2);
    CHECK(ask("--section", "swimming").code == 2);
    const Ran locked = ask("--slot", "strength/3/1");
    CHECK(locked.code == 2);
    CHECK(locked.err == "strength/3/1 is locked: proposals leave it alone. Unlock it first.\n");
}

} // namespace bw::test
