// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked of a simulated class.
#pragma once
#include "blockwright/floor/targets.hpp"
#include "blockwright/model/block.hpp"

#include <cstdint>
#include <functional>
#include <variant>

namespace bw {

// How members start in each section: as the draft says, all in one way, by head count (in sections
// with as many groups as there are counts; the others as drafted), or in the best way there is.
struct StartAsDrafted {
    bool operator==(const StartAsDrafted&) const = default;
};
struct StartBest {
    bool operator==(const StartBest&) const = default;
};
using FloorStart = std::variant<StartAsDrafted, StartTogether, StartSpread, StartCounts, StartBest>;

struct FloorOptions {
    static constexpr int kMostMembers = 400, kMostRuns = 100'000, kMostThreads = 64;

    int members = 0; // 0: the gym's places
    Week week = Week::first();
    int runs = 1000;         // a steady class is always one run
    std::uint64_t seed = 1;  // run r of a seed is the same class whatever else is asked
    bool steady = false;     // no draws: everybody at pace 1, middle doses, middle rests
    double paceSigma = 0.15; // how much members differ, on the logarithm; 0 to 1
    double setSigma = 0.10;  // how much one member's sets differ, likewise
    FloorStart start = StartAsDrafted{};
    bool loadAware = false; // kit that tells its loads is taken by the load, as targets say
    FloorTargets targets;
    int threads = 1;
    bool timeline = false; // who does what when in the median run
    bool buys = false;     // what buys the most; takes many times as long
    bool operator==(const FloorOptions&) const = default;
};

// Told on the calling thread, now and then: which part of the work, how much of it is done.
enum class FloorStage { Classes, BestStart, Buys, Changes };
using FloorProgress = std::function<void(FloorStage, int done, int total)>;

} // namespace bw
