// SPDX-License-Identifier: GPL-3.0-or-later
#include "blockwright/balance/balance.hpp"
#include "run_program.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

namespace bw::test {

using nlohmann::json;

namespace {
json said(const TempFolder& folder, std::vector<std::string> more = {}) {
    std::vector<std::string> arguments{"balance", "--bundle", demoFile(), "--json"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    const auto ran = bwright(folder.path(), arguments);
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    return json::parse(ran.out);
}
void checkRatio(const json& value, const Ratio& ratio) {
    if (ratio.value())
        CHECK(value.get<double>() == *ratio.value());
    else
        CHECK(value.is_null());
}
void checkBalance(const json& value, const Balance& engine) {
    CHECK(value.size() == 4);
    CHECK(value.at("patterns").size() == kCount<Pattern>);
    for (std::size_t i = 0; i < kCount<Pattern>; ++i)
        CHECK(value["patterns"].at(std::string(wordOf(static_cast<Pattern>(i)))).get<double>() ==
              engine.patterns[i]);
    CHECK(value.at("ratios").size() == 4);
    checkRatio(value["ratios"].at("push-pull"), engine.pushPull());
    checkRatio(value["ratios"].at("knee-hip"), engine.kneeHip());
    checkRatio(value["ratios"].at("horizontal-vertical"), engine.horizontalVertical());
    checkRatio(value["ratios"].at("one-sided"), engine.oneSidedShare());
    CHECK(value.at("planes").size() == 3);
    for (const Plane p : {Plane::Sagittal, Plane::Frontal, Plane::Transverse})
        checkRatio(value["planes"].at(std::string(wordOf(p))), engine.planeShare(p));
    CHECK(value.at("muscles").size() == engine.muscles.size());
    for (const auto& [muscle, sets] : engine.muscles)
        CHECK(value["muscles"].at(muscle.text()).get<double>() == sets);
}
} // namespace

TEST_CASE("balance says what the engine counts, of the month, a week and the window") {
    const TempFolder folder;
    Gym gym;
    layOver(gym, demoBundle());
    const auto month = said(folder);
    CHECK(month.size() == 2);
    checkBalance(month.at("block"), balancesOf(gym, *gym.latest()).block);
    checkBalance(month.at("window"), balancesOf(gym, *gym.latest()).window);
    const auto first = said(folder, {"--week", "1"});
    checkBalance(first.at("block"), measureBalance(gym, *gym.latest(), week(1)));
    CHECK(first.at("window") == month.at("window"));
    CHECK(first.at("block") != month.at("block"));
    const auto earlier = said(folder, {"--month", "2026-03"});
    checkBalance(earlier.at("block"), measureBalance(gym, *gym.block(bw::test::month("2026-03"))));
}

TEST_CASE("a ratio with nothing under the line is null in JSON and a dash for people") {
    const TempFolder folder;
    writeText(folder / "small.bundle.json", smallBundle()); // a horizontal push and pull
    const std::vector<std::string> ask{"balance", "--bundle",
                                       (folder / "small.bundle.json").string()};
    auto asJson = ask;
    asJson.emplace_back("--json");
    const auto small = json::parse(bwright(folder.path(), asJson).out);
    CHECK(small["block"]["ratios"]["horizontal-vertical"].is_null());
    CHECK(small["block"]["ratios"]["push-pull"] == 1);
    const auto text = bwright(folder.path(), ask).out;
    CHECK(text.find("\n  push : pull             1.00     1.00\n") != std::string::npos);
    CHECK(text.find("\n  horizontal : vertical      –        –\n") != std::string::npos);
    CHECK(text.find("inf") == std::string::npos);
}

TEST_CASE("balance refuses a week that the month does not have") {
    const TempFolder folder;
    const auto ran = bwright(folder.path(), {"balance", "--bundle", demoFile(), "--week", "7"});
    CHECK(ran.code == 2);
    CHECK(ran.err.find("this month has weeks 1 to 4") != std::string::npos);
}

} // namespace bw::test
