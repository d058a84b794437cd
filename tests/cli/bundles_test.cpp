// SPDX-License-Identifier: GPL-3.0-or-later
// Bundles laid over each other, their faults, and files that can't be read.
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

#include <sys/stat.h>

namespace bw::test {

using nlohmann::json;

namespace {
std::string bundleWith(std::string_view parts) {
    return R"({"format": "blockwright-bundle", "version": 1, )" + std::string(parts) + "}";
}
} // namespace

TEST_CASE("A later bundle wins over an earlier one, and only where it speaks") {
    const TempFolder folder;
    const std::string base = (folder / "base.json").string(),
                      over = (folder / "over.json").string();
    writeText(base, smallBundle());
    writeText(over, bundleWith(R"("gym": {"class": {"opening_seconds": 60}})"));
    const auto session = [&](const std::vector<std::string>& bundles) {
        std::vector<std::string> arguments{"time", "--json"};
        for (const auto& b : bundles) arguments.insert(arguments.end(), {"--bundle", b});
        const auto ran = bwright(folder.path(), arguments);
        REQUIRE(ran.code == 0);
        return json::parse(ran.out)["session"]["planned"].get<int>();
    };
    CHECK(session({base}) == 180 + 174 + 120);
    CHECK(session({base, over}) == 60 + 174 + 120);
    CHECK(session({over, base}) == 180 + 174 + 120);
}

TEST_CASE("A bundle of months alone stands on the Shelf that comes with the program") {
    const TempFolder folder;
    writeText(folder / "month.json", bundleWith(R"("blocks": [{"month": "2026-09", "sections": [
        {"kind": "strength", "groups": [{"rounds": 2, "rest_seconds": 60,
         "slots": [{"exercise": "goblet-squat", "reps": 8}]}]}]}])"));
    const auto ran =
        bwright(folder.path(), {"time", "--json", "--bundle", (folder / "month.json").string()});
    REQUIRE(ran.code == 0);
    CHECK(json::parse(ran.out)["sections"][0]["groups"][0]["round_planned"].get<double>() > 8);
}

TEST_CASE("All faults of all bundles are told with file and pointer, and nothing is answered") {
    const TempFolder folder;
    writeText(folder / "one.json", bundleWith(R"("gym": {"class": {"minutes": 1, "places": 0}})"));
    writeText(folder / "two.json", bundleWith(R"("blocks": [{"month": "2026-13"}])"));
    writeText(folder / "three.json", "{");
    const auto ran =
        bwright(folder.path(),
                {"check", "--json", "--bundle", (folder / "one.json").string(), "--bundle",
                 (folder / "two.json").string(), "--bundle", (folder / "three.json").string()});
    CHECK(ran.code == 2);
    CHECK(ran.out.empty());
    for (const char* fault : {"one.json: /gym/class/minutes: ", "one.json: /gym/class/places: ",
                              "two.json: /blocks/0/month: ", "three.json: "})
        CHECK(ran.err.find(fault) != std::string::npos);
}

TEST_CASE("A key that is not known is a note, and the answer comes all the same") {
    const TempFolder folder;
    auto bundle = json::parse(smallBundle());
    bundle["gym"]["mascot"] = "heron";
    writeText(folder / "gym.json", bundle.dump());
    const auto ran = bwright(folder.path(), {"time", "--bundle", (folder / "gym.json").string()});
    CHECK(ran.code == 0);
    CHECK(ran.err.find("gym.json: note: /gym/mascot: ") != std::string::npos);
}

TEST_CASE("A file that can't be read ends with 3") {
    const TempFolder folder;
    const auto missing =
        bwright(folder.path(), {"time", "--bundle", (folder / "none.json").string()});
    CHECK(missing.code == 3);
    CHECK(missing.err.find("none.json can't be read: No such file or directory.") !=
          std::string::npos);
    CHECK(bwright(folder.path(), {"time", "--bundle", folder.path().string()}).code == 3);
    const auto gym = bwright(folder.path(), {"time", "--gym", (folder / "none.bwgym").string()});
    CHECK(gym.code == 3);
    CHECK(gym.err.find("none.bwgym") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder / "none.bwgym"));
    writeText(folder / "letter.bwgym", "Dear coach");
    CHECK(bwright(folder.path(), {"check", "--gym", (folder / "letter.bwgym").string()}).code == 3);
    CHECK(readText(folder / "letter.bwgym") == "Dear coach");
}

TEST_CASE("Ctrl-C ends a command that waits for its file, cleanly") {
    const TempFolder folder;
    const auto pipe = (folder / "slow.json").string();
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0); // nobody will write into it
    const auto ran = interrupted(
        folder.path(), {"import", "--gym", (folder / "new.bwgym").string(), "--bundle", pipe}, 700);
    CHECK(ran.code == 130);
    CHECK(ran.err == "Stopped as asked; nothing was changed.\n");
    CHECK_FALSE(std::filesystem::exists(folder / "new.bwgym"));
}

} // namespace bw::test
