// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/rules/check.hpp"
#include "blockwright/rules/floor_search.hpp"
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

namespace {
// With the class simulated so many times.
CheckResult engineSays(const Gym& gym, int runs, std::optional<Week> only = {}) {
    const Block& draft = *gym.latest();
    const FloorSearch search = floorSearch(gym, draft);
    FloorOptions o;
    o.runs = runs;
    const FloorStudy study = studyFloor(gym, draft, o, only, {}, {}, &search).value();
    return check(gym, draft, only, &study);
}
Gym demoGym() {
    Gym gym;
    layOver(gym, demoBundle());
    return gym;
}
std::string written(const TempFolder& folder, const Gym& gym) {
    const std::string file = (folder / "gym.bundle.json").string();
    writeText(file, writeBundle(bundleOf(gym)));
    return file;
}
} // namespace

TEST_CASE("check says of the demo's draft what the engine finds, over all weeks and in one") {
    const TempFolder folder;
    const Gym gym = demoGym();
    const auto all =
        bwright(folder.path(), {"check", "--bundle", demoFile(), "--floor-runs", "40", "--json"});
    checkAgainst(json::parse(all.out), engineSays(gym, 40), *gym.latest());
    const auto third = bwright(folder.path(), {"check", "--bundle", demoFile(), "--week", "3",
                                               "--floor-runs", "40", "--json"});
    checkAgainst(json::parse(third.out), engineSays(gym, 40, week(3)), *gym.latest());
}

TEST_CASE("check simulates a thousand classes by standard, and none with --floor-runs 0") {
    const TempFolder folder;
    Gym gym = demoGym();
    gym.settings.classMinutes = 45;
    const std::string file = written(folder, gym);
    const auto standard = json::parse(
        bwright(folder.path(), {"check", "--bundle", file, "--week", "1", "--json"}).out);
    checkAgainst(standard, engineSays(gym, 1000, week(1)), *gym.latest());
    const auto over = [](const json& said) {
        return std::ranges::count_if(said.at("findings"), [](const json& f) {
            return f.at("rule") == "overrun-chance" && !f.at("try").empty();
        });
    };
    CHECK(over(standard) == 1);
    const auto none =
        bwright(folder.path(), {"check", "--bundle", file, "--floor-runs", "0", "--json"});
    checkAgainst(json::parse(none.out), check(gym, *gym.latest()), *gym.latest());
    CHECK(over(json::parse(none.out)) == 0);
}

TEST_CASE("where the class can't be simulated, check says why and checks the rest") {
    const TempFolder folder;
    Gym gym = demoGym();
    for (KitItem item : std::vector(gym.kit)) {
        item.units = 0;
        item.loads.clear();
        gym.put(item);
    }
    const auto ran = bwright(folder.path(), {"check", "--bundle", written(folder, gym)});
    CHECK(ran.code == 1);
    CHECK(ran.err.starts_with("The class was not simulated. "));
    CHECK(ran.out.find("kit-short") != std::string::npos);
}

TEST_CASE("check ends with 1 when something stops the class, and with 0 when nothing does") {
    const TempFolder folder;
    const Gym gym = demoGym();
    bool seen[2] = {false, false};
    for (const auto& [month, block] : gym.blocks) {
        const bool stops = check(gym, *block).count(Level::Stop) > 0;
        if (seen[stops]) continue;
        seen[stops] = true;
        const auto ran = bwright(folder.path(), {"check", "--bundle", demoFile(), "--month",
                                                 month.text(), "--floor-runs", "0"});
        CHECK(ran.code == (stops ? 1 : 0));
        CHECK(ran.err.empty());
        CHECK((ran.out.find("■ 0 stop") == std::string::npos) == stops);
    }
    CHECK((seen[0] && seen[1]));
}

TEST_CASE("check names rule, place, sentence, limit and what to try for people") {
    const TempFolder folder;
    const Gym gym = demoGym();
    const auto ran =
        bwright(folder.path(), {"check", "--bundle", demoFile(), "--floor-runs", "20"});
    std::string flat = ran.out; // lines are broken at blanks
    for (std::size_t at; (at = flat.find("\n        ")) != std::string::npos;)
        flat.replace(at, 9, " ");
    for (const Finding& f : engineSays(gym, 20).findings) {
        CHECK(flat.find(f.rule) != std::string::npos);
        CHECK(flat.find(placeText(*gym.latest(), f.place)) != std::string::npos);
        CHECK(flat.find(f.text.english()) != std::string::npos);
        for (const Remedy& r : f.remedies)
            CHECK(flat.find("try: " + r.label.english()) != std::string::npos);
    }
}

TEST_CASE("check ends cleanly on Ctrl-C while it simulates") {
    const TempFolder folder;
    const auto ran = interrupted(folder.path(),
                                 {"check", "--bundle", demoFile(), "--floor-runs", "100000"}, 1500);
    CHECK(ran.code == 130);
    CHECK(ran.out.empty());
    CHECK(ran.err.find("Stopped as asked") != std::string::npos);
}

} // namespace bw::test
