// SPDX-License-Identifier: GPL-3.0-or-later
// What the simulation says of a whole month: one answer for each week, and the changes of the draft
// that it has shown to help. The rules about kit and running over read it.
#pragma once
#include "blockwright/floor/floor.hpp"
#include "blockwright/model/message.hpp"

#include <functional>
#include <memory>
#include <vector>

namespace bw {

// A change of the draft that was simulated with the same random numbers as the draft itself.
struct ProvenChange {
    Message label; // an order: "Start spread over the groups"
    std::function<void(Block&)> change;
    Place place;                  // of the section or group that it changes
    MeanTime saves{};             // of the mean finish; above 0
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
    std::vector<FloorWeek> weeks; // as many as were asked for and could be simulated

    [[nodiscard]] const FloorWeek* of(Week week) const; // null: not simulated
};

} // namespace bw
