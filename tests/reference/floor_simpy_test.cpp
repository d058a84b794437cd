// SPDX-License-Identifier: GPL-3.0-or-later
// The class against a second program, written apart from it as processes of SimPy (floor_simpy.py).
// Where SimPy is missing, the tests say so and compare nothing.
#include "core/floor/floor_random.hpp"
#include "interchange/bundle.hpp"
#include "support/catch.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdlib>
#include <sys/wait.h>

using namespace bw;
using namespace bw::test;
using nlohmann::json;

namespace {
const std::string kDemo = BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json";

Gym demoGym() {
    Gym gym;
    layOver(gym, *readBundle(readText(kDemo), &gym).bundle);
    return gym;
}

// Null, after a warning, when SimPy is not there.
json secondOpinion(const TempFolder& folder, const json& scenarios) {
    writeText(folder / "scenarios.json", scenarios.dump());
    const std::string command = "cd '" + folder.path().string() +
                                "' && /usr/bin/python3 -B '" BW_SOURCE_DIR
                                "/tests/reference/floor_simpy.py' scenarios.json > answers.json";
    const int code = std::system(command.c_str());
    if (WIFEXITED(code) && WEXITSTATUS(code) == 77) {
        WARN("SimPy 3 is not installed (Debian: python3-simpy3); nothing was compared.");
        return nullptr;
    }
    REQUIRE(code == 0);
    return json::parse(readText(folder / "answers.json"));
}

json scenario(const std::string& bundle, const FloorOptions& o, int members) {
    json s{{"bundle", bundle}, {"week", o.week.number()},   {"members", members},
           {"start", nullptr}, {"steady", o.steady},        {"runs", o.steady ? 1 : o.runs},
           {"seed", o.seed},   {"pace_sigma", o.paceSigma}, {"set_sigma", o.setSigma}};
    if (std::holds_alternative<StartTogether>(o.start)) s["start"] = "together";
    if (std::holds_alternative<StartSpread>(o.start)) s["start"] = "spread";
    if (const auto* counts = std::get_if<StartCounts>(&o.start)) s["start"] = counts->heads;
    return s;
}

std::int64_t sumOf(const json& list) {
    std::int64_t sum = 0;
    for (const json& x : list) sum += x.get<std::int64_t>();
    return sum;
}

// All that a steady class says, to the millisecond.
void compareSteady(const Gym& gym, const FloorAnswer& a, const json& run) {
    const auto members = static_cast<double>(a.members);
    CHECK(a.finish.p50.count() == run["finish"].get<std::int64_t>());
    REQUIRE(a.sections.size() == run["ends"].size());
    for (std::size_t s = 0; s < a.sections.size(); ++s) {
        CHECK(a.sections[s].end.p50.count() == run["ends"][s].get<std::int64_t>());
        for (std::size_t g = 0; g < a.sections[s].groups.size(); ++g)
            CHECK(a.sections[s].groups[g].mean ==
                  static_cast<double>(sumOf(run["rounds"][s][g])) / members);
    }
    CHECK(a.wait.mean.count() == static_cast<double>(sumOf(run["waits"])) / members);
    std::int64_t ends = run["ends"].empty() ? 0 : run["ends"].back().get<std::int64_t>();
    for (const FloorKitUse& use : a.kit) {
        INFO(use.kit.text());
        const json& waits = run["kit_waits"][use.kit.text()];
        CHECK(use.wait.mean.count() == static_cast<double>(sumOf(waits)) / members);
        std::vector<std::int64_t> sorted = waits;
        std::ranges::sort(sorted);
        CHECK(use.wait.p90.count() ==
              sorted[static_cast<std::size_t>((9 * a.members + 9) / 10 - 1)]);
        CHECK(use.busy * gym.findKit(use.kit)->units * static_cast<double>(ends) ==
              Approx(run["taken"][use.kit.text()].get<double>()));
    }
}

struct Case {
    Gym gym;
    Block draft;
    FloorOptions options;
    int members;
};
void compareAll(const TempFolder& folder, const std::vector<Case>& cases) {
    json scenarios = json::array();
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const std::string name = "floor" + std::to_string(i) + ".bundle.json";
        Gym gym = cases[i].gym;
        gym.put(cases[i].draft);
        writeText(folder / name, writeBundle(bundleOf(gym)));
        scenarios.push_back(scenario(name, cases[i].options, cases[i].members));
    }
    const json answers = secondOpinion(folder, scenarios);
    if (answers.is_null()) return;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        INFO("case " << i);
        FloorOptions o = cases[i].options;
        o.members = cases[i].members;
        compareSteady(cases[i].gym, simulateFloor(cases[i].gym, cases[i].draft, o).value(),
                      answers[i]["runs"][0]);
    }
}

