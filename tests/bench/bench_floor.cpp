// SPDX-License-Identifier: GPL-3.0-or-later
// How fast classes are played: the demo's draft cut to four sections with seven groups, twelve
// members. Prints classes a second, how that grows with the members, and how many times faster it
// is than the SimPy model of tests/reference on the same draft (where SimPy is installed). Ends
// with 1 when 1 000 classes take more than 50 ms, or 10 000 with best start and what buys the most
// more than 5 s on two threads, or SimPy is less than 100 times slower.
#include "blockwright/floor/floor.hpp"
#include "interchange/bundle.hpp"
#include "support/fixtures.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <optional>

using namespace bw;
using namespace bw::test;

namespace {
constexpr double kMostMsOf1000 = 50, kMostMsOfAll = 5000, kLeastRatio = 100;

Gym demo() {
    Gym gym;
    layOver(gym,
            *readBundle(readText(BW_SOURCE_DIR "/data/demo/saltmarsh-boathouse.bundle.json"), &gym)
                 .bundle);
    return gym;
}

// Warm-up, power, one strength section, a finisher of two: seven groups.
Block sevenGroups(const Gym& gym) {
    Block draft = *gym.latest();
    draft.sections.erase(draft.sections.begin() + 3);
    draft.sections.back().groups.pop_back();
    return draft;
}

// Wall time of the fastest of some goes, in milliseconds.
double fastest(const Gym& gym, const Block& draft, const FloorOptions& o, int goes) {
    double best = 1e300;
    for (int i = 0; i < goes; ++i) {
        const auto start = std::chrono::steady_clock::now();
        if (!simulateFloor(gym, draft, o)) std::abort();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        best = std::min(best, took.count());
    }
    return best;
}

// Processor time of a class in the SimPy model, in milliseconds; none without SimPy.
std::optional<double> simpyTime(const Gym& gym, const Block& draft) {
    constexpr int kRuns = 40;
    const TempFolder folder;
    Gym one = gym;
    one.blocks.clear();
    one.put(draft);
    writeText(folder / "draft.bundle.json", writeBundle(bundleOf(one)));
    writeText(folder / "scenario.json",
              R"([{"bundle": "draft.bundle.json", "week": 2, "members": 12, "start": null,)"
              R"( "steady": false, "runs": )" +
                  std::to_string(kRuns) + R"(, "seed": 1, "pace_sigma": 0.15, "set_sigma": 0.1}])");
    const std::string command = "cd '" + folder.path().string() +
                                "' && /usr/bin/python3 -B '" BW_SOURCE_DIR
                                "/tests/reference/floor_simpy.py' scenario.json > answer.json";
    if (std::system(command.c_str()) != 0) return std::nullopt;
    const std::string answer = readText(folder / "answer.json");
    const auto at = answer.rfind("\"seconds\": ");
    return std::stod(answer.substr(at + 11)) * 1000 / kRuns;
}

bool told(const char* what, double is, double limit, bool atMost) {
    const bool good = atMost ? is <= limit : is >= limit;
    std::printf("%-52s %9.1f  (%s %.0f)%s\n", what, is, atMost ? "at most" : "at least", limit,
                good ? "" : "  MISSED");
    return good;
}

bool reportMain(const Gym& gym, const Block& draft) {
    FloorOptions o;
    o.week = Week::of(2).value();
    o.members = 12;
    const double thousand = fastest(gym, draft, o, 40);
    std::printf("%-52s %9.0f\n", "classes a second, one thread", 1e6 / thousand);
    bool good = told("1 000 classes, one thread, ms", thousand, kMostMsOf1000, true);
    o.runs = 10'000;
    o.threads = 2;
    o.buys = true;
    good = told("10 000 with best start and buys, two threads, ms", fastest(gym, draft, o, 2),
                kMostMsOfAll, true) &&
           good;
    if (const auto slow = simpyTime(gym, draft))
        good =
            told("times faster than SimPy", *slow / (thousand / 1000), kLeastRatio, false) && good;
    else
        std::puts("SimPy is not installed; nothing to compare with.");
    return good;
}

void reportMembers(const Gym& gym, const Block& draft) {
    FloorOptions o;
    o.week = Week::of(2).value();
    o.runs = 200;
    for (const int members : {1, 12, 25, 50, 100, 200}) {
        o.members = members;
        std::printf("%4d members: %9.1f us a class\n", members,
                    fastest(gym, draft, o, 5) * 1000 / o.runs);
    }
}
} // namespace

int main() {
    const Gym gym = demo();
    const Block draft = sevenGroups(gym);
    const bool good = reportMain(gym, draft);
    reportMembers(gym, draft);
    return good ? 0 : 1;
}
