// SPDX-License-Identifier: GPL-3.0-or-later
// How fast classes are played: the demo's draft cut to four sections with seven groups, twelve
// members. Prints classes a second, how that grows with the members, and how many times faster it
// is than the SimPy model of tests/reference on the same draft (where SimPy is installed). Then the
// study of the demo's latest month, all weeks, with changes looked for. Ends with 1 when a mark
// named in kMost... or kLeast... is missed.
#include "blockwright/rules/floor_search.hpp"
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
constexpr double kMostMsOfStudy = 1000;
constexpr double kMostGrowth = 3; // of the time of a class by member, from 12 members to 200

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
template <class Go> double fastestOf(int goes, Go go) {
    double best = 1e300;
    for (int i = 0; i < goes; ++i) {
        const auto start = std::chrono::steady_clock::now();
        if (!go()) std::abort();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        best = std::min(best, took.count());
    }
    return best;
}
double fastest(const Gym& gym, const Block& draft, const FloorOptions& o, int goes) {
    return fastestOf(goes, [&] { return simulateFloor(gym, draft, o).ok(); });
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

bool reportMembers(const Gym& gym, const Block& draft) {
    FloorOptions o;
    o.week = Week::of(2).value();
    o.runs = 200;
    double ofTwelve = 0, growth = 0;
    for (const int members : {1, 12, 25, 50, 100, 200}) {
        o.members = members;
        const double each = fastest(gym, draft, o, 5) * 1000 / o.runs / members;
        if (members == 12) ofTwelve = each;
        growth = ofTwelve > 0 ? each / ofTwelve : 0;
        std::printf("%4d members: %9.1f us a class, %6.3f us a member, %5.2f times that of 12\n",
                    members, each * members, each, growth);
    }
    return told("time of a member among 200, times that among 12", growth, kMostGrowth, true);
}

// Of all weeks; the draft as it is, then in a class cut short so that every week has a problem.
bool reportStudy(Gym gym) {
    FloorOptions o;
    o.threads = 2;
    bool good = true;
    for (const int minutes : {gym.settings.classMinutes, 40}) {
        gym.settings.classMinutes = minutes;
        const Block& draft = *gym.latest();
        const FloorSearch search = floorSearch(gym, draft);
        std::size_t changes = 0;
        const double took = fastestOf(3, [&] {
            const auto study = studyFloor(gym, draft, o, {}, {}, {}, &search);
            changes = 0;
            if (study)
                for (const FloorWeek& w : study->weeks) changes += w.changes.size();
            return study.ok();
        });
        std::printf("class of %d minutes: %zu changes kept\n", minutes, changes);
        good = told("study of four weeks, two threads, ms", took, kMostMsOfStudy, true) && good;
    }
    return good;
}
} // namespace

int main() {
    const Gym gym = demo();
    const Block draft = sevenGroups(gym);
    const bool good = reportMain(gym, draft);
    const bool grows = reportMembers(gym, draft);
    const bool studied = reportStudy(gym);
    return good && grows && studied ? 0 : 1;
}