// Mean of the runs, and of it the standard error, in milliseconds.
struct Sample {
    double mean = 0, error = 0;
};
template <class Value> Sample sampleOf(const json& runs, Value value) {
    double sum = 0, squares = 0;
    const auto n = static_cast<double>(runs.size());
    for (const json& run : runs) {
        sum += value(run);
        squares += value(run) * value(run);
    }
    return {sum / n, std::sqrt(std::max(0.0, squares / n - sum / n * (sum / n)) / n)};
}
// Both sides drew as many runs, so their difference has twice the variance.
void checkNear(double ours, const Sample& theirs) {
    CHECK(std::abs(ours - theirs.mean) <= 4 * std::sqrt(2.0) * theirs.error);
}
} // namespace

TEST_CASE("steady classes on drawn floors take to the millisecond what a second program says") {
    const TempFolder folder;
    std::vector<Case> cases;
    std::uint64_t seed = 1;
    while (cases.size() < 400) {
        RandomFloor f = servedFloor(seed);
        FloorOptions o;
        o.steady = true;
        if (cases.size() % 5 == 1) o.start = StartTogether{};
        if (cases.size() % 5 == 2) o.start = StartSpread{};
        cases.push_back({f.t.gym, f.t.draft, o, f.members});
    }
    compareAll(folder, cases);
}

TEST_CASE("steady classes of the demo take to the millisecond what a second program says") {
    const TempFolder folder;
    const Gym gym = demoGym();
    std::vector<Case> cases;
    for (const auto& [month, block] : gym.blocks)
        for (const int members : {1, 7, 12, 19}) {
            if (!floorShortages(gym, *block).empty()) continue;
            FloorOptions o;
            o.steady = true;
            o.week = week(1 + static_cast<int>(cases.size()) % 4);
            Gym one = gym;
            one.blocks.clear();
            cases.push_back({one, *block, o, members});
        }
    REQUIRE(cases.size() > 40);
    compareAll(folder, cases);
}

TEST_CASE("drawn classes agree on average with a second program that draws by itself") {
    const TempFolder folder;
    const Gym gym = demoGym();
    FloorOptions o;
    o.runs = 400;
    o.week = week(2);
    const int members = gym.settings.places;
    const json answers = secondOpinion(folder, json::array({scenario(kDemo, o, members)}));
    if (answers.is_null()) return;
    const json& runs = answers[0]["runs"];
    const FloorAnswer a = simulateFloor(gym, *gym.latest(), o).value();
    const auto number = [](const json& x) { return x.get<double>(); };
    checkNear(a.finish.mean.count(),
              sampleOf(runs, [&](const json& r) { return number(r["finish"]); }));
    for (std::size_t s = 0; s < a.sections.size(); ++s) {
        checkNear(a.sections[s].end.mean.count(),
                  sampleOf(runs, [&](const json& r) { return number(r["ends"][s]); }));
        for (std::size_t g = 0; g < a.sections[s].groups.size(); ++g)
            checkNear(a.sections[s].groups[g].mean, sampleOf(runs, [&](const json& r) {
                          return static_cast<double>(sumOf(r["rounds"][s][g])) / members;
                      }));
    }
    checkNear(a.wait.mean.count(), sampleOf(runs, [&](const json& r) {
                  return static_cast<double>(sumOf(r["waits"])) / members;
              }));
    for (const FloorKitUse& use : a.kit)
        checkNear(use.wait.mean.count(), sampleOf(runs, [&](const json& r) {
                      return static_cast<double>(sumOf(r["kit_waits"][use.kit.text()])) / members;
                  }));
}
