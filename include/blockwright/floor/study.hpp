// SPDX-License-Identifier: GPL-3.0-or-later
// What the simulation says of a whole month: one answer for each week, and the changes of the draft
// that it has shown to help. The rules about kit and running over read it.
//   const FloorSearch search = floorSearch(gym, block); // blockwright/rules/floor_search.hpp
//   studyFloor(gym, block, {.threads = 2}, {}, {}, {}, &search)
#pragma once
#include "blockwright/floor/floor.hpp"
#include "blockwright/model/message.hpp"

#include <functional>
#include <memory>
#include <vector>

namespace bw {

// A change of the draft that was simulated with the same random numbers as the draft itself.
struct ProvenChange {
    Message label; // an order and what it brings: "Start spread over groups D, E: saves 3:10"
    std::function<void(Block&)> change;
    Place place;                  // of the section or group that it changes
    MeanTime saves{};             // of the mean finish; below 0: it costs, but less than it spares
    MeanTime waitsLess{};         // of a member's mean wait in all
    double overrunChance = 0;     // afterwards
    std::vector<FloorKitUse> kit; // afterwards
};

struct FloorWeek {
    Week week = Week::first();
    std::shared_ptr<const FloorAnswer> answer; // weeks that ask for the same share one
    std::vector<ProvenChange> changes;         // the most saved first
};

struct FloorStudy {
    std::vector<FloorWeek> weeks; // as many as were asked for, in order

    [[nodiscard]] const FloorWeek* of(Week week) const; // null: not simulated
};

// A change of the draft that might help. Both labels end in a gap for the time that it brings.
struct FloorIdea {
    Message saves;  // "Start spread over groups %1: saves %2"
    Message spares; // "Start spread over groups %1: %2 less waiting for each"
    Place place;
    std::function<void(Block&)> change; // nothing when the place has gone
};

// What is a problem of a week, and what to try on it besides other starts.
struct FloorSearch {
    MeanTime wait{};          // a member's mean wait at one kit item that is longer
    double overrunChance = 0; // a chance of running over that is higher
    std::function<std::vector<FloorIdea>(const FloorWeek&)> ideas; // may be empty
};

// Of one week, or of all of the stair; options.week is not looked at. Weeks that ask for the same
// rounds share one answer. A week with a problem gets the changes that, by more than luck (3
// standard errors), end its class at least 15 s earlier on average or spare each member 15 s of
// waiting, and do not cost as much of the other. Without a search no week gets any. Why() as
// simulateFloor.
[[nodiscard]] Result<FloorStudy>
studyFloor(const Gym& gym, const Block& block, const FloorOptions& options,
           std::optional<Week> week = {}, std::stop_token stop = {},
           const FloorProgress& progress = {}, const FloorSearch* search = nullptr);

} // namespace bw
