// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/check.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
void checkFinding(const json& said, const Finding& f, const Block& block) {
    CHECK(said.at("rule") == f.rule);
    CHECK(said.at("level") == wordOf(f.level));
    CHECK(said.at("place") == placeText(block, f.place));
    CHECK(said.at("measured").get<double>() == f.measured);
    if (f.limit.band)
        CHECK(said.at("limit") == json::array({f.limit.lo, f.limit.hi}));
    else
        CHECK(said.at("limit").get<double>() == f.limit.lo);
    CHECK(said.at("unit") == f.unit);
    CHECK(said.at("basis") == f.basis.english());
    CHECK(said.at("text") == f.text.english());
    REQUIRE(said.at("try").size() == f.remedies.size());
    for (std::size_t i = 0; i < f.remedies.size(); ++i)
        CHECK(said["try"][i] == f.remedies[i].label.english());
    CHECK(said.size() == 9);
}
void checkAgainst(const json& said, const CheckResult& engine, const Block& block) {
    CHECK(said.at("penalty").get<double>() == engine.penalty);
    REQUIRE(said.at("findings").size() == engine.findings.size());
    for (std::size_t i = 0; i < engine.findings.size(); ++i)
        checkFinding(said["findings"][i], engine.findings[i], block);
}
} // namespace

TEST_CASE("check says of the demo's draft what the engine finds, over all weeks and in one") {
    const TempFolder folder;
    Gym gym;
    layOver(gym, demoBundle());
    const auto all = bwright(folder.path(), {"check", "--bundle", demoFile(), "--json"});
    checkAgainst(json::parse(all.out), check(gym, *gym.latest()), *gym.latest());
    const auto third =
        bwright(folder.path(), {"check", "--bundle", demoFile(), "--week", "3", "--json"});
    checkAgainst(json::parse(third.out), check(gym, *gym.latest(), week(3)), *gym.latest());
}

TEST_CASE("check ends with 1 when something stops the class, and with 0 when nothing does") {
    const TempFolder folder;
    Gym gym;
    layOver(gym, demoBundle());
    bool seen[2] = {false, false};
    for (const auto& [month, block] : gym.blocks) {
        const bool stops = check(gym, *block).count(Level::Stop) > 0;
        if (seen[stops]) continue;
        seen[stops] = true;
        const auto ran =
            bwright(folder.path(), {"check", "--bundle", demoFile(), "--month", month.text()});
        CHECK(ran.code == (stops ? 1 : 0));
        CHECK(ran.err.empty());
        CHECK((ran.out.find("■ 0 stop") == std::string::npos) == stops);
    }
    CHECK((seen[0] && seen[1]));
}

TEST_CASE("check names rule, place, sentence, limit and what to try for people") {
    const TempFolder folder;
    Gym gym;
    layOver(gym, demoBundle());
    const auto ran = bwright(folder.path(), {"check", "--bundle", demoFile()});
    std::string flat = ran.out; // lines are broken at blanks
    for (std::size_t at; (at = flat.find("\n        ")) != std::string::npos;)
        flat.replace(at, 9, " ");
    for (const Finding& f : check(gym, *gym.latest()).findings) {
        CHECK(flat.find(f.rule) != std::string::npos);
        CHECK(flat.find(placeText(*gym.latest(), f.place)) != std::string::npos);
        CHECK(flat.find(f.text.english()) != std::string::npos);
        for (const Remedy& r : f.remedies)
            CHECK(flat.find("try: " + r.label.english()) != std::string::npos);
    }
}

} // namespace bw::test
