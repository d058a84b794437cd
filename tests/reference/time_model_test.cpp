// SPDX-License-Identifier: GPL-3.0-or-later
// The engine's times against a second program, written apart from it in exact fractions.
#include "blockwright/time/timing.hpp"
#include "interchange/bundle.hpp"
#include "reference/random_gym.hpp"
#include "support/catch.hpp"
#include "support/fixtures.hpp"

#include <nlohmann/json.hpp>

#include <cstdlib>

using namespace bw;
using namespace bw::test;
using nlohmann::json;

namespace {
json milliseconds(const Figures& f) {
    return {roundHalvesUp(f.low).count(), roundHalvesUp(f.planned).count(),
            roundHalvesUp(f.high).count()};
}

// In the shape that time_model.py prints.
json timesOf(const Gym& gym, const Block& block) {
    json weeks = json::array();
    for (int w = 1; w <= static_cast<int>(block.stair.size()); ++w) {
        const SessionTime t = timeSession(gym.settings, gym.shelf, block, week(w));
        json sections = json::array();
        for (const SectionTime& s : t.sections) {
            json groups = json::array();
            for (const GroupTime& g : s.groups)
                groups.push_back({{"total", milliseconds(g.total)},
                                  {"round", roundHalvesUp(g.roundPlanned).count()}});
            sections.push_back({{"total", milliseconds(s.total)}, {"groups", groups}});
        }
        weeks.push_back({{"session", milliseconds(t.total)}, {"sections", sections}});
    }
    return weeks;
}
json timesOf(const Gym& gym) {
    json out = json::object();
    for (const auto& [month, block] : gym.blocks) out[month.text()] = timesOf(gym, *block);
    return out;
}

// What time_model.py says of the bundles, in their order.
json secondOpinion(const TempFolder& folder, const std::vector<std::string>& names) {
    std::string command = "cd '" + folder.path().string() +
                          "' && python3 '" BW_SOURCE_DIR "/tests/reference/time_model.py'";
    for (const std::string& name : names) command += " '" + name + "'";
    command += " > answer.json";
    REQUIRE(std::system(command.c_str()) == 0);
    return json::parse(readText(folder / "answer.json"));
}
} // namespace

TEST_CASE("drawn months take to the millisecond what a second program says") {
    constexpr int kGyms = 300;
    const TempFolder folder;
    std::vector<std::string> names;
    std::vector<Gym> gyms;
    for (int i = 0; i < kGyms; ++i) {
        gyms.push_back(randomGym(static_cast<std::uint64_t>(1'000 + i)));
        names.push_back("gym" + std::to_string(i) + ".bundle.json");
        writeText(folder / names.back(), writeBundle(bundleOf(gyms.back())));
    }
    const json answer = secondOpinion(folder, names);
    REQUIRE(answer.size() == kGyms);
    for (std::size_t i = 0; i < kGyms; ++i) {
        INFO("seed " << 1'000 + i);
        CHECK(timesOf(gyms[i]) == answer[i]);
    }
}

TEST_CASE("the demo's months take to the millisecond what a second program says") {
    const std::filesystem::path demo = BW_SOURCE_DIR "/data/demo";
    std::vector<std::string> names;
    Gym gym;
    layOver(gym, shippedShelf());
    for (const auto& entry : std::filesystem::directory_iterator(demo)) {
        if (!entry.path().string().ends_with(".bundle.json")) continue;
        const auto reading = readBundle(readText(entry.path()), &gym);
        if (reading.bundle) layOver(gym, *reading.bundle);
    }
    REQUIRE(gym.blocks.size() > 3);
    const TempFolder folder;
    writeText(folder / "all.json", writeBundle(bundleOf(gym)));
    CHECK(timesOf(gym) == secondOpinion(folder, {"all.json"})[0]);
}
